import { dayText, two } from './calendar.ts';
import { checkDay, placeNth } from './days-of-month.ts';
import { sayDate } from './display.ts';
import { joinMarks, type Mark } from './edtf-point.ts';
import type { Feast } from './feast-days.ts';
import { feastDays } from './feasts.ts';
import { fractionSpan } from './fractions.ts';
import { choose, fail, type Scanner } from './scanner.ts';
import type { Fraction } from './senses.ts';

/** A date while it is read: what the phrase names of it so far. A range or list may fill in the rest. */
export interface Draft {
  /** Four figures, the last of which may be X; a sign before the years before 1. */
  year?: string;
  month?: number;
  /** Code of EDTF, 21 to 41. */
  season?: number;
  day?: number;
  /** Figures of a month or day that are not all known: `1X`. */
  monthText?: string;
  dayText?: string;
  /** The day was said as an ordinal, which may yet turn out to be one of centuries. */
  ordinal?: boolean;
  /** Whether it is a decade of two figures, as in "1920-30s". */
  shortDecade?: boolean;
  /** Whether the year was named before the month: `1962 May`. */
  yearFirst?: boolean;
  weekday?: number;
  /** Which of the days of that name in the month, from 1; -1 is the last. */
  nth?: number;
  feast?: readonly Feast[];
  fraction?: Fraction;
  mark: Mark;
  /** A mark on single components, as in `14 May [1962?]`. */
  yearMark: Mark;
  monthMark: Mark;
  dayMark: Mark;
}

/** A finished date: one EDTF date, or two with what lies between them. */
export interface Dated {
  readonly from: string;
  readonly to: string;
}

export const emptyDraft = (): Draft => ({ mark: '', yearMark: '', monthMark: '', dayMark: '' });

export const hasMonth = (draft: Draft): boolean =>
  draft.month !== undefined || draft.monthText !== undefined || draft.season !== undefined;

export const isEmpty = (draft: Draft): boolean =>
  draft.year === undefined && draft.day === undefined && draft.feast === undefined && !hasMonth(draft);

/** Whether it names a year and no more. */
export const isYearOnly = (draft: Draft): boolean =>
  draft.year !== undefined && draft.day === undefined && draft.feast === undefined && !hasMonth(draft);

const hasDay = (draft: Draft) =>
  draft.day !== undefined || draft.dayText !== undefined || draft.nth !== undefined;

/** Takes over what a neighbour in the same range or list names and this date does not: "14-16 May 1962". */
export function fillFrom(draft: Draft, source: Draft): void {
  if (draft.ordinal && isLoneDay(draft) && isYearOnly(source) && source.year?.endsWith('XX')) {
    draft.year = `${String((draft.day ?? 1) - 1).padStart(2, '0')}XX`;
    delete draft.day;
    return;
  }
  // "First and third Sunday in June 1950"
  if (source.nth !== undefined && source.weekday !== undefined && isLoneDay(draft)) {
    draft.nth = draft.day ?? 0;
    draft.weekday ??= source.weekday;
    delete draft.day;
  }
  if (draft.year === undefined && source.year !== undefined) draft.year = source.year;
  const bare = hasDay(draft) && !hasMonth(draft);
  if (bare && source.month !== undefined) draft.month = source.month;
}

/** Whether it names a day and neither its month nor its year: "May 5, 6 and 7, 1950". */
export const isLoneDay = (draft: Draft): boolean =>
  draft.day !== undefined && !hasMonth(draft) && draft.year === undefined;

const only = (text: string): Dated => ({ from: text, to: text });

/** The day, month or year as EDTF with its marks. */
function written(draft: Draft, year: string, mark: Mark): string {
  const month = draft.monthText ?? (draft.month === undefined ? undefined : two(draft.month));
  const day = draft.dayText ?? (draft.day === undefined ? undefined : two(draft.day));
  const { yearMark, monthMark, dayMark } = draft;
  if (yearMark === '' && monthMark === '' && dayMark === '') {
    return `${[year, month, day].filter((part) => part !== undefined).join('-')}${mark}`;
  }
  const parts = [`${joinMarks(yearMark, mark)}${year}`];
  if (month !== undefined) parts.push(`${joinMarks(monthMark, mark)}${month}`);
  if (day !== undefined) parts.push(`${joinMarks(dayMark, mark)}${day}`);
  return parts.join('-');
}

/** Makes EDTF of a draft; undefined, with the reason noted, where something is missing or impossible. */
export function finish(s: Scanner, draft: Draft): Dated | undefined {
  const { year, mark, fraction } = draft;
  if (year === undefined) {
    if (isEmpty(draft)) return fail(s, 'It names no date.');
    return fail(s, 'It names no year.');
  }
  if (draft.nth !== undefined) {
    const placed = placeNth(s, draft, year);
    return placed && finish(s, placed);
  }
  if (draft.feast) {
    if (year.includes('X')) return fail(s, 'The day of a feast can only be found for a year that is known.');
    const days = feastDays(draft.feast, Number(year), s.context.country);
    if (typeof days === 'string') return fail(s, days);
    return only(`${dayText(choose(s, 'feast', days))}${mark}`);
  }
  if (hasDay(draft) && !hasMonth(draft)) return fail(s, 'It names a day but no month.');
  if (draft.season !== undefined && hasDay(draft)) return fail(s, 'It names a day of a season.');
  if (fraction) {
    const span = fractionSpan(draft, year, fraction);
    if (!span) return fail(s, 'It names a part of something that has no such parts.');
    const marked = fraction.rough ? joinMarks('~', mark) : mark;
    if (fraction.rough && span.from !== span.to)
      s.notes.push(`This is taken as ${sayDate(`${span.from}/${span.to}`)}.`);
    return { from: `${span.from}${marked}`, to: `${span.to}${marked}` };
  }
  if (!checkDay(s, draft, year)) return undefined;
  if (draft.season !== undefined) return only(`${year}-${draft.season}${mark}`);
  // "Circa 1890s" may miss the decade at either end, so its first and last year bear the mark; "probably 1890s" is
  // one decade that is doubted.
  if ((mark === '~' || mark === '%') && year.includes('X') && !hasMonth(draft)) {
    const digits = year.replace('-', '');
    const ends = [digits.replaceAll('X', '0'), digits.replaceAll('X', '9')] as const;
    return { from: `${ends[0]}${mark}`, to: `${ends[1]}${mark}` };
  }
  return only(written(draft, year, mark));
}
