import { bounds } from './bounds.ts';
import type { DateReading } from './reading.ts';
import { unreadable } from './settle.ts';

// A remark at the end, in round or square brackets: "1931-1938 (1934 missing)".
const REMARK = /^(.*[^\s([])\s*(\(([^()]+)\)|\[([^[\]]+)\])[.,;]?$/;
// By which a bracket gives another date in the place of the first: "[i.e. 1963]", "[recte 1963]".
const INSTEAD = /^(?:(?:and|i\.\s?e\.?|ie|that is|recte|rather|actually|really|should be|also)[,:]?\s+)+/i;
// What begins so goes on with the date, brackets or not: "(or 1963)", "(or later)".
const GOES_ON = /^or\b/i;
const YEARS = /(?<!\d)\d{4}(?!\d)/g;

/**
 * Reads a date that has a remark in brackets behind it, by what stands before; the remark is said to be left in words.
 * A bracket that holds a date itself is no remark: whether it mends the first date or stands beside it nobody can tell.
 * @param read reads a part of the phrase
 * @returns undefined where no remark ends the phrase, or where nothing before it can be read
 */
export function readBeforeRemark(text: string, read: (part: string) => DateReading): DateReading | undefined {
  const [, before = '', bracket = '', round, square] = REMARK.exec(text) ?? [];
  const inside = (round ?? square ?? '').trim();
  if (inside === '') return undefined;
  const reading = read(before);
  // Bulk dates are shown in the place of the words, so that a remark would be lost with those.
  if (reading.kind !== 'date' || reading.bulk !== undefined) return undefined;
  if (GOES_ON.test(inside)) {
    const together = read(`${before} ${inside}`);
    return together.kind === 'date'
      ? together
      : unreadable(`What “${inside}” says in brackets is not understood.`);
  }
  if (read(inside.replace(INSTEAD, '')).kind !== 'unreadable')
    return unreadable(
      `What stands in brackets, “${inside}”, is a date too, and it is not said which of the two holds.`,
    );
  const note = namesAnother(inside, reading.edtf)
    ? `The remark “${bracket}”, which names another date, is left in words.`
    : `The remark “${bracket}” is left in words.`;
  return { ...reading, assumed: [...reading.assumed, note] };
}

/** Whether a remark names a year that is not within the date before it. */
function namesAnother(remark: string, edtf: string): boolean {
  const { earliest = '', latest = '9999' } = bounds(edtf);
  return (remark.match(YEARS) ?? []).some((year) => year < earliest.slice(0, 4) || year > latest.slice(0, 4));
}
