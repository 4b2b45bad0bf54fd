import { maskNumbers } from './private-numbers.ts';

/** A row of the list as a finding names it. */
export interface SaidRow {
  row: number;
  title: string;
  /** What stands beside its number. */
  beside?: string;
}

/** How many things a finding names by their titles; of the others it gives the rows. */
const TITLES = 4;
/** How many stretches of rows it gives. */
const STRETCHES = 20;

/**
 * Several things in one sentence: “A” (row 2), “B” (row 5) and 3 more (rows 9, 12-13). Numbers by which a living person
 * could be harmed are blotted out of the titles.
 */
export function sayThings(things: readonly SaidRow[]): string {
  const named = things.slice(0, things.length === TITLES + 1 ? TITLES + 1 : TITLES);
  const said = named.map(({ row, title, beside }) => {
    return `“${maskNumbers(title)}” (row ${row}${beside === undefined ? '' : `; ${beside}`})`;
  });
  const others = things.slice(named.length);
  if (others.length > 0) said.push(`${others.length} more (${sayRows(others.map(({ row }) => row))})`);
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;
}

/** Numbers of rows, those that follow one another as one stretch: rows 9, 12-14. */
export function sayRows(rows: readonly number[]): string {
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
  return `${one ? 'row' : 'rows'} ${said}${stretches.length > STRETCHES ? ' and later ones' : ''}`;
}
