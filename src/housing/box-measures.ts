import { INCH } from './measures.ts';

/** Three measures in millimetres, in the order in which they are written; or what is wrong with them, as a sentence. */
type BoxMeasures = { measures: [first: number, second: number, third: number] } | { wrong: string };

const UNITS: ReadonlyMap<string, number> = new Map(
  Object.entries({ mm: 1, cm: 10, m: 1000, in: INCH, ft: 12 * INCH }).flatMap(([unit, mm]) =>
    spellings(unit).map((word) => [word, mm] as const),
  ),
);

function spellings(unit: string): string[] {
  const also: Record<string, string[]> = {
    mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
    cm: ['cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
    m: ['metre', 'metres', 'meter', 'meters'],
    in: ['ins', 'inch', 'inches', '"', '″', '”', "''"],
    ft: ['foot', 'feet', "'", '′', '’'],
  };
  return [unit, ...(also[unit] ?? [])];
}

const EIGHTHS: Readonly<Record<string, string>> = {
  '⅛': '1/8',
  '¼': '1/4',
  '⅜': '3/8',
  '½': '1/2',
  '⅝': '5/8',
  '¾': '3/4',
  '⅞': '7/8',
};
const BETWEEN = /\s*(?:[x×*]|\bby\b)\s*/;
// 12, 12.25 or 12,25, 12 1/4, 12-1/4, 1/2; then perhaps a unit.
const MEASURE = /^(-?)(?:(\d+(?:[.,]\d+)?)(?!\/))?(?:[\s-]*(\d+)\/([1-9]\d*))?\s*([^\d\s.,/]*)\.?$/;

/** Below this no box is measured, and above that none is carried; a unit is more likely wrong. Millimetres. */
const LEAST = 10;
const MOST = 5000;

/**
 * Reads the three measures of a box, as in `12 x 10 x 4 in`, `33 × 26 × 10,5 cm` or `12¼" by 10" by 5"`. A measure
 * without a unit has that of the next one that has any; all three without are not guessed at.
 */
export function readBoxMeasures(written: string): BoxMeasures {
  const text = written
    .trim()
    .toLowerCase()
    .replace(/[⅛¼⅜½⅝¾⅞]/g, (sign) => ` ${EIGHTHS[sign]}`);
  const parts = text.split(BETWEEN).map(readMeasure);
  if (parts.length !== 3) {
    const count = parts.length === 1 ? 'one measure' : `${parts.length} measures`;
    return { wrong: `“${written}” is ${count}, and a box has three.` };
  }
  const measures: number[] = [];
  let unit: number | undefined;
  for (const part of parts.toReversed()) {
    if (part === undefined) return { wrong: `“${written}” cannot be read as three measures.` };
    unit = part.unit ?? unit;
    if (unit === undefined) return { wrong: `“${written}” has no unit.` };
    const millimetres = part.number * unit;
    if (millimetres < LEAST) return { wrong: `“${written}” has a measure of less than ${LEAST} mm.` };
    if (millimetres > MOST) return { wrong: `“${written}” has a measure of more than ${MOST / 1000} m.` };
    measures.unshift(millimetres);
  }
  const [first = 0, second = 0, third = 0] = measures;
  return { measures: [first, second, third] };
}

function readMeasure(text: string): { number: number; unit: number | undefined } | undefined {
  const [read, minus, whole, above, below, word] = MEASURE.exec(text.trim()) ?? [];
  if (read === undefined || (whole === undefined && above === undefined)) return undefined;
  const unit = word === '' || word === undefined ? undefined : UNITS.get(word);
  if (word !== '' && unit === undefined) return undefined;
  const fraction = above === undefined ? 0 : Number(above) / Number(below);
  const number = Number((whole ?? '0').replace(',', '.')) + fraction;
  return { number: minus === '-' ? -number : number, unit };
}
