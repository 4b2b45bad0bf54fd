import { sayList } from '../catalogue/say-list.ts';
import { maskNumbers } from './private-numbers.ts';

/** A row of the list as a finding names it. */
export interface SaidRow {
  row: number;
  /** In the list, where it gives one. */
  number?: string | undefined;
  title: string;
  /** What stands beside its number. */
  beside?: string;
}

/** How many things a finding names by their titles; of the others it gives the rows. */
const TITLES = 4;
/** How many stretches of rows it gives. */
const STRETCHES = 20;

/**
 * Several things in one sentence: “A” (row 2), “B” (no. 4, row 5) and 3 more (nos. 8, 11-12, rows 9, 12-13). Numbers
 * by which a living person could be harmed are blotted out of the titles.
 */
export function sayThings(things: readonly SaidRow[]): string {
  const named = things.slice(0, things.length === TITLES + 1 ? TITLES + 1 : TITLES);
  const said = named.map(({ row, number, title, beside }) => {
    const where = number === undefined ? `row ${row}` : `no. ${number}, row ${row}`;
    return `“${maskNumbers(title)}” (${where}${beside === undefined ? '' : `; ${beside}`})`;
  });
  const others = things.slice(named.length);
  if (others.length > 0) said.push(`${others.length} more (${sayPlaces(others)})`);
  return sayList(said);
}

/** The rows, and before them the numbers where each has one of figures. */
function sayPlaces(things: readonly SaidRow[]): string {
  const numbers = things.flatMap(({ number = '' }) =>
    /^[1-9]\d{0,8}$/.test(number) ? [Number(number)] : [],
  );
  const rows = sayRows(things.map(({ row }) => row));
  return numbers.length < things.length ? rows : `${sayStretches('no.', 'nos.', numbers)}, ${rows}`;
}

/** Numbers of rows, those that follow one another as one stretch: rows 9, 12-14. */
export const sayRows = (rows: readonly number[]): string => sayStretches('row', 'rows', rows);

function sayStretches(word: string, words: string, rows: readonly number[]): string {
  const stretches: { from: number; to: number }[] = [];
  for (const row of [...new Set(rows)].sort((a, b) => a - b)) {
    const last = stretches.at(-1);
    if (last !== undefined && last.to === row - 1) last.to = row;
    else stretches.push({ from: row, to: row });
  }
  const said = stretches
    .slice(0, STRETCHES)
    .map(({ from, to }) => (from === to ? `${from}` : `${from}-${to}`))
    .join(', ');
  const one = stretches.length === 1 && stretches[0]?.from === stretches[0]?.to;
  return `${one ? word : words} ${said}${stretches.length > STRETCHES ? ' and later ones' : ''}`;
}
