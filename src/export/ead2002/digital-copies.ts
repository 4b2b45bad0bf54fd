import type { DigitalCopy } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { ps } from '../ead/text.ts';
import { simpleLink } from './link.ts';

/** `dao`; several copies of one unit stand together in a `daogrp`. */
export function digitalCopies(copies: readonly DigitalCopy[]): XmlElement[] {
  if (copies.length < 2) return copies.map((copy) => digitalCopy('dao', copy, 'simple'));
  const places = copies.map((copy) => digitalCopy('daoloc', copy, 'locator'));
  return [element('daogrp', { 'xlink:type': 'extended' }, places)];
}

/** The role tells a copy that was made from a thing from one that was digital from the start. */
function digitalCopy(name: string, { file, origin, title, note }: DigitalCopy, type: string): XmlElement {
  return element(
    name,
    { ...simpleLink(file, title, origin), 'xlink:type': type },
    note === undefined ? [] : [element('daodesc', {}, ps(note))],
  );
}
