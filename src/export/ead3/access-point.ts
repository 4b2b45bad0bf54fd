import type { AccessPoint } from '../../catalogue/component.ts';
import { element } from '../../xml/element.ts';
import { ACCESS_POINT_ELEMENT } from '../ead/names.ts';

/** One access point other than an agent. */
export const accessPoint = ({ type, term, source, identifier }: AccessPoint) =>
  element(ACCESS_POINT_ELEMENT[type], { identifier, source }, [element('part', {}, term)]);
