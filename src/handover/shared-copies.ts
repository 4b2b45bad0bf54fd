import { realpath } from 'node:fs/promises';
import { join } from 'node:path';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type CopyFacts, gatherCopies, isPath } from '../copies/index.ts';
import { IN_NO_LIST } from './taken-in/units.ts';

/**
 * Copies of given things that show what stays with the family as well: the same name, the same file by another way (a
 * link, or capitals that this disk does not tell apart), or the same bytes. Such a copy can neither be given nor left
 * out in silence.
 * @param facts of the copies of the given things, with their checksums
 */
export async function sharedCopies(
  folder: string,
  given: readonly Thing[],
  staying: readonly Thing[],
  facts: ReadonlyMap<string, CopyFacts>,
): Promise<Finding[]> {
  const own = await marksOf(folder, staying, facts);
  const findings: Finding[] = [];
  for (const thing of given) {
    for (const path of thing.copies) {
      const real = isPath(path) ? await realOf(folder, path) : undefined;
      const marks = [path, real, facts.get(path)?.sha256].filter((mark) => mark !== undefined);
      const title = marks.map((mark) => own.get(mark)).find((found) => found !== undefined);
      if (title !== undefined) findings.push(shared(thing, path, title));
    }
  }
  return findings;
}

/** By what a file of a staying thing would be known again, with the title of that thing. */
async function marksOf(
  folder: string,
  staying: readonly Thing[],
  facts: ReadonlyMap<string, CopyFacts>,
): Promise<Map<string, string>> {
  const marks = new Map<string, string>();
  const paths = staying.flatMap(({ copies }) => copies);
  const sizes = new Set([...facts.values()].map(({ bytes }) => bytes));
  const looked = await gatherCopies(folder, paths, { hash: false, afresh: true });
  // Only what has the size of a given copy can be the same.
  const alike = [...looked.values()].filter(({ bytes }) => bytes > 0 && sizes.has(bytes));
  const hashed = await gatherCopies(
    folder,
    alike.map(({ path }) => path),
    { afresh: true },
  );
  for (const { title, copies } of staying) {
    for (const path of copies) {
      const real = isPath(path) ? await realOf(folder, path) : undefined;
      for (const mark of [path, real, hashed.get(path)?.sha256])
        if (mark !== undefined) marks.set(mark, title);
    }
  }
  return marks;
}

const realOf = (folder: string, path: string) => realpath(join(folder, path)).catch(() => undefined);

const shared = ({ row, title }: Thing, path: string, other: string): Finding => ({
  rule: 'hand-over.shared-copy',
  weight: 'must',
  place:
    row === IN_NO_LIST
      ? { file: 'finding-aid.json', column: title }
      : { file: 'list.csv', row, column: 'copy' },
  found: `${path} is a copy of “${title}”, which goes, and the same file belongs to “${other}”, which stays.`,
  advice:
    'Decide which it is: take it out of the one or the other, or make a picture that shows only what goes.',
});
