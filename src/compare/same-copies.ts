import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { isPath } from '../copies/index.ts';

/**
 * Two finding aids with the paths of their copies as seen from one place: `../copies/bell.jpg` in a file in the folder
 * of exports is `copies/bell.jpg` in the catalogue. Of two paths of which one ends as the other, the shorter is taken.
 */
export function withSameCopies([a, b]: readonly [FindingAid, FindingAid]): [FindingAid, FindingAid] {
  const byName = new Map<string, Set<string>>();
  for (const path of [...copiesIn(a.collection), ...copiesIn(b.collection)]) {
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
  return [seen(a, short), seen(b, short)];
}

const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1);

function* copiesIn({ digitalCopies, children }: Component): Generator<string> {
  for (const { file } of digitalCopies) if (isPath(file)) yield file;
  for (const child of children) yield* copiesIn(child);
}

function seen(aid: FindingAid, short: (path: string) => string): FindingAid {
  const visit = (unit: Component): Component => ({
    ...unit,
    digitalCopies: unit.digitalCopies.map((copy) =>
      isPath(copy.file) ? { ...copy, file: short(copy.file) } : copy,
    ),
    children: unit.children.map(visit),
  });
  return { ...aid, collection: visit(aid.collection) };
}
