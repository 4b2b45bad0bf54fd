import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';

const withoutExtension = (path: string) => path.replace(/\.[^./]*$/, '');
const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1);

/** Two names that are one where the system does not tell capitals apart, or writes accents in another way (UAX #15). */
export const caseless = (path: string): string => path.normalize('NFC').toLowerCase();

/** The name of a file without its folder and its ending, as far as no system tells it from others. */
export const stemOf = (path: string): string => withoutExtension(nameOf(caseless(path)));

/** What may differ, the least first: capitals and encoded accents; the ending; the folder; accents, blanks and dashes. */
const KEYS: readonly ((path: string) => string)[] = [
  caseless,
  (path) => withoutExtension(caseless(path)),
  (path) => nameOf(caseless(path)),
  stemOf,
  (path) => fold(withoutExtension(nameOf(path))).replace(/[\s_-]+/g, ''),
];

/** Above so many files, comparing each with each by its letters takes longer than it helps. */
const MOST_BY_LETTERS = 2000;

/** A function that finds, for a name that no file bears, the file that was most likely meant. */
export function nearestFile(files: readonly string[]): (path: string) => string | undefined {
  const tables = KEYS.map((key) => {
    const table = new Map<string, string>();
    for (const file of files) if (!table.has(key(file))) table.set(key(file), file);
    return table;
  });
  return (path) => {
    for (const [at, key] of KEYS.entries()) {
      const found = tables[at]?.get(key(path));
      if (found !== undefined && key(path) !== '') return found;
    }
    return files.length > MOST_BY_LETTERS ? undefined : nearest(path, files);
  };
}
