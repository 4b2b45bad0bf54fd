import { sayCommand } from '../catalogue/say-command.ts';
import { sayCount } from '../catalogue/say-count.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Settled } from '../catalogue/settled.ts';
import { folderCount, foldersOf } from '../housing/placed.ts';
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
  const folders = foldersOf(groups).reduce((sum, folder) => sum + folderCount(folder), 0);
  const news = settled.length === 0 ? '' : `; ${sayNews(live, settled)}`;
  yield `Settled: ${sayCount(live.length, 'thing')} in ${sayCount(folders, 'folder')} and ${sayCount(boxes.length, 'box', 'boxes')}${news}.`;
  if (given.size > 0) {
    yield `${sayCount(given.size, 'thing')} had no number and got one in list.csv; the list as it was is kept beside it.`;
  }
  const known = new Set(
    settled.flatMap((row) => (row.gone === undefined ? [] : [`${key(row)} ${row.gone}`])),
  );
  for (const row of rows) {
    if (row.gone === undefined || known.has(`${key(row)} ${row.gone}`)) continue;
    yield `${codeOf(row.place)}  ${row.title}: ${sayGone(row.gone, codeOf)}. Its number is not used again.`;
  }
  if (moves.length > 0) {
    yield `${sayCount(moves.length, 'thing')} would now be sorted elsewhere and stayed; to move ${moves.length === 1 ? 'it' : 'them'}: ${sayCommand('arrange', folder, '--settle', '--move')}`;
  }
  yield `The numbers may be written on folders now. Labels: ${sayCommand('labels', folder, '--out', 'labels.pdf')}`;
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
