import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import { comparable } from './columns.ts';
import type { Row } from './csv-rows.ts';
import type { Layout } from './layout.ts';
import { readQuantity } from './quantity.ts';

/** Words with which people begin the row in which they add up (common practice), as `comparable` leaves them. */
const TOTALS = new Set([
  ...['total', 'totals', 'grand total', 'sum', 'in all', 'all together', 'altogether', 'sum total'],
  ...['summe', 'gesamt', 'gesamtsumme', 'insgesamt', 'total general', 'totale', 'totaux', 'somme', 'suma'],
  ...['totaal', 'som', 'totalt', 'sammenlagt', 'i alt', 'ialt', 'summa', 'en tout', 'in totale'],
]);
const FIGURES = /^[\d\s.,'’]+$/;

/**
 * The rows of a list without a row at its end in which its owner added up: one that says so beside nothing but figures,
 * or that holds a quantity alone which is the sum of those above. `said` is called once all rows have been read.
 */
export function* withoutTotal(
  rows: Iterable<Row>,
  { at }: Pick<Layout, 'at'>,
  said: (row: number, label: string | undefined, total: number | undefined, sum: number) => void,
): Generator<Row> {
  const title = at.get('title') ?? -1;
  const quantity = at.get('quantity') ?? -1;
  const count = once(readQuantity);
  // With a row that says no quantity counted as one thing, and without it: people add up both ways.
  let sum = 0;
  let stated = 0;
  let held: Row | undefined;
  for (const row of rows) {
    if (held !== undefined) {
      const counted = count(held.cells[quantity] ?? '')?.quantity;
      sum += counted ?? 1;
      stated += counted ?? 0;
      yield held;
    }
    held = row;
  }
  if (held === undefined) return;
  const filled = held.cells.filter((cell) => cell.trim() !== '');
  const words = filled.filter((cell) => !FIGURES.test(cell));
  const label = words.length === 1 && TOTALS.has(comparable(words[0] ?? '')) ? words[0] : undefined;
  const total = count(held.cells[quantity] ?? '')?.quantity;
  const alone = words.length === 0 && filled.length === 1 && (held.cells[title] ?? '').trim() === '';
  const agrees = total !== undefined && total > 1 && (total === sum || total === stated);
  if (label !== undefined || (alone && agrees)) said(held.row, label, agrees ? undefined : total, sum);
  else yield held;
}

/**
 * What to say of such a row; where it holds another sum than the quantities above it, that may be a slip.
 * @param total that other sum
 */
export function sayTotal(
  file: string,
  row: number,
  label: string | undefined,
  total: number | undefined,
  sum: number,
): Finding {
  const what = label === undefined ? 'adds up the rows above it' : `says “${label.trim()}” and adds up`;
  const begins = `The last row ${what}; it was left out, being no thing.`;
  if (total === undefined)
    return { rule: 'list.total-row', weight: 'consider', place: { file, row }, found: begins };
  return {
    rule: 'list.total-differs',
    weight: 'should',
    place: { file, row, column: 'quantity' },
    found: `${begins} It holds ${total}, but the quantities above it make ${sum}, rows without one counted as 1.`,
    advice: 'See whether a row is missing, or a quantity is mistyped.',
  };
}
