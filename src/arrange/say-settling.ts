import type { Settled } from '../catalogue/settled.ts';
import { foldersOf } from '../housing/placed.ts';
import type { Settling } from './settle.ts';

/** What settling did, as lines of plain text. */
export function* saySettling(
  { given, rows, moves, boxes, groups }: Settling,
  { settled, folder }: { settled: readonly Settled[]; folder: string },
): Generator<string> {
  const before = new Set(settled.map(key));
  const fresh = rows.filter((row) => row.gone === undefined && !before.has(key(row)));
  const live = rows.filter(({ gone }) => gone === undefined);
  const folders = foldersOf(groups).reduce(
    (sum, { held }) => sum + (held === undefined ? 0 : held.last - held.first + 1),
    0,
  );
  const news = settled.length === 0 ? '' : `; ${fresh.length === 0 ? 'none' : fresh.length} of them new`;
  yield `Settled: ${count(live.length, 'thing')} in ${count(folders, 'folder')} and ${count(boxes.length, 'box', 'boxes')}${news}.`;
  if (given.size > 0) {
    yield `${count(given.size, 'thing')} had no number and got one in list.csv; the list as it was is kept beside it.`;
  }
  const known = new Set(
    settled.flatMap((row) => (row.gone === undefined ? [] : [`${key(row)} ${row.gone}`])),
  );
  for (const row of rows) {
    if (row.gone === undefined || known.has(`${key(row)} ${row.gone}`)) continue;
    yield `${row.place.join('/')}  ${row.title}: ${row.gone}. Its number is not used again.`;
  }
  if (moves.length > 0) {
    yield `${count(moves.length, 'thing')} would now be sorted elsewhere and stayed; this moves them: kinfonds arrange ${folder} --settle --move`;
  }
  yield `The numbers may be written on folders now. Labels: kinfonds labels ${folder} --out labels.pdf`;
}

const key = ({ number, place }: Settled) => `${place.join('/')} ${number}`;

const count = (number: number, one: string, many = `${one}s`) => `${number} ${number === 1 ? one : many}`;
