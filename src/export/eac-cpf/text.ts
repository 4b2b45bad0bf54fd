import { element, type XmlElement } from '../../xml/element.ts';
import { optional, ps } from '../ead/text.ts';

export { optional, ps };

/** The running text in a `descriptiveNote`, or nothing. */
export function descriptiveNote(text: string | undefined): XmlElement[] {
  return text === undefined ? [] : [element('descriptiveNote', {}, ps(text))];
}

/** The element around a list, or nothing where the list is empty. */
export function listOf(name: string, children: readonly XmlElement[]): XmlElement[] {
  return children.length === 0 ? [] : [element(name, {}, children)];
}
