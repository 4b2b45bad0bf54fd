import type { CopyFacts } from './facts.ts';
import { filesBelow } from './files-below.ts';
import { gatherCopies } from './gather.ts';

/**
 * What there is to know of the digital copies of a catalogue: facts of those that the list names and of those that
 * lie among them, and which of them no row names.
 * @param named paths as the list has them
 * @param step called for each file
 */
export async function copiesIn(
  folder: string,
  named: readonly string[],
  step: (path: string) => void = () => {},
): Promise<{ facts: ReadonlyMap<string, CopyFacts>; unlisted: string[] }> {
  const known = new Set(named);
  const unlisted = (await filesBelow(folder, named)).filter((path) => !known.has(path));
  return { facts: await gatherCopies(folder, [...known, ...unlisted], { step }), unlisted };
}
