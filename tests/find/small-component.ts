import type { Component } from '../../src/catalogue/component.ts';

/** A unit with nothing in it but what is given. */
export function smallComponent(over: Partial<Component>): Component {
  return {
    id: 'unit',
    level: 'item',
    title: 'Letter',
    otherIdentifiers: [],
    dates: [],
    extents: [],
    creators: [],
    languages: [],
    containers: [],
    digitalCopies: [],
    generalNotes: [],
    people: [],
    accessPoints: [],
    children: [],
    ...over,
  };
}
