import { type EadVersion, elementsOf, type Found, isElement } from '../../intake/ead/found.ts';
import { CONVERSIONS } from './conversions.ts';
import { converted } from './convert.ts';
import { convertedAttributes } from './convert-attributes.ts';
import { type GroupOf, groupBeside, groupInDid } from './groups.ts';

/** A unit as it was found in one version of EAD, told in the other. */
interface Told {
  element: Found;
  /** Groups of the did, and beside it, that the other version tells in another way: the model has to say them. */
  inDid: string[];
  beside: string[];
}

/** Tells a unit in the other version of EAD, as far as that has the same means. */
export function inOtherVersion(unit: Found, to: EadVersion): Told {
  const inDid = new Set<string>();
  const beside = new Set<string>();
  const children = convertAll(unit.children, to, groupBeside, beside, (child) => {
    if (child.name !== 'did') return undefined;
    const parts = convertAll(child.children, to, groupInDid, inDid);
    return [{ name: 'did', attributes: attributesOf(child, to), children: parts }];
  });
  return {
    element: { name: unit.name, attributes: attributesOf(unit, to), children },
    inDid: [...inDid],
    beside: [...beside],
  };
}

function convertAll(
  children: Found['children'],
  to: EadVersion,
  groupOf: GroupOf,
  failed: Set<string>,
  special: (child: Found) => Found[] | undefined = () => undefined,
): Found[] {
  const made = children.filter(isElement).map((child) => {
    const told = special(child) ?? converted(child, to);
    if (told === undefined) for (const group of groupsOf(child, groupOf)) failed.add(group);
    return { child, told };
  });
  return made.flatMap(({ child, told }) =>
    told === undefined || failed.has(groupOf(child)) ? [] : told.filter((one) => !failed.has(groupOf(one))),
  );
}

/** The groups of an element, or of all that it holds together. */
function groupsOf(element: Found, groupOf: GroupOf): string[] {
  return element.name === 'descgrp'
    ? elementsOf(element).flatMap((part) => groupsOf(part, groupOf))
    : [groupOf(element)];
}

function attributesOf(element: Found, to: EadVersion): Record<string, string> {
  const row = CONVERSIONS.find((one) => one.ead2002 === element.name);
  return row === undefined ? {} : convertedAttributes(element, row, to);
}
