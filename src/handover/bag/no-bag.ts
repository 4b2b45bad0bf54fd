import { join } from 'node:path';
import type { Finding } from '../../catalogue/finding.ts';
import { DECLARATION_FILE } from './declaration.ts';
import type { BagTags } from './read-bag.ts';
import type { Tree } from './tree.ts';

/** Says so where a folder has nothing at all of a bag, and where a bag lies in it, perhaps the one that was meant. */
export function notABag(folder: string, tree: Tree, tags: BagTags): Finding | undefined {
  if (tree.files.has(DECLARATION_FILE) || tags.manifests.length > 0) return undefined;
  const inside = [...tree.files.keys()].filter((path) => /^[^/]+\/bagit\.txt$/.test(path));
  const bags = inside.map((path) => join(folder, path.slice(0, path.indexOf('/'))));
  const advice =
    bags.length > 0
      ? `A bag lies in it: ${bags.slice(0, 3).join(', ')}${bags.length > 3 ? ', …' : ''}`
      : 'Give the folder in which bagit.txt and data lie.';
  const found = 'This folder is no bag: it holds neither bagit.txt nor a list of checksums.';
  return { rule: 'bag.no-bag', weight: 'must', place: { file: folder }, found, advice };
}
