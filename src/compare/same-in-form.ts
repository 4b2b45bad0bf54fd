import type { Component, DateStatement } from '../catalogue/component.ts';
import { normalDate, structuredDate } from '../dates/index.ts';
import { unitDate } from '../export/ead3/unit-date.ts';
import { token } from '../export/ead2002/token.ts';
import { dates as readDates } from '../intake/ead/dates.ts';
import type { Found } from '../intake/ead/found.ts';
import { same } from './same.ts';

/**
 * Of two units that were told in both versions of EAD, gives the first with the forms of the second, where nothing but
 * the form differs: EAD 2002 has one word (NMTOKEN) where EAD3 has several, and EAD3 tells a range of dates by its two
 * ends, `circa 1905` and `2010`, where EAD 2002 has one text, `[circa 1905]-2010`.
 */
export function inFormOf(was: Component, now: Component): Component {
  const otherIdentifiers = aligned(was.otherIdentifiers, now.otherIdentifiers, sameType);
  const containers = aligned(was.containers, now.containers, sameType);
  const dates = aligned(was.dates, now.dates, sameDate);
  return otherIdentifiers === was.otherIdentifiers && containers === was.containers && dates === was.dates
    ? was
    : { ...was, otherIdentifiers, containers, dates };
}

/** The first list, in which what stands at the same place of the second, in another form, has that form. */
function aligned<Value>(
  was: readonly Value[],
  now: readonly Value[],
  sameButForm: (one: Value, other: Value) => boolean,
): Value[] {
  const found = was.map((one, at) => {
    const other = now[at];
    return other !== undefined && !same(one, other) && sameButForm(one, other) ? other : one;
  });
  return found.every((one, at) => one === was[at]) ? (was as Value[]) : found;
}

function sameType<Value extends { type: string }>(one: Value, other: Value): boolean {
  return token(one.type) === token(other.type) && same({ ...one, type: '' }, { ...other, type: '' });
}

/** Whether one of two dates is what is read of the other, once it was told in EAD3. */
const sameDate = (one: DateStatement, other: DateStatement): boolean =>
  one.type === other.type &&
  one.note === other.note &&
  (keyOf(inEad3(one)) === keyOf(other) || keyOf(inEad3(other)) === keyOf(one));

function inEad3(date: DateStatement): DateStatement {
  // The writer makes arrays, which is all that a tree that was found has more than one that is to be written.
  const [read, ...more] = readDates(unitDate(date) as Found[]);
  return read === undefined || more.length > 0 ? date : read;
}

/** What both versions tell of a date: its words, and beside them what a machine reads. */
const keyOf = ({ expression, edtf }: DateStatement): string =>
  [expression, ...(edtf === undefined ? [] : [normalDate(edtf), structuredDate(edtf)?.certainty])].join('\n');
