import { compact } from '../../intake/ead/compact.ts';
import type { Found } from '../../intake/ead/found.ts';
import type { XmlElement, XmlNode } from '../../xml/element.ts';
import { type GroupOf, groupByName, STRUCTURES } from './groups.ts';

/** Elements of one parent in three states. */
export interface States {
  /** As they were found. */
  found: readonly (Found | string)[];
  /** What the model made of those, written. */
  before: readonly XmlElement[];
  /** What the model holds now, written. */
  now: readonly XmlElement[];
}

const isElement = (node: XmlNode): node is XmlElement => typeof node !== 'string';
const written = (elements: readonly XmlElement[]) => elements.map(compact).join('');

/** The groups whose elements are not written now as they were then. */
export function changedGroups({ before, now }: States, groupOf: GroupOf): Set<string> {
  const names = new Set([...before, ...now].map(groupOf));
  const of = (elements: readonly XmlElement[], name: string) =>
    written(elements.filter((element) => groupOf(element) === name));
  return new Set([...names].filter((name) => of(before, name) !== of(now, name)));
}

/**
 * The elements as they were found, but for the groups that have changed: those are written as the model has them now,
 * in the place of the first of them, or where the writer would put them.
 */
export function merge(states: States, groupOf: GroupOf, changed = changedGroups(states, groupOf)): XmlNode[] {
  if (changed.size === 0) return [...states.found];
  const out: XmlNode[] = [];
  const done = new Set<string>();
  for (const child of states.found) {
    const group = isElement(child) ? groupOf(child) : '';
    if (!isElement(child) || !changed.has(group)) out.push(child);
    else if (!done.has(group)) {
      done.add(group);
      out.push(...renewed(states, group, groupOf));
    }
  }
  for (const [index, element] of states.now.entries()) {
    const group = groupOf(element);
    if (!changed.has(group) || done.has(group)) continue;
    done.add(group);
    out.splice(placeFor(index, states.now, out, groupOf), 0, ...renewed(states, group, groupOf));
  }
  return out;
}

/** After the nearest of what the writer puts before it; else first, but for a heading and for what identifies the unit. */
function placeFor(
  index: number,
  now: readonly XmlElement[],
  out: readonly XmlNode[],
  groupOf: GroupOf,
): number {
  for (let at = index - 1; at >= 0; at--) {
    const before = now[at];
    const group = before && groupOf(before);
    const place = out.findLastIndex((node) => isElement(node) && groupOf(node) === group);
    if (place >= 0) return place + 1;
  }
  const first = out.findIndex((node) => !isElement(node) || !LEADING.has(node.name));
  return first < 0 ? out.length : first;
}

const LEADING = new Set(['head', 'did']);

/** A group as it is now; what of it has not changed is as it was found, where it can be told which that is. */
function renewed({ found, before, now }: States, group: string, groupOf: GroupOf): XmlElement[] {
  const mine = (node: XmlNode): node is XmlElement => isElement(node) && groupOf(node) === group;
  const [olds, thens, news] = [found.filter(mine) as Found[], before.filter(mine), now.filter(mine)];
  if (olds.length !== thens.length) return news;
  const [old, then, one] = [olds[0], thens[0], news[0]];
  if (olds.length === 1 && news.length === 1 && old && then && one && STRUCTURES.has(old.name))
    return [mergeElement(old, then, one)];
  const texts = thens.map(compact);
  const taken = new Set<number>();
  return news.map((element) => {
    const text = compact(element);
    const same = texts.findIndex((one, index) => one === text && !taken.has(index));
    if (same < 0) return element;
    taken.add(same);
    return olds[same] ?? element;
  });
}

/** An element whose children stand for different things. */
export function mergeElement(found: Found, before: XmlElement, now: XmlElement): XmlElement {
  const children = merge(
    {
      found: found.children,
      before: [...before.children].filter(isElement),
      now: [...now.children].filter(isElement),
    },
    groupByName,
  );
  return { name: found.name, attributes: mergeAttributes(found, before, now), children };
}

/** The attributes as they were found, but for those that have changed. */
export function mergeAttributes(found: Found, before: XmlElement, now: XmlElement): XmlElement['attributes'] {
  const merged: Record<string, string | undefined> = { ...found.attributes };
  for (const key of new Set([...Object.keys(before.attributes), ...Object.keys(now.attributes)]))
    if (before.attributes[key] !== now.attributes[key]) merged[key] = now.attributes[key];
  return merged;
}
