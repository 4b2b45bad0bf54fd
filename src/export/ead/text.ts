import { paragraphs } from '../../catalogue/text.ts';
import { element, type XmlElement } from '../../xml/element.ts';

/** An element with the text, or nothing where there is none: a finding aid holds no empty elements. */
export function optional(name: string, text: string | undefined): XmlElement[] {
  return text === undefined ? [] : [element(name, {}, text)];
}

/** The paragraphs of a running text as `p`. */
export function ps(text: string): XmlElement[] {
  return paragraphs(text).map((paragraph) => element('p', {}, paragraph));
}

/** `address` with its lines, or nothing. */
export function address(lines: readonly string[] | undefined): XmlElement[] {
  if (lines === undefined || lines.length === 0) return [];
  return [
    element(
      'address',
      {},
      lines.map((text) => element('addressline', {}, text)),
    ),
  ];
}
