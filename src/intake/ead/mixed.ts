import type { Found } from './found.ts';
import { afterBlanks } from './scan-text.ts';

/**
 * Elements in which a blank between two others parts two words, by the content models of EAD3 1.1.1 and EAD 2002: they
 * hold text beside elements. Anywhere else a blank that is all the text there is is indentation.
 */
const RUNNING = new Set(
  (
    'p head head01 head02 head03 item event emph quote label ref extref title titleproper subtitle unittitle abstract ' +
    'unitid unitdate entry citation bibref archref persname corpname famname name geogname subject genreform occupation ' +
    'function part container physloc num publisher author sponsor creation descrules addressline physfacet extent ' +
    'dimensions materialspec edition didnote date term foreign abbr expan imprint bibseries subarea'
  ).split(' '),
);

/** An element without its indentation. Every element passes here, so nothing is made for one that has none. */
export function withoutIndentation(element: Found): Found {
  const { name, children } = element;
  const [only] = children;
  if (only === undefined || (children.length === 1 && typeof only === 'object')) return element;
  let elements = 0;
  let onOneLine = false;
  for (const child of children) {
    if (typeof child === 'object') elements += 1;
    else if (afterBlanks(child, 0) < child.length) return element;
    else if (!child.includes('\n')) onOneLine = true;
  }
  // A running text that holds an element alone was laid out on lines by its writer only where a line break says so.
  if (
    elements === children.length ||
    (RUNNING.has(name) && (children.length === 1 || onOneLine || elements > 1))
  )
    return element;
  return {
    name,
    attributes: element.attributes,
    children: children.filter((child) => typeof child === 'object'),
  };
}
