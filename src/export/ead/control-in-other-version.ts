import { compact } from '../../intake/ead/compact.ts';
import { at, type EadVersion, elementsOf, type Found } from '../../intake/ead/found.ts';
import { paragraphsOf } from '../../intake/ead/text.ts';
import type { XmlElement, XmlNode } from '../../xml/element.ts';
import { converted } from './convert.ts';

/**
 * The control of the description as the model has it now, with what the two versions of EAD have alike and the model
 * does not: the titles of the finding aid with their marks and those who paid for it, and notes on it.
 * @param shell of the finding aid, in the other version
 * @param before what the model made of it, written
 */
export function controlInOtherVersion(
  shell: Found,
  before: XmlElement,
  now: XmlElement,
  to: EadVersion,
): XmlElement {
  const header = at(shell, to === 'ead3' ? 'eadheader' : 'control');
  const filedesc = at(header, 'filedesc');
  if (filedesc === undefined) return now;
  const titles = at(filedesc, 'titlestmt');
  const [told] = (titles && converted(titles, to)) ?? [];
  const unchanged = titlesIn(before) === titlesIn(now);
  const notes = notesIn(filedesc, to);
  return {
    ...now,
    children: [...now.children].map((child) => {
      if (typeof child === 'string' || child.name !== 'filedesc') return child;
      const parts = [...child.children].map((part) =>
        isNamed(part, 'titlestmt') && told !== undefined && unchanged ? told : part,
      );
      return { ...child, children: withNotes(parts, notes) };
    }),
  };
}

const isNamed = (node: XmlNode, name: string): node is XmlElement =>
  typeof node !== 'string' && node.name === name;

function titlesIn({ children }: XmlElement): string {
  const filedesc = [...children].find((child) => isNamed(child, 'filedesc'));
  if (filedesc === undefined || typeof filedesc === 'string') return '';
  return [...filedesc.children]
    .filter((child) => isNamed(child, 'titlestmt'))
    .map(compact)
    .join('');
}

/** Notes on the finding aid, but for those by which EAD 2002 tells what EAD3 has elements for. */
function notesIn(filedesc: Found, to: EadVersion): XmlElement[] {
  const statement = at(filedesc, 'notestmt');
  const notes = statement === undefined ? [] : elementsOf(statement);
  return notes.flatMap((note) => {
    if (note.attributes.type === 'maintenance agency' || note.attributes.type === 'sources') return [];
    const paragraphs = paragraphsOf(note);
    if (paragraphs.length === 0) return [];
    const children = paragraphs.map((text) => ({ name: 'p', attributes: {}, children: [text] }));
    return [{ name: to === 'ead3' ? 'controlnote' : 'note', attributes: {}, children }];
  });
}

/** `notestmt` is the last part of `filedesc` in both. */
function withNotes(parts: readonly XmlNode[], notes: readonly XmlElement[]): XmlNode[] {
  if (notes.length === 0) return [...parts];
  const statement = parts.find((part) => isNamed(part, 'notestmt'));
  if (statement === undefined || typeof statement === 'string')
    return [...parts, { name: 'notestmt', attributes: {}, children: notes }];
  return parts.map((part) =>
    part === statement ? { ...statement, children: [...statement.children, ...notes] } : part,
  );
}
