import { type Row, readRows } from './csv-rows.ts';

const SEPARATORS = [',', ';', '\t'] as const;
// Rows looked at to recognise the separator.
const SAMPLE = 20;

/** The separator that gives the most known headings, then the most even rows, then the most columns. */
export function recogniseSeparator(
  text: string,
  isHeading: (text: string) => boolean,
  within: number,
): string | undefined {
  let best: { separator: string; score: readonly number[] } | undefined;
  for (const separator of SEPARATORS) {
    const rows = firstOf(readRows(text, separator), Math.max(SAMPLE, within));
    // Nothing but separators: the list is empty.
    if (rows.length === 0) return separator;
    const head = mostHeadings(rows.slice(0, within), isHeading);
    if (head.length < 2) continue;
    const even = rows.filter(({ cells }) => cells.length === head.length).length;
    const score = [head.filter(isHeading).length, even, head.length];
    if (best === undefined || higher(score, best.score)) best = { separator, score };
  }
  return best?.separator;
}

/** Of rows that may hold the headings, the one with the most that are known; the first of those. */
function mostHeadings(rows: readonly Row[], isHeading: (text: string) => boolean): readonly string[] {
  let best: { cells: readonly string[]; known: number } | undefined;
  for (const { cells } of rows) {
    const known = cells.filter(isHeading).length;
    if (best === undefined || known > best.known) best = { cells, known };
  }
  return best?.cells ?? [];
}

function firstOf<Item>(items: Iterable<Item>, most: number): Item[] {
  const first: Item[] = [];
  for (const item of items) if (first.push(item) === most) break;
  return first;
}

function higher(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at >= 0 && (one[at] ?? 0) > (other[at] ?? 0);
}
