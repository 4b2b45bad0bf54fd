import type { AccessPoint, Component } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { ACCESS_POINT_ELEMENT, names } from '../ead/names.ts';

/** `controlaccess`: the access points of a component, agents first. */
export function accessPoints({ people, accessPoints: points }: Component, context: Context): XmlElement[] {
  const found = [...names(people, context), ...points.map(context.accessPointOf)];
  return found.length === 0 ? [] : [element('controlaccess', {}, found)];
}

/** One access point other than an agent. */
export const accessPoint = ({ type, term, source, identifier }: AccessPoint) =>
  element(ACCESS_POINT_ELEMENT[type], { identifier, source }, [element('part', {}, term)]);
