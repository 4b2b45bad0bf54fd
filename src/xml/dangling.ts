import type { XmlAttribute, XmlDocument } from 'libxml2-wasm';
import { legible } from './legible.ts';

/** More of them than this say nothing new. */
const MOST = 20;

/**
 * References from one element of a file to another that lead nowhere. XML Schema calls them an error (Part 1, 3.15.4,
 * "ID/IDREF binding"), but libxml2 lets them pass; so they are remarked upon and do not make a file invalid.
 * To be called after validation, which is how the engine learns which attributes are ids.
 * @param references the names of the attributes that hold one id or several, parted by white space
 */
export function danglingReferences(
  document: XmlDocument,
  references: readonly string[],
): { line: number; says: string }[] {
  if (references.length === 0) return [];
  const those = references
    .map((name) => `//@${name}[not(id(.)) or contains(normalize-space(.), " ")]`)
    .join(' | ');
  const doubtful = document.find(those) as XmlAttribute[];
  return doubtful.slice(0, MOST).flatMap((attribute) => {
    const lost = attribute.value.split(/\s+/, MOST).filter((id) => id !== '' && !leads(attribute, id));
    const element = attribute.parent;
    return lost.map((id) => ({
      line: element?.line ?? 1,
      says:
        `The attribute ${attribute.name} of <${legible(element?.name ?? '')}> points to “${legible(id)}”, ` +
        'and no element of this file has that id.',
    }));
  });
}

function leads(attribute: XmlAttribute, id: string): boolean {
  // No id holds a quotation mark.
  return !id.includes('"') && attribute.eval(`boolean(id("${id}"))`) === true;
}
