import type { Settings } from '../catalogue/settings.ts';
import type { Settled } from '../catalogue/settled.ts';
import { foldersOf } from '../housing/placed.ts';
import { sayGone } from './number-history.ts';
import { referenceCodes } from './reference-codes.ts';
import type { Settling } from './settle.ts';

/** What settling did, as lines of plain text. */
export function* saySettling(
  { given, rows, moves, boxes, groups }: Settling,
  { settled, folder, settings }: { settled: readonly Settled[]; folder: string; settings: Settings },
): Generator<string> {
  const codeOf = referenceCodes(settings);
  const live = rows.filter(({ gone }) => gone === undefined);
  const folders = foldersOf(groups).reduce(
    (sum, { held }) => sum + (held === undefined ? 0 : held.last - held.first + 1),
    0,
  );
  const news = settled.length === 0 ? '' : `; ${sayNews(live, settled)}`;
  yield `Settled: ${count(live.length, 'thing')} in ${count(folders, 'folder')} and ${count(boxes.length, 'box', 'boxes')}${news}.`;
  if (given.size > 0) {
    yield `${count(given.size, 'thing')} had no number and got one in list.csv; the list as it was is kept beside it.`;
  }
  const known = new Set(
    settled.flatMap((row) => (row.gone === undefined ? [] : [`${key(row)} ${row.gone}`])),
  );
  for (const row of rows) {
    if (row.gone === undefined || known.has(`${key(row)} ${row.gone}`)) continue;
    yield `${codeOf(row.place)}  ${row.title}: ${sayGone(row.gone, codeOf)}. Its number is not used again.`;
  }
  if (moves.length > 0) {
    yield `${count(moves.length, 'thing')} would now be sorted elsewhere and stayed; this moves ${moves.length === 1 ? 'it' : 'them'}: kinfonds arrange ${folder} --settle --move`;
  }
  yield `The numbers may be written on folders now. Labels: kinfonds labels ${folder} --out labels.pdf`;
}

/** How many things are new, and how many lie elsewhere than before. */
function sayNews(live: readonly Settled[], before: readonly Settled[]): string {
  const numbers = new Set(before.map(({ number }) => number));
  const places = new Set(before.map(key));
  const fresh = live.filter(({ number }) => !numbers.has(number)).length;
  const moved = live.filter((row) => numbers.has(row.number) && !places.has(key(row))).length;
  return `${fresh === 0 ? 'none' : fresh} of them new${moved === 0 ? '' : `, ${moved} moved`}`;
}

const key = ({ number, place }: Settled) => `${place.join('/')} ${number}`;

const count = (number: number, one: string, many = `${one}s`) => `${number} ${number === 1 ? one : many}`;
