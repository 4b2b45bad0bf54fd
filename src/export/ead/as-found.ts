import type { Component } from '../../catalogue/component.ts';
import type { Control, FindingAid } from '../../catalogue/finding-aid.ts';
import type { Kept } from '../../catalogue/kept.ts';
import { people } from '../../intake/ead/agents.ts';
import { readUnit } from '../../intake/ead/component.ts';
import { at, type EadVersion, elementsOf, type Found } from '../../intake/ead/found.ts';
import { controlOf } from '../../intake/ead/index.ts';
import { scan } from '../../intake/ead/scan.ts';
import type { XmlElement, XmlNode } from '../../xml/element.ts';
import type { Context } from './context.ts';
import { controlInOtherVersion } from './control-in-other-version.ts';
import { groupBeside, groupInDid, WRAPPERS } from './groups.ts';
import { changedGroups, merge, mergeAttributes, mergeElement, type States } from './merge.ts';
import { inOtherVersion } from './other-version.ts';

/** How a version of EAD writes a unit, and the control of the description. */
export interface Writer {
  version: EadVersion;
  contextOf: (aid: Pick<FindingAid, 'people' | 'recipient'>) => Context;
  /** The element of a unit, without the units below it. */
  unit: (unit: Component, context: Context, name: string) => XmlElement & { children: readonly XmlElement[] };
  control: (control: Control, context: Context) => XmlElement;
}

/** Reads what was kept. @throws Error where it is no longer XML, with the place for the message */
export function foundIn(xml: string, where: string): Found {
  try {
    return scan(xml);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(
      `What is kept of ${where} as it was found cannot be read: ${why} Take the entry "kept" out of it.`,
    );
  }
}

/** What a unit was when it was taken in: read from what was kept of it, and written. */
function unitThen(found: Found, unit: Component, writer: Writer) {
  const agents = people();
  const then = readUnit(found, agents, unit.id, unit.children.length > 0);
  // Read first: reading is what makes the agents known.
  return writer.unit(then, writer.contextOf({ people: agents.list() }), found.name);
}

/**
 * The element of a unit that was taken in, as it was found; what has been changed since is written as the model has it,
 * and so is what was found in the other version of EAD and is told in quite another way here.
 * @param now what the writer makes of it
 */
export function unitAsFound(
  unit: Component & { kept: Kept },
  now: XmlElement & { children: readonly XmlElement[] },
  writer: Writer,
): XmlElement & { children: readonly XmlNode[] } {
  const kept = foundIn(unit.kept.xml, unit.id);
  const before = unitThen(kept, unit, writer);
  const [didThen, ...besideThen] = before.children;
  const [didNow, ...besideNow] = now.children;
  const foreign = unit.kept.format !== writer.version;
  const told = foreign ? inOtherVersion(kept, writer.version) : { element: kept, inDid: [], beside: [] };
  const did = at(told.element, 'did');
  if (did === undefined || didThen === undefined || didNow === undefined) return now;
  const inDid = { found: did.children, before: elements(didThen), now: elements(didNow) };
  const beside = { found: told.element.children, before: besideThen, now: besideNow };
  const changedIn = new Set([...changedGroups(inDid, groupInDid), ...told.inDid]);
  const changedBeside = new Set([...changedGroups(beside, groupBeside), ...told.beside]);
  // Notes of the did are general notes of the unit.
  if (changedIn.has('notes') || changedBeside.has('notes'))
    for (const set of [changedIn, changedBeside]) set.add('notes');
  const unwrapped = withoutWrappers(told.element, changedBeside);
  const newDid: XmlElement = { ...did, children: merge(inDid, groupInDid, changedIn) };
  const children = merge({ ...beside, found: unwrapped }, groupBeside, changedBeside).map((child) =>
    child === did ? newDid : child,
  );
  return { name: told.element.name, attributes: mergeAttributes(told.element, before, now), children };
}

const elements = ({ children }: XmlElement) =>
  [...children].filter((child): child is XmlElement => typeof child !== 'string');

/** Where one note of several that stand together has changed, all of them are written anew. */
function withoutWrappers({ children }: Found, changed: Set<string>): States['found'] {
  const groupsIn = (wrapper: Found): string[] =>
    elementsOf(wrapper).flatMap((part) => (WRAPPERS.has(part.name) ? groupsIn(part) : [groupBeside(part)]));
  return children.filter((child) => {
    if (typeof child === 'string' || !WRAPPERS.has(child.name)) return true;
    const groups = groupsIn(child).filter((group) => group !== 'head');
    if (!groups.some((group) => changed.has(group))) return true;
    for (const group of groups) changed.add(group);
    return false;
  });
}

/** The root and all that stands before the description of the material, in the same way. */
export function controlAsFound(
  control: Control & { kept: Kept },
  now: XmlElement,
  context: Context,
  writer: Writer,
): XmlElement & { children: readonly XmlNode[] } {
  const shell = foundIn(control.kept.xml, 'the control');
  const { title, maintenanceAgency: keeper, history, kept } = control;
  const then = controlOf(shell, kept.format, { title, keeper, date: history[0]?.date ?? '' });
  const before = writer.control(then, context);
  if (kept.format !== writer.version) {
    const told = controlInOtherVersion(shell, before, now, writer.version);
    return { name: 'ead', attributes: {}, children: [told] };
  }
  const found = at(shell, now.name);
  const children = found === undefined ? [now] : shell.children;
  return {
    ...shell,
    children: children.map((child) => (child === found && found ? mergeElement(found, before, now) : child)),
  };
}
