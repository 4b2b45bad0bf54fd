import type { Agent } from '../../catalogue/agent.ts';
import { type DatePart, displayDate, normalDate, structuredDate } from '../../dates/index.ts';
import { element, type XmlElement } from '../../xml/element.ts';

/** `existDates`: from birth or founding to death or end; what is not known is left out. ISAAR(CPF) 5.2.1. */
export function existDates({ birth, death }: Agent): XmlElement[] {
  if (birth === undefined && death === undefined) return [];
  return [
    element('existDates', {}, [
      element('dateRange', {}, [
        ...(birth === undefined ? [] : [dated('fromDate', birth)]),
        ...(death === undefined ? [] : [dated('toDate', death)]),
      ]),
    ]),
  ];
}

function dated(name: string, edtf: string): XmlElement {
  const { standard, notBefore, notAfter } = withinLimits(edtf);
  const certainty = structuredDate(edtf)?.certainty;
  return element(name, { certainty, notAfter, notBefore, standardDate: standard }, displayDate(edtf));
}

/** A birth is one day: a span, or one of several dates, is only what it lies within. */
function withinLimits(edtf: string): Omit<DatePart, 'expression'> {
  const date = structuredDate(edtf);
  if (date?.kind === 'single') return date.date;
  if (date?.kind === 'range') {
    const { from, to } = date;
    return limits(from?.standard ?? from?.notBefore, to?.standard ?? to?.notAfter);
  }
  const [first, last = first] = normalDate(edtf)?.split('/') ?? [];
  return limits(first, last);
}

const limits = (notBefore: string | undefined, notAfter: string | undefined) => ({
  ...(notBefore !== undefined && { notBefore }),
  ...(notAfter !== undefined && { notAfter }),
});
