import type { AccessPoint } from '../../catalogue/component.ts';
import { element } from '../../xml/element.ts';
import { ACCESS_POINT_ELEMENT } from '../ead/names.ts';
import { register } from './names.ts';

/** One access point other than an agent. */
export const accessPoint = (point: AccessPoint) =>
  element(ACCESS_POINT_ELEMENT[point.type], register(point), point.term);
