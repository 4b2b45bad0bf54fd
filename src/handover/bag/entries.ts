import type { Finding } from '../../catalogue/finding.ts';
import type { Content } from '../../catalogue/write-whole.ts';
import { leadsOut, plainPath } from './paths.ts';
import { nameKey } from './same-name.ts';

/** A file of the payload: its path below `data/` with forward slashes, and the file to copy or the content to write. */
export type BagEntry = { path: string } & ({ from: string } | { content: Content });

/**
 * A judge of the paths of a payload, asked for each in turn: none may lead out of the bag, nor be the same as another,
 * be it only on some systems. What it finds stops the work.
 */
export function pathJudge(): (path: string) => Finding | undefined {
  const known = new Map<string, { name: string; isFile: boolean }>();
  return (path) => {
    const refuse = (found: string): Finding => {
      const advice = 'Give the file another name in the package.';
      return { rule: 'bag.path', weight: 'must', place: { file: path }, found, advice };
    };
    const out = leadsOut(path);
    if (out !== undefined) return refuse(`The path ${out}, and would lead out of the package.`);
    if (path === '' || path.endsWith('/') || path.includes('\\') || plainPath(path) !== path)
      return refuse('This is no plain path of a file.');
    const parts = path.split('/');
    for (let length = 1; length <= parts.length; length++) {
      const name = parts.slice(0, length).join('/');
      const isFile = length === parts.length;
      const other = known.get(nameKey(name));
      if (other === undefined) known.set(nameKey(name), { name, isFile });
      else if (isFile || other.isFile || other.name !== name)
        return refuse(`The package already has ${other.name}, and on some systems the two would be one.`);
    }
    return undefined;
  };
}
