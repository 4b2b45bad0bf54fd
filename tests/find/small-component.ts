import type { Component } from '../../src/catalogue/component.ts';
import { nothing } from '../../src/catalogue/nothing.ts';

/** A unit with nothing in it but what is given. */
export function smallComponent(over: Partial<Component>): Component {
  return {
    id: 'unit',
    level: 'item',
    title: 'Letter',
    ...nothing(),
    children: [],
    ...over,
  };
}
