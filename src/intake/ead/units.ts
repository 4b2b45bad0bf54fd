import type { Component } from '../../catalogue/component.ts';
import type { People } from './agents.ts';
import { compact } from './compact.ts';
import { isComponent, readUnit } from './component.ts';
import { at, type Found, isElement } from './found.ts';
import { isId } from './ids.ts';

/** A unit as it was found. */
export interface FoundUnit {
  /** Its element, without the units below it. */
  element: Found;
  /** What stood before it, as in `kept`. */
  before?: string;
}

/** What the units of one finding aid have in common while they are read. */
export interface Reading {
  agents: People;
  /** Ids that are taken: those of all elements of the file, and those that were made. */
  ids: Set<string>;
  repaired: Map<string, number>;
  found: Map<Component, FoundUnit>;
}

/** Stands in a `dsc` for the units of description. */
const UNITS: Found = { name: 'c', attributes: {}, children: [] };

/** Reads the description of the material, with all its units. */
export function collectionOf(archdesc: Found, reading: Reading): Component {
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
      else begins(list.units[0], list.shell, reading);
      for (const unit of list.units) children.push(unit);
    }
  }
  return unitOf({ ...archdesc, children: shell }, reading, used, children);
}

/** Notes with a unit that a `dsc` begins with it. */
function begins(unit: Component | undefined, shell: Found, { found }: Reading): void {
  const first = unit && found.get(unit);
  if (first !== undefined) first.before = compact(shell) + (first.before ?? '');
}

/** Whether a child is, or may hold, something other than a part of the description of its parent. */
const isApart = (child: Found | string): boolean =>
  typeof child !== 'string' && (child.name === 'dsc' || child.name === 'thead' || isComponent(child));

/** The units in a `dsc` or in another unit, and the element without them. */
function unitsOf(
  parent: Found,
  reading: Reading,
  used: Set<string>,
): { units: Component[]; shell: Found; after: Found[] } {
  const units: Component[] = [];
  if (!parent.children.some(isApart)) return { units, shell: parent, after: [] };
  const shell: (Found | string)[] = [];
  let before: Found[] = [];
  for (const child of parent.children) {
    if (!isElement(child)) shell.push(child);
    else if (isComponent(child)) {
      if (child.name !== 'c') mend(reading, 'Numbered components (c01, c02 and so on) are written as c.');
      const below = unitsOf(child, reading, used);
      const element = child.name === 'c' ? below.shell : { ...below.shell, name: 'c' };
      const unit = unitOf(element, reading, used, below.units);
      const found = reading.found.get(unit);
      if (before.length > 0 && found !== undefined) found.before = before.map(compact).join('');
      before = [];
      units.push(unit);
    } else if (child.name === 'dsc' && parent.name === 'dsc') {
      mend(reading, 'A dsc within a dsc is written beside it.');
      const inner = unitsOf(child, reading, used);
      if (inner.units.length === 0) shell.push(child);
      else begins(inner.units[0], inner.shell, reading);
      units.push(...inner.units);
    } else if (child.name === 'thead') before.push(child);
    else shell.push(child);
  }
  return { units, shell: { ...parent, children: shell }, after: before };
}

/** Text between the parts of a unit, where there can be none, becomes a note. */
function withoutLooseText(shell: Found, reading: Reading): Found {
  if (shell.children.every(isElement)) return shell;
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
  const element = withoutLooseText(found, reading);
  if (at(element, 'did') === undefined) mend(reading, 'A unit has no did; its title is made up.');
  const said = element.attributes.id;
  const own = isId(said) ? said : undefined;
  if (own !== undefined && used.has(own))
    mend(reading, 'Two units have the same id; the later one was given another.');
  const id = own === undefined || used.has(own) ? freeId(reading.ids) : own;
  used.add(id);
  const unit = readUnit(element, reading.agents, id, children.length > 0);
  unit.children = children;
  reading.found.set(unit, { element });
  return unit;
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
