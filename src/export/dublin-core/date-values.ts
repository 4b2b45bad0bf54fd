import type { Component, DateStatement } from '../../catalogue/component.ts';
import { bounds, displayDate, normalDate, w3cDate } from '../../dates/index.ts';
import type { About, Value } from './value.ts';

const defined = <T>(value: T | undefined): T[] => (value === undefined ? [] : [value]);

/** A statement that only says that there is none: DACS 2.4.16. */
const isUndated = ({ expression, edtf }: DateStatement) => edtf === undefined && expression === 'undated';

/** Bulk dates stand only beside the inclusive ones (DACS 2.4.10), so they never stand for the date of a unit. */
const inclusive = ({ dates }: Component) => dates.filter(({ type }) => type === 'inclusive');

/** The words of a date; those of bulk dates say what they are. */
const words = ({ type, expression }: DateStatement): string =>
  type === 'bulk' && !/^bulk\b/i.test(expression) ? `bulk ${expression}` : expression;

const machine = ({ type, edtf }: DateStatement): string | undefined =>
  type === 'bulk' || edtf === undefined ? undefined : normalDate(edtf);

/** `date`: a year, a month, a day or two of them with a slash, as `unitdate/@normal` of EAD 2002 has them. */
export const machineDates = (unit: Component): string[] =>
  unit.dates.flatMap((date) => defined(machine(date)));

/** `date`: the words, where those say more than the figures do: "circa 1950" beside 1950. */
export function wordsOfDates({ dates }: Component): string[] {
  return dates.filter((date) => !isUndated(date) && !saidBy(machine(date), date)).map(words);
}

const saidBy = (figures: string | undefined, { expression }: DateStatement) =>
  figures !== undefined && displayDate(figures) === expression;

/** `coverage`: what time the whole collection spans. */
export function span(unit: Component, { parent }: About): string[] {
  if (parent !== undefined) return [];
  return inclusive(unit)
    .filter((date) => !isUndated(date))
    .map(words);
}

/** W3CDTF (a profile of ISO 8601), as far as XML Schema takes it: it knows no year 0000. */
function w3cdtf({ type, edtf }: DateStatement): Value | undefined {
  const text = type === 'bulk' || edtf === undefined ? undefined : w3cDate(edtf);
  return text === undefined || text.startsWith('0000') ? undefined : { text, scheme: 'W3CDTF' };
}

/**
 * DCMI Period Encoding Scheme: what is not one plain year, month or day, by its limits, with its words as the name.
 * The notation is that of DCSV, from memory: parts end in a semicolon, and a backslash takes its meaning from a sign.
 */
function period(date: DateStatement): Value | undefined {
  if (date.type === 'bulk' || date.edtf === undefined) return undefined;
  const normal = normalDate(date.edtf)?.split('/');
  const limits = bounds(date.edtf);
  const [start, end] = normal === undefined ? [limits.earliest, limits.latest] : [normal[0], normal.at(-1)];
  // W3CDTF: a year has four figures. A limit that cannot be told so makes the whole a matter of words.
  if (start === undefined && end === undefined) return undefined;
  if (![start, end].every((day) => day === undefined || /^\d{4}(?!\d)/.test(day))) return undefined;
  const parts = [...defined(start).map((day) => `start=${day}`), ...defined(end).map((day) => `end=${day}`)];
  const name = words(date).replace(/[\\;=]/g, '\\$&');
  return { text: [`name=${name}`, ...parts, 'scheme=W3C-DTF;'].join('; '), scheme: 'Period' };
}

/** `created`: exact dates in W3CDTF, all others as periods. */
export const machineCreated = (unit: Component): Value[] =>
  unit.dates.flatMap((date) => defined(w3cdtf(date) ?? period(date)));

/** `created`: the words of a date that has no form for machines, or an exact one that says less. */
export function wordsOfCreated({ dates }: Component): Value[] {
  return dates
    .filter((date) => {
      if (isUndated(date)) return false;
      const exact = w3cdtf(date) !== undefined;
      return exact ? !saidBy(date.edtf, date) : period(date) === undefined;
    })
    .map(words);
}

/** `temporal`: what time the whole collection spans, as a period. */
export function temporal(unit: Component, { parent }: About): Value[] {
  if (parent !== undefined) return [];
  return inclusive(unit)
    .filter((date) => !isUndated(date))
    .map((date) => period(date) ?? words(date));
}
