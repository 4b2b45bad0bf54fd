import { addTo } from '../catalogue/add-to.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type CopyFacts, isPath } from '../copies/facts.ts';
import { reviewContent } from './copies-content.ts';
import { reviewPresence } from './copies-found.ts';
import { reviewNames } from './copies-names.ts';
import { reviewResolution } from './copies-resolution.ts';
import type { Copy } from './copies-said.ts';
import { reviewSame } from './copies-same.ts';

/**
 * What is missing, doubtful or dangerous about the digital copies that the list names. Addresses on the web are not
 * judged. More than ten findings of one rule are said in one.
 * @param facts by path, as `gatherCopies` gives them; where a path has none, only its name is judged. Facts of files
 * that no row names serve to find the same file twice.
 * @param unlisted files that lie among the copies and are named by no row
 */
export function reviewCopies(
  { things }: Pick<Catalogue, 'things'>,
  facts: ReadonlyMap<string, CopyFacts>,
  unlisted: readonly string[],
): Finding[] {
  const byPath = new Map<string, Thing[]>();
  for (const thing of things) {
    for (const path of new Set(thing.copies.filter(isPath))) {
      addTo(byPath, path, thing);
    }
  }
  const copyOf = (path: string, of: readonly Thing[]): Copy => {
    const known = facts.get(path);
    return { path, things: of, ...(known !== undefined && { facts: known }) };
  };
  const copies = [...byPath].map(([path, of]) => copyOf(path, of));
  const all = [...copies, ...unlisted.filter((path) => !byPath.has(path)).map((path) => copyOf(path, []))];
  return [
    ...reviewPresence(copies, unlisted),
    ...reviewNames(copies, unlisted),
    ...reviewContent(copies),
    ...reviewResolution(copies),
    ...reviewSame(all),
  ];
}
