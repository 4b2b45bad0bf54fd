import { foldersText } from '../catalogue/numbers-file.ts';
import { sayCommand } from '../catalogue/say-command.ts';
import { numbersInWords } from '../catalogue/say-container.ts';
import { sayCount } from '../catalogue/say-count.ts';
import type { Settings } from '../catalogue/settings.ts';
import { boxesOf, type Settled } from '../catalogue/settled.ts';
import { folderCount, foldersOf } from '../housing/placed.ts';
import { sayFoldersAndBoxes } from '../housing/say-boxes.ts';
import { PACKAGE } from '../housing/shelve.ts';
import { sayGone } from './number-history.ts';
import { referenceCodes } from './reference-codes.ts';
import type { Settling } from './settle.ts';

/**
 * What settling did, as lines of plain text.
 * @param kept the name of the file in which the list is kept as it was, where it was written to
 */
export function* saySettling(
  { given, rows, moves, boxes, groups }: Settling,
  { settled, folder, settings }: { settled: readonly Settled[]; folder: string; settings: Settings },
  kept?: string,
): Generator<string> {
  const codeOf = referenceCodes(settings);
  const live = rows.filter(({ gone }) => gone === undefined);
  const folders = foldersOf(groups).reduce((sum, folder) => sum + folderCount(folder), 0);
  const packages = boxes.filter(({ type }) => type === 'package').length;
  const shelved = sayFoldersAndBoxes(folders, boxes.length - packages, packages);
  const all = `${sayCount(live.length, 'thing')}${shelved === '' ? '' : ` in ${shelved}`}`;
  const { fresh, moved } = newsOf(live, settled);
  const gone = newlyGone(rows, settled);
  const isNew = given.size + fresh.length + moved + gone.length > 0;
  yield isNew
    ? `Settled: ${all}${settled.length === 0 ? '' : `; ${sayNews(fresh.length, moved)}`}.`
    : `Nothing new to settle. Settled before: ${all}.`;
  if (given.size > 0) {
    yield `${sayCount(given.size, 'thing')} had no number and got one in list.csv; the list as it was is kept beside it${kept === undefined ? '' : ` as ${kept}`}.`;
  }
  if (settled.length > 0) yield* sayWhere(fresh, codeOf);
  for (const { place, title, why } of gone) {
    yield `${codeOf(place)}  ${title}: ${sayGone(why, codeOf)}. Its number is not used again.`;
  }
  if (moves.length > 0) {
    yield `${sayCount(moves.length, 'thing')} would now be sorted elsewhere and stayed; to move ${moves.length === 1 ? 'it' : 'them'}: ${sayCommand('arrange', folder, '--settle', '--move')}`;
  }
  if (!isNew) return;
  const code = newFolder(live, settled);
  const which = settled.length === 0 ? 'each folder' : 'each new folder';
  const print = ['labels', folder, '--out', 'labels.pdf'] as const;
  const labels =
    settled.length === 0
      ? `Labels: ${sayCommand(...print)}`
      : `Labels that are new or changed: ${sayCommand(...print, '--new')}`;
  yield code === undefined
    ? labels
    : `The code of ${which}, such as ${codeOf(code)}, may be written on it now, in pencil. ${labels}`;
}

// So many new things are told one by one; numbers.csv has them all.
const TOLD = 10;

/** Where new things lie, a line each: `no. 36 Ferry whistle: FO/12/3/1, folder 17, box 15`. */
function* sayWhere(
  fresh: readonly Settled[],
  codeOf: (place: readonly number[]) => string,
): Generator<string> {
  for (const row of fresh.slice(0, TOLD)) {
    const where = [codeOf(row.place), sayFolder(row), sayBox(row)];
    yield `no. ${row.number} ${row.title}: ${where.filter((part) => part !== '').join(', ')}`;
  }
  if (fresh.length > TOLD) yield `and ${fresh.length - TOLD} more, which stand in numbers.csv`;
}

function sayFolder(row: Settled): string {
  const number = foldersText(row);
  return number === '' ? '' : `${row.lastFolder === undefined ? 'folder' : 'folders'} ${number}`;
}

function sayBox(row: Settled): string {
  const [first, ...others] = boxesOf(row);
  if (first === undefined) return '';
  const [one, several] = row.boxKind?.startsWith(PACKAGE) ? ['package', 'packages'] : ['box', 'boxes'];
  return others.length === 0 ? `${one} ${first}` : `${several} ${numbersInWords([first, ...others])}`;
}

/** The place of the first folder in which nothing was settled before; undefined where there is none. */
function newFolder(live: readonly Settled[], before: readonly Settled[]): readonly number[] | undefined {
  const folderOf = ({ place }: Settled) => place.slice(0, -1).join('/');
  const known = new Set(before.map(folderOf));
  return live.find((row) => row.folder !== undefined && !known.has(folderOf(row)))?.place.slice(0, -1);
}

/** What has lost its place, or has been given another, since it was last settled. */
function newlyGone(rows: readonly Settled[], before: readonly Settled[]) {
  const known = new Set(before.map((row) => `${key(row)} ${row.gone ?? ''}`));
  return rows.flatMap((row) =>
    row.gone === undefined || known.has(`${key(row)} ${row.gone}`) ? [] : [{ ...row, why: row.gone }],
  );
}

/** Which things are new, and how many lie elsewhere than before. */
function newsOf(live: readonly Settled[], before: readonly Settled[]) {
  const numbers = new Set(before.map(({ number }) => number));
  const places = new Set(before.map(key));
  const fresh = live.filter(({ number }) => !numbers.has(number));
  const moved = live.filter((row) => numbers.has(row.number) && !places.has(key(row))).length;
  return { fresh, moved };
}

const sayNews = (fresh: number, moved: number): string =>
  `${fresh === 0 ? 'none' : fresh} of them new${moved === 0 ? '' : `, ${moved} moved`}`;

const key = ({ number, place }: Settled) => `${place.join('/')} ${number}`;
