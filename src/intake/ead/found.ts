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

/** The elements of a name among the children. Most are asked for where there is none: then nothing is made. */
export function named({ children }: Found, name: string): readonly Found[] {
  let found: Found[] | undefined;
  for (const child of children) {
    if (typeof child === 'string' || child.name !== name) continue;
    if (found === undefined) found = [child];
    else found.push(child);
  }
  return found ?? NONE;
}

const NONE: readonly Found[] = [];

/** The first child of a name, and below it the first of the next name. */
export function at(element: Found | undefined, ...names: readonly string[]): Found | undefined {
  let here = element;
  for (const name of names) here = here && firstNamed(here, name);
  return here;
}

function firstNamed({ children }: Found, name: string): Found | undefined {
  for (const child of children) if (typeof child !== 'string' && child.name === name) return child;
  return undefined;
}

/** Every element of these names, however deep, in the order of the document; what lies within one is not searched. */
export function within(element: Found, names: ReadonlySet<string>, into: Found[] = []): Found[] {
  for (const child of element.children) {
    if (typeof child === 'string') continue;
    if (names.has(child.name)) into.push(child);
    else if (child.children.length > 0) within(child, names, into);
  }
  return into;
}
