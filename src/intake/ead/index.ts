import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { Kept } from '../../catalogue/kept.ts';
import { type People, people } from './agents.ts';
import { compact } from './compact.ts';
import { isComponent, readUnit } from './component.ts';
import { type Missing, readControl } from './control.ts';
import { at, type EadVersion, elementsOf, type Found, isElement } from './found.ts';
import { readHeader } from './header.ts';
import { eadTree } from './tree.ts';

/** A finding aid that was read, and what had to be mended on the way. */
export interface ReadEad {
  version: EadVersion;
  aid: FindingAid;
  /** As sentences. */
  repaired: string[];
  /** The element of each unit as it was found, without the units below it, by the id of the unit. */
  found: ReadonlyMap<string, Found>;
}

/**
 * Reads a finding aid in EAD3 or EAD 2002. Every unit of it, and its control, is also kept as it was found.
 * @param file its name, for messages
 * @param today YYYY-MM-DD, for events of which the file tells no date
 * @throws CatalogueError where it cannot be read; see eadTree
 */
export async function readEad(bytes: Uint8Array, file: string, today: string): Promise<ReadEad> {
  const { version, root, repaired } = await eadTree(bytes, file);
  const archdesc = at(root, 'archdesc') ?? { name: 'archdesc', attributes: {}, children: [] };
  const agents = people();
  const reading: Reading = { version, agents, ids: new Set(), repaired: new Map(), found: new Map() };
  claimIds(root, reading.ids);
  const collection = collectionOf(archdesc, reading);
  const { repository } = collection;
  const control = controlOf(root, version, {
    title: collection.title,
    date: today,
    ...(repository !== undefined && { keeper: repository }),
  });
  const shell = { ...root, children: root.children.filter((child) => child !== archdesc) };
  const aid: FindingAid = {
    ...({ format: 'kinfonds finding aid', version: 1 } as const),
    control: { ...control, kept: { format: version, xml: compact(shell) } },
    people: agents.list(),
    collection,
  };
  const counted = [...reading.repaired].map(([says, count]) =>
    count === 1 ? says : `${says} (${count} times)`,
  );
  return { version, aid, repaired: [...repaired, ...counted], found: reading.found };
}

/** The record of the description in the shell of a finding aid, in either version. */
export function controlOf(root: Found, version: EadVersion, missing: Missing): FindingAid['control'] {
  const name = version === 'ead3' ? 'control' : 'eadheader';
  const element = at(root, name) ?? { name, attributes: {}, children: [] };
  return version === 'ead3' ? readControl(element, missing) : readHeader(element, missing);
}

interface Reading {
  version: EadVersion;
  agents: People;
  /** Ids that are taken: those of all elements of the file, and those that were made. */
  ids: Set<string>;
  repaired: Map<string, number>;
  found: Map<string, Found>;
}

function claimIds(element: Found, ids: Set<string>): void {
  if (element.attributes.id !== undefined) ids.add(element.attributes.id);
  for (const child of element.children) if (isElement(child)) claimIds(child, ids);
}

/** Stands in a `dsc` for the units of description. */
const UNITS: Found = { name: 'c', attributes: {}, children: [] };

function collectionOf(archdesc: Found, reading: Reading): Component {
  const used = new Set<string>();
  const children: Component[] = [];
  const shell: (Found | string)[] = [];
  for (const child of archdesc.children) {
    if (!isElement(child) || child.name !== 'dsc') shell.push(child);
    else {
      const first = children.length === 0;
      const list = unitsOf(child, reading, used);
      if (list.units.length === 0) shell.push(child);
      else if (first) shell.push({ ...list.shell, children: [...list.shell.children, UNITS, ...list.after] });
      else begins(list.units[0], list.shell);
      for (const unit of list.units) children.push(unit);
    }
  }
  return unitOf({ ...archdesc, children: shell }, reading, used, children);
}

/** Notes with a unit that a `dsc` begins with it. */
function begins(unit: Component | undefined, shell: Found): void {
  if (unit?.kept !== undefined) unit.kept.before = compact(shell) + (unit.kept.before ?? '');
}

/** The units in a `dsc` or in another unit, and the element without them. */
function unitsOf(
  parent: Found,
  reading: Reading,
  used: Set<string>,
): { units: Component[]; shell: Found; after: Found[] } {
  const units: Component[] = [];
  const shell: (Found | string)[] = [];
  let before: Found[] = [];
  for (const child of parent.children) {
    if (!isElement(child)) shell.push(child);
    else if (isComponent(child)) {
      if (child.name !== 'c') mend(reading, 'Numbered components (c01, c02 and so on) are written as c.');
      const below = unitsOf(child, reading, used);
      const unit = unitOf({ ...below.shell, name: 'c' }, reading, used, below.units);
      if (before.length > 0 && unit.kept !== undefined) unit.kept.before = before.map(compact).join('');
      before = [];
      units.push(unit);
    } else if (child.name === 'dsc' && parent.name === 'dsc') {
      mend(reading, 'A dsc within a dsc is written beside it.');
      const inner = unitsOf(child, reading, used);
      if (inner.units.length === 0) shell.push(child);
      else begins(inner.units[0], inner.shell);
      units.push(...inner.units);
    } else if (child.name === 'thead') before.push(child);
    else shell.push(child);
  }
  return { units, shell: { ...parent, children: shell }, after: before };
}

/** Text between the parts of a unit, where there can be none, becomes a note. */
function withoutLooseText(shell: Found, reading: Reading): Found {
  const children = shell.children.filter((child) => isElement(child) || /[^ \t\r\n]/.test(child));
  if (children.every(isElement)) return { ...shell, children };
  mend(
    reading,
    'A text stood between the parts of a unit, where none may stand; it was put into a note (odd).',
  );
  const noted = children.map((child) =>
    isElement(child)
      ? child
      : { name: 'odd', attributes: {}, children: [{ name: 'p', attributes: {}, children: [child] }] },
  );
  const [loose, rest] = [
    noted.filter((_, index) => !isElement(children[index] ?? '')),
    noted.filter((_, index) => isElement(children[index] ?? '')),
  ];
  return { ...shell, children: [...rest, ...loose] };
}

function unitOf(found: Found, reading: Reading, used: Set<string>, children: Component[]): Component {
  const shell = withoutLooseText(found, reading);
  const { id, ...unit } = readUnit(shell, reading.agents, children.length > 0);
  if (elementsOf(shell, 'did').length === 0) mend(reading, 'A unit has no did; its title is made up.');
  if (id !== undefined && used.has(id))
    mend(reading, 'Two units have the same id; the later one was given another.');
  const own = id === undefined || used.has(id) ? freeId(reading.ids) : id;
  used.add(own);
  reading.found.set(own, shell);
  const kept: Kept = { format: reading.version, xml: compact(shell) };
  return { id: own, ...unit, kept, children };
}

function freeId(ids: Set<string>): string {
  let number = ids.size + 1;
  while (ids.has(`u${number}`)) number += 1;
  const id = `u${number}`;
  ids.add(id);
  return id;
}

function mend({ repaired }: Reading, says: string): void {
  repaired.set(says, (repaired.get(says) ?? 0) + 1);
}
