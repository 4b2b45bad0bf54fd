import type { Finding } from '../catalogue/finding.ts';
import { nearest } from '../catalogue/nearest.ts';
import { sayMoreRows } from '../catalogue/say-count.ts';
import type { Thing } from '../catalogue/thing.ts';
import { BEDS } from './size-beds.ts';
import { SIZE_NAMES } from './size-named.ts';
import { sizeTokens } from './size-tokens.ts';
import { FILLERS, VAGUE } from './size-units.ts';
import { sizeReading, usualOf } from './usual-form.ts';

const ADVICE = 'Write it as 20 × 25 cm, as 8 × 10 in, or by a name such as A4 or cabinet card.';

const OF_TEXTILES = 'Write width × height, such as 240 × 200 cm.';

/** A size as it is written, with the first row it stands in. */
interface Written {
  first: Thing;
  size: string;
  rows: number;
}

/**
 * Sizes that cannot be, sizes that nobody knows, each said once with the first row it stands in; and, all together, those
 * whose unit was assumed.
 */
export function sizeFindings(things: readonly Thing[]): Finding[] {
  const seen = new Map<string, Written>();
  for (const thing of things) {
    const { kind, size } = thing;
    if (size === undefined) continue;
    const key = `${size}\0${kind ?? ''}`;
    const known = seen.get(key);
    if (known === undefined) seen.set(key, { first: thing, size, rows: 1 });
    else known.rows++;
  }
  const written = [...seen.values()];
  return [...written.flatMap((one) => findingOf(one) ?? []), ...assumedUnits(written)];
}

const placeOf = ({ row }: Thing) => ({ file: 'list.csv', row, column: 'size' });

function findingOf({ first: thing, size, rows }: Written): Finding | undefined {
  const reading = sizeReading(thing);
  const place = placeOf(thing);
  const more = sayMoreRows(rows);
  const form = thing.kind === undefined ? undefined : usualOf(thing.kind)?.usual.form;
  const textile = form === 'textile';
  const how = textile ? OF_TEXTILES : ADVICE;
  if (reading?.kind === 'impossible') {
    return {
      rule: 'list.size-impossible',
      weight: 'must',
      place,
      found: `“${size}”${more} cannot be a size. ${reading.why}`,
      advice: how,
    };
  }
  const base = { rule: 'list.size-unknown', weight: 'should', place } as const;
  if (reading?.kind === 'unlikely')
    return {
      ...base,
      found: `“${size}”${more} is hardly a size. ${reading.why} The usual one of its kind is assumed.`,
      advice: how,
    };
  // Bytes, pixels and running times are all the size that a digital file has.
  if (reading?.kind !== 'unknown' || form === 'digital') return undefined;
  if (isVague(size))
    return {
      ...base,
      found: `“${size}”${more} says no measure, so the usual one of its kind is assumed.`,
      advice: `Measure it, or leave it blank. ${how}`,
    };
  const meant = nearest(size, textile ? BED_NAMES : NAMES);
  return {
    ...base,
    found: `“${size}”${more} is not a size that is known, so the usual one of its kind is assumed.`,
    advice: meant === undefined ? `${how} Leave it blank where it is not known.` : `Is “${meant}” meant?`,
  };
}

/** "Large", "quite small": a judgement, and nothing that a folder can be chosen by. */
function isVague(size: string): boolean {
  const words = sizeTokens(size).map((token) => (token.is === 'word' ? token.word : token.is));
  return words.some((word) => VAGUE.has(word)) && words.every((word) => VAGUE.has(word) || FILLERS.has(word));
}

const NAMES = SIZE_NAMES.filter((row) => row.face !== undefined && !BEDS.includes(row)).flatMap(
  ({ names }) => names,
);
const BED_NAMES = BEDS.flatMap(({ names }) => names);
const NAMED_AT_MOST = 5;

/** Sizes without a unit, by the unit that was assumed: a wrong guess makes a folder too small by more than half. */
function assumedUnits(written: readonly Written[]): Finding[] {
  const guessed = written.flatMap(({ first, size, rows }) => {
    const reading = sizeReading(first);
    const unit = reading?.kind === 'size' ? reading.guessedUnit : undefined;
    return unit === undefined ? [] : [{ first, size, rows, unit }];
  });
  const [one] = guessed;
  if (one === undefined) return [];
  const units = [...new Set(guessed.map(({ unit }) => unit))].map((unit) => {
    const those = guessed.filter((other) => other.unit === unit);
    const named = those.slice(0, NAMED_AT_MOST).map(({ size, first }) => `“${size}” (row ${first.row})`);
    const rest = those.length - named.length;
    return `in ${unit}: ${named.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`;
  });
  const rows = guessed.reduce((sum, { rows: those }) => sum + those, 0);
  return [
    {
      rule: 'list.size-assumed',
      weight: 'consider',
      place: placeOf(one.first),
      found: `${rows === 1 ? 'A size has' : `The sizes of ${rows} rows have`} no unit. They are taken ${units.join('; ')}.`,
      advice: 'Where that is wrong, write the unit: 18 x 24 in, or 18 x 24 cm.',
    },
  ];
}
