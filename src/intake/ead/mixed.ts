import { type Found, isElement } from './found.ts';

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

const isBlank = (text: string) => /^[ \t\r\n]*$/.test(text);

/** An element without its indentation. */
export function withoutIndentation(element: Found): Found {
  const { name, children } = element;
  const only = children.length === 1;
  if (only && (typeof children[0] === 'object' || RUNNING.has(name))) return element;
  if (RUNNING.has(name)) {
    // A running text that holds elements alone was laid out on lines by its writer only where a line break says so.
    const laidOut = children.every((child) => isElement(child) || (isBlank(child) && child.includes('\n')));
    if (!laidOut || children.filter(isElement).length > 1) return element;
  } else if (!children.every((child) => isElement(child) || isBlank(child))) return element;
  const kept = children.filter(isElement);
  return kept.length === children.length ? element : { ...element, children: kept };
}
