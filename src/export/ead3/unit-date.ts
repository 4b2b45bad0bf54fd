import type { DateStatement } from '../../catalogue/component.ts';
import { type DatePart, displayDate, type StructuredDate, structuredDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';

/** `unitdatestructured`, and `unitdate` for what the structure cannot hold: ISAD(G) 3.1.3, DACS 2.4. */
export function unitDate({ type, expression, edtf }: DateStatement): XmlElement[] {
  const inWords = () => element('unitdate', { unitdatetype: type }, expression);
  const date = edtf === undefined ? undefined : structuredDate(edtf);
  if (edtf === undefined || date === undefined) return [inWords()];
  const structure = element('unitdatestructured', { certainty: date.certainty, unitdatetype: type }, [
    date.kind === 'single' ? single({ ...date.date, expression }) : several(date),
  ]);
  // A range shows its two ends; words that say more than those stand beside it.
  const saysMore = date.kind !== 'single' && expression.replace(/^bulk /, '') !== displayDate(edtf);
  return saysMore ? [inWords(), structure] : [structure];
}

function several(date: Exclude<StructuredDate, { kind: 'single' }>): XmlElement {
  if (date.kind === 'range') return range(date.from, date.to);
  const members = date.members.map((part) => ('from' in part ? range(part.from, part.to) : single(part)));
  return element('dateset', {}, members);
}

const single = (part: DatePart) => dated('datesingle', part);

const range = (from: DatePart | undefined, to: DatePart | undefined) =>
  element('daterange', {}, [
    ...(from === undefined ? [] : [dated('fromdate', from)]),
    ...(to === undefined ? [] : [dated('todate', to)]),
  ]);

const dated = (name: string, { expression, standard, notBefore, notAfter }: DatePart) =>
  element(name, { notafter: notAfter, notbefore: notBefore, standarddate: standard }, expression);
