import type { FindingAid } from '../catalogue/finding-aid.ts';
import { unitsFrom } from '../catalogue/units.ts';
import { isPath } from '../copies/index.ts';
import { withCopiesAt } from '../export/copies-at.ts';

/**
 * Two finding aids with the paths of their copies as seen from one place: `../copies/bell.jpg` in a file in the folder
 * of exports is `copies/bell.jpg` in the catalogue. Of two paths of which one ends as the other, the shorter is taken.
 */
export function withSameCopies([a, b]: readonly [FindingAid, FindingAid]): [FindingAid, FindingAid] {
  const byName = new Map<string, Set<string>>();
  for (const path of [...copiesIn(a), ...copiesIn(b)]) {
    const known = byName.get(nameOf(path));
    if (known === undefined) byName.set(nameOf(path), new Set([path]));
    else known.add(path);
  }
  const short = (path: string): string => {
    let shortest = path;
    for (const other of byName.get(nameOf(path)) ?? [])
      if (other.length < shortest.length && path.endsWith(`/${other}`)) shortest = other;
    return shortest;
  };
  return [withCopiesAt(a, short), withCopiesAt(b, short)];
}

const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1);

const copiesIn = ({ collection }: FindingAid): string[] =>
  [...unitsFrom(collection)].flatMap(({ digitalCopies }) =>
    digitalCopies.map(({ file }) => file).filter(isPath),
  );
