import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { isPath } from '../copies/index.ts';

/**
 * The same finding aid with every digital copy under the address at which its reader finds it. An address on the web
 * stays as it is; parts without a copy are shared.
 */
export function withCopiesAt(aid: FindingAid, address: (file: string) => string): FindingAid {
  const visit = (unit: Component): Component => {
    const children = unit.children.map(visit);
    const isSame =
      unit.digitalCopies.length === 0 && children.every((child, at) => child === unit.children[at]);
    if (isSame) return unit;
    const digitalCopies = unit.digitalCopies.map((copy) =>
      isPath(copy.file) ? { ...copy, file: address(copy.file) } : copy,
    );
    return { ...unit, digitalCopies, children };
  };
  return { ...aid, collection: visit(aid.collection) };
}
