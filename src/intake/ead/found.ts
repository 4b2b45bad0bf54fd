import type { XmlElement } from '../../xml/element.ts';

/** An element as it was found in somebody's file: all of it is there. */
export interface Found extends XmlElement {
  attributes: Readonly<Record<string, string>>;
  children: readonly (Found | string)[];
}

/** The two versions of EAD that are read and written. */
export type EadVersion = 'ead3' | 'ead2002';

/** Whether a child is an element. */
export const isElement = (node: Found | string): node is Found => typeof node !== 'string';

/** The elements among the children, or those of one name. */
export function elementsOf({ children }: Found, name?: string): Found[] {
  const found: Found[] = [];
  for (const child of children)
    if (typeof child !== 'string' && (name === undefined || child.name === name)) found.push(child);
  return found;
}

/** The elements among the children by their names. */
export function byName({ children }: Found): (name: string) => readonly Found[] {
  const names = new Map<string, Found[]>();
  for (const child of children) {
    if (typeof child === 'string') continue;
    const alike = names.get(child.name);
    if (alike === undefined) names.set(child.name, [child]);
    else alike.push(child);
  }
  return (name) => names.get(name) ?? NONE;
}

const NONE: readonly Found[] = [];

/** The first child of a name, and below it the first of the next name. */
export function at(element: Found | undefined, ...names: readonly string[]): Found | undefined {
  let here = element;
  for (const name of names)
    here = here?.children.find((child): child is Found => isElement(child) && child.name === name);
  return here;
}

/** Every element of these names, however deep, in the order of the document; what lies within one is not searched. */
export function within(element: Found, names: ReadonlySet<string>, into: Found[] = []): Found[] {
  for (const child of element.children) {
    if (typeof child === 'string') continue;
    if (names.has(child.name)) into.push(child);
    else within(child, names, into);
  }
  return into;
}
