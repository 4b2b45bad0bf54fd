import type { Found } from './found.ts';
import { type Seen, startTag } from './scan-tag.ts';
import { afterBlanks, CODE, characters, endOfAside, fail, isCharacterData } from './scan-text.ts';

const NO_CHILDREN: readonly (Found | string)[] = Object.freeze([]);

/** What may be said of the reading of a text. */
interface Scanning {
  /** Called with each element once it is whole. */
  finish?: (element: Found) => Found;
  seen?: Seen;
  /** How many elements may stand in one another. */
  deepest?: number;
}

/**
 * Reads the text of one element into a tree; comments and processing instructions are left out. It takes nothing that
 * is not well-formed by XML 1.0, and knows neither document types nor entities but those of 4.6. Every letter of a
 * finding aid passes here, so it is written out by hand, and makes no object that it does not keep.
 * @throws Error where the text is not well-formed
 */
export function scan(
  text: string,
  {
    finish = (element) => element,
    seen = { names: new Map(), ids: new Set() },
    deepest = Number.POSITIVE_INFINITY,
  }: Scanning = {},
): Found {
  const stack: ReturnType<typeof startTag>[] = [];
  // The children of all elements that are open. A list for each, grown as it fills, would take twice the memory.
  const nodes: (Found | string)[] = [];
  let top = 0;
  let here = 0;
  const OUTSIDE = 'A text stands outside of the outermost element';

  while (here < text.length) {
    const tag = text.indexOf('<', here);
    const upTo = tag < 0 ? text.length : tag;
    if (upTo > here) {
      if (stack.length > 0) nodes[top++] = characters(text.slice(here, upTo), here);
      else if (afterBlanks(text, here) < upTo) fail(OUTSIDE, here);
    }
    if (tag < 0) break;
    here = tag + 1;
    const mark = text.charCodeAt(here);
    if (mark === CODE.slash) {
      const open = stack.pop();
      if (open === undefined || !text.startsWith(open.name, here + 1))
        return fail('An end tag closes nothing', here);
      const { name, attributes, first } = open;
      const end = afterBlanks(text, here + 1 + name.length);
      if (text.charCodeAt(end) !== CODE.greater) fail(`The end tag of ${name} is expected`, here);
      const children = first === top ? NO_CHILDREN : nodes.slice(first, top);
      top = first;
      nodes[top++] = finish({ name, attributes, children });
      here = end + 1;
    } else if (mark === CODE.exclamation || mark === CODE.question) {
      const end = endOfAside(text, here);
      if (isCharacterData(text, here)) {
        if (stack.length === 0) fail(OUTSIDE, here);
        nodes[top++] = text.slice(here + '![CDATA['.length, end - ']]>'.length);
      }
      here = end;
    } else {
      if (stack.length === 0 && top > 0) fail('A second outermost element begins', here);
      const open = startTag(text, here, seen);
      open.first = top;
      here = open.end;
      if (stack.length === deepest) fail('The elements are nested too deeply', here);
      if (!open.isEmpty) stack.push(open);
      else nodes[top++] = finish({ name: open.name, attributes: open.attributes, children: NO_CHILDREN });
    }
  }
  const open = stack.at(-1);
  if (open !== undefined) fail(`<${open.name}> is not closed`, here);
  const [root] = nodes;
  return top > 0 && typeof root === 'object' ? root : fail('There is no element', here);
}
