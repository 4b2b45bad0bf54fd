import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { at, type EadVersion } from '../../intake/ead/found.ts';
import type { XmlElement } from '../../xml/element.ts';
import { controlAsFound, foundIn, unitAsFound } from './as-found.ts';
import { WRITERS } from './needed.ts';

/** What a version of EAD does not hold of a finding aid that was found in the other. */
export interface NotHeld {
  /** Words, with the element that they stood in, and how often: `revisiondesc`, `Converted`, 1. */
  words: { element: string; word: string; count: number }[];
  /** Values of attributes: `unitdate/@datechar`, `creation`, 944. */
  attributes: { attribute: string; value: string; count: number }[];
}

/** Attributes that say no more than how the file is made. */
const TECHNICAL = /^(?:xmlns(?::.*)?|xsi:.*|xlink:type)$/;

/**
 * Holds each unit as it was found against what is written of it in the other version of EAD: word by word, and value
 * by value. What is told there in another attribute or element counts as told.
 */
export function notHeld(aid: FindingAid, version: EadVersion): NotHeld {
  const writer = WRITERS[version];
  const context = writer.contextOf(aid);
  const sums = { words: new Map<string, number>(), attributes: new Map<string, number>() };
  const { kept } = aid.control;
  if (kept !== undefined && kept.format !== version) {
    const now = writer.control(aid.control, context);
    const written = controlAsFound({ ...aid.control, kept }, now, context, writer);
    const shell = foundIn(kept.xml, 'the control');
    weigh(shell, written, sums);
  }
  const walk = (unit: Component, name: string): void => {
    const { kept: own } = unit;
    if (own !== undefined && own.format !== version) {
      const found = foundIn(own.xml, unit.id);
      if (at(found, 'did') !== undefined)
        weigh(found, unitAsFound({ ...unit, kept: own }, writer.unit(unit, context, name), writer), sums);
    }
    for (const child of unit.children) walk(child, 'c');
  };
  walk(aid.collection, 'archdesc');
  return {
    words: rows(sums.words, (element, word, count) => ({ element, word, count })),
    attributes: rows(sums.attributes, (attribute, value, count) => ({ attribute, value, count })),
  };
}

interface Sums {
  words: Map<string, number>;
  attributes: Map<string, number>;
}

function weigh(found: XmlElement, written: XmlElement, sums: Sums): void {
  const [before, after] = [contentOf(found), contentOf(written)];
  // Anything that is written anywhere answers for what was found: a value as a word, a word as a value.
  const rest = tally([...after.words, ...after.values].map(({ text }) => text));
  const texts = tally(after.texts.map(({ text }) => text));
  const missing = (
    entries: readonly Content[],
    into: Map<string, number>,
    tallies: Map<string, number>[],
  ) => {
    for (const { place, text } of entries) {
      const told = tallies.find((counts) => (counts.get(text) ?? 0) > 0);
      if (told !== undefined) told.set(text, (told.get(text) ?? 0) - 1);
      else into.set(`${place}\n${text}`, (into.get(`${place}\n${text}`) ?? 0) + 1);
    }
  };
  missing(before.words, sums.words, [rest]);
  missing(before.values, sums.attributes, [rest, texts]);
}

interface Content {
  place: string;
  text: string;
}

/** Words, values of attributes, and texts as a whole: what was a value may now be all the text of an element. */
interface Contents {
  words: Content[];
  values: Content[];
  texts: Content[];
}

function contentOf(element: XmlElement, into: Contents = { words: [], values: [], texts: [] }): Contents {
  for (const [key, value] of Object.entries(element.attributes))
    if (value !== undefined && value !== '' && !TECHNICAL.test(key))
      into.values.push({ place: `${element.name}/@${key}`, text: value });
  for (const child of element.children) {
    if (typeof child !== 'string') {
      contentOf(child, into);
      continue;
    }
    into.texts.push({ place: element.name, text: child });
    for (const [text] of child.matchAll(/[\p{L}\p{N}]+/gu)) into.words.push({ place: element.name, text });
  }
  return into;
}

function tally(texts: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return counts;
}

function rows<Row>(
  sums: ReadonlyMap<string, number>,
  make: (place: string, text: string, count: number) => Row,
): Row[] {
  return [...sums].map(([key, count]) => {
    const [place = '', ...text] = key.split('\n');
    return make(place, text.join('\n'), count);
  });
}
