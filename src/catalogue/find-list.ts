import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type List, readList } from '../intake/list.ts';
import type { Known } from '../intake/things.ts';
import type { Finding } from './finding.ts';
import type { ListSettings } from './list-settings.ts';
import { LIST_FILE, noList, noSuchList, severalLists, unreadable } from './load-findings.ts';

/** The names under which a list is found, in the order in which they are read. */
const LIST_FILES: readonly string[] = [LIST_FILE, 'list.tsv', 'list.xlsx', 'list.ods'];

/** A list as found in a folder, and read. */
interface FoundList extends List {
  file: string;
  bytes: Uint8Array;
}

/**
 * Reads the list of a catalogue folder: the file that collection.yaml names, else whichever of `LIST_FILES` is there.
 * Where several are, the one that holds things; a new catalogue has list.csv and list.xlsx, of which one is filled in.
 * @param names of the files in the folder
 */
export async function findList(
  folder: string,
  names: readonly string[],
  known: Known,
  settings: ListSettings | undefined,
): Promise<{ list?: FoundList; findings: readonly Finding[] }> {
  const named = settings?.file;
  if (named !== undefined && !names.includes(named)) return { findings: [noSuchList(named)] };
  const there = named === undefined ? LIST_FILES.filter((name) => names.includes(name)) : [named];
  if (there.length === 0) return { findings: [noList(folder, names)] };
  const lists: FoundList[] = [];
  const findings: Finding[] = [];
  for (const file of there) {
    try {
      const bytes = await readFile(join(folder, file));
      lists.push({ file, bytes, ...readList(bytes, file, known, settings) });
    } catch (error) {
      findings.push(unreadable(file, error));
    }
  }
  if (findings.length > 0) return { findings };
  const filled = lists.filter(holdsThings);
  if (filled.length > 1)
    return {
      findings: [
        severalLists(
          folder,
          filled.map(({ file }) => file),
        ),
      ],
    };
  const list = filled[0] ?? lists[0];
  if (list === undefined) return { findings: [noList(folder, names)] };
  return { list, findings: filled.length === 0 ? list.findings.map(orElsewhere(there)) : list.findings };
}

// A list that cannot be read may hold things.
const holdsThings = ({ things, findings }: List) =>
  things.length > 0 || findings.some(({ weight, rule }) => weight === 'must' && rule !== 'list.no-things');

/** Of several lists without things, any may be filled in. */
const orElsewhere =
  (there: readonly string[]) =>
  (finding: Finding): Finding => {
    if (finding.rule !== 'list.no-things' || there.length < 2) return finding;
    const others = there.filter((file) => file !== finding.place.file).join(' or ');
    return {
      ...finding,
      advice: `${finding.advice} The same can be done in ${others} instead.`,
    };
  };
