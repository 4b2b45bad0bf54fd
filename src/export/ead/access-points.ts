import type { Component } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from './context.ts';

/** `controlaccess`: the access points of a component, agents first. */
export function accessPoints({ people, accessPoints: points }: Component, context: Context): XmlElement[] {
  const found = [...context.peopleOf(people), ...context.pointsOf(points)];
  return found.length === 0 ? [] : [element('controlaccess', {}, found)];
}
