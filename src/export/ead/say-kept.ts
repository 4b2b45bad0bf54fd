import type { Found } from '../../intake/ead/found.ts';
import type { XmlElement } from '../../xml/element.ts';

/** So many of one kind: `unitdate/@datechar`, 1056. */
export type Counts = Map<string, number>;

/**
 * Counts what an element as it was found holds beyond what is written of it from the model: elements by their names,
 * attributes by the element they stand in.
 */
export function countBeyond(found: Found, written: XmlElement, into: Counts): void {
  const rest = new Map<string, number>();
  tally(found, 1, rest);
  tally(written, -1, rest);
  let any = false;
  for (const [name, count] of rest) {
    if (count <= 0) continue;
    any = true;
    into.set(name, (into.get(name) ?? 0) + count);
  }
  if (!any) into.set(AS_LAID_OUT, (into.get(AS_LAID_OUT) ?? 0) + 1);
}

/** Where nothing more is there, the same is told in another order, with other blanks, or in other words. */
export const AS_LAID_OUT = 'order, blanks or wording';

function tally(element: XmlElement, step: number, into: Map<string, number>): void {
  const add = (name: string) => into.set(name, (into.get(name) ?? 0) + step);
  for (const [key, value] of Object.entries(element.attributes))
    if (value !== undefined) add(`${element.name}/@${key}`);
  for (const child of element.children) {
    if (typeof child === 'string') continue;
    add(child.name);
    tally(child, step, into);
  }
}
