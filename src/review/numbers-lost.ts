import { referenceCodes } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { foldersText, NUMBERS_FILE } from '../catalogue/numbers-file.ts';
import type { Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';

const PUT_BACK =
  'Put the row back from a copy of the file, such as numbers.before.csv. Without one, copy a row of the same folder, or of one beside it, and change in the copy what is written on the thing and its folder: number, title, reference code, place, folder, box. Where nothing lies there any more, write “removed” under “gone”.';

/**
 * Rows that numbers.csv must once have had. Within a folder things are numbered from 1 without a gap, and folders so
 * through the collection; what is gone keeps its row. A thing whose row is lost would be settled anew elsewhere.
 */
export function lostRows(catalogue: Catalogue): Finding[] {
  const { settled, settings } = catalogue;
  const codeOf = referenceCodes(settings);
  const found: string[] = [];
  for (const { folder, numbers } of thingsByFolder(settled)) {
    const missing = missingIn(numbers.map((number) => [number, number]));
    if (missing.length === 0) continue;
    const codes = missing.map((span) => span.map((number) => codeOf([...folder, number])));
    found.push(`${said(codes)}, though a later number of that folder is there`);
  }
  const spans = settled.flatMap(({ folder, lastFolder = folder }): [number, number][] =>
    folder === undefined || lastFolder === undefined ? [] : [[folder, lastFolder]],
  );
  for (const [first, last] of missingIn(spans)) {
    const folders = foldersText({ folder: first, ...(last !== first && { lastFolder: last }) });
    found.push(`folder${last === first ? '' : 's'} ${folders}, though a later folder is there`);
  }
  const suspects = unknownNumbers(catalogue)
    .slice(0, 3)
    .map(({ number, title }) => ` Number ${number} of the list, “${title}”, stands in no row.`);
  return found.map((words) => ({
    rule: 'numbers.row-lost',
    weight: 'must',
    place: { file: NUMBERS_FILE },
    found: `A row has been lost: none is for ${words}.${suspects.join('')}`,
    advice: PUT_BACK,
  }));
}

/**
 * Things whose number numbers.csv does not know, though it may once have been settled. A number above all that are is
 * most likely one that somebody gave to a new thing.
 */
export function unknownNumbers({ things, settled }: Catalogue): Thing[] {
  if (settled.length === 0) return [];
  const known = new Set(settled.map(({ number }) => number));
  let highest = 0;
  for (const number of known) if (/^\d{1,9}$/.test(number)) highest = Math.max(highest, Number(number));
  return things.filter(
    ({ number }) => number !== undefined && !known.has(number) && !(Number(number) > highest),
  );
}

function thingsByFolder(settled: readonly Settled[]) {
  const folders = new Map<string, { folder: readonly number[]; numbers: number[] }>();
  for (const { place } of settled) {
    const folder = place.slice(0, -1);
    const number = place.at(-1) ?? 0;
    const known = folders.get(folder.join('/'));
    if (known === undefined) folders.set(folder.join('/'), { folder, numbers: [number] });
    else known.numbers.push(number);
  }
  return folders.values();
}

/** What is missing between 1 and the highest number of some spans, as spans. */
function missingIn(spans: readonly (readonly [number, number])[]): [number, number][] {
  const missing: [number, number][] = [];
  let reached = 0;
  for (const [first, last] of spans.toSorted((a, b) => a[0] - b[0])) {
    if (first > reached + 1) missing.push([reached + 1, first - 1]);
    reached = Math.max(reached, last);
  }
  return missing;
}

const said = (spans: readonly (readonly string[])[]): string =>
  spans.map(([first, last]) => (first === last ? first : `${first} to ${last}`)).join(', ');
