import { element, type XmlElement } from '../../xml/element.ts';
import { ps } from '../ead/text.ts';

/** The running text in a `descriptivenote`, or nothing. */
export function descriptiveNote(text: string | undefined): XmlElement[] {
  return text === undefined ? [] : [element('descriptivenote', {}, ps(text))];
}
