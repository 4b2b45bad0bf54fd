import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { withUnits } from '../../catalogue/units.ts';
import { type CopyFacts, isPath } from '../../copies/index.ts';
import { type CopyToGive, copyNamer } from '../copies-to-give.ts';

/**
 * The copies that the units of a finding aid name, each file once, in its order. A unit without a code has that of the
 * nearest unit above it that has one.
 * @param facts by path
 */
export function copiesOfUnits(
  { collection, control }: FindingAid,
  facts: ReadonlyMap<string, CopyFacts>,
): CopyToGive[] {
  const name = copyNamer(facts);
  const copies = new Map<string, CopyToGive>();
  const visit = ({ title, referenceCode, digitalCopies, children }: Component, above: string): void => {
    const code = referenceCode ?? above;
    const paths = digitalCopies.map(({ file }) => file).filter((file) => isPath(file) && !copies.has(file));
    for (const copy of name(title, code, paths)) copies.set(copy.path, copy);
    for (const child of children) visit(child, code);
  };
  visit(collection, control.recordId);
  return [...copies.values()];
}

/**
 * The finding aid with its copies named as they are in the package. What is no file of the catalogue keeps the address
 * that the finding aid came with, which may mean something to those who made it.
 */
export const withCopyNames = (aid: FindingAid, copies: ReadonlyMap<string, CopyToGive>): FindingAid =>
  withUnits(aid, (unit) => {
    if (unit.digitalCopies.every(({ file }) => copies.get(file)?.name === undefined)) return unit;
    return {
      ...unit,
      digitalCopies: unit.digitalCopies.map((copy) => {
        const name = copies.get(copy.file)?.name;
        return name === undefined ? copy : { ...copy, file: `../copies/${name}` };
      }),
    };
  });
