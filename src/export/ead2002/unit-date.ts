import type { DateStatement } from '../../catalogue/component.ts';
import { normalDate, structuredDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';

/** `unitdate`: the words, and beside them what of the date its `normal` can hold. ISAD(G) 3.1.3, DACS 2.4. */
export function unitDate({ type, expression, edtf }: DateStatement): XmlElement {
  if (edtf === undefined) return element('unitdate', { type }, expression);
  const certainty = /[?~%]/.test(edtf) ? structuredDate(edtf)?.certainty : undefined;
  return element('unitdate', { certainty, normal: normalDate(edtf), type }, expression);
}
