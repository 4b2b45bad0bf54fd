import {
  dayBefore,
  dayOfDay,
  dayText,
  isDay,
  monthOfDay,
  toDay,
  two,
  yearOfDay,
  yearText,
} from './calendar.ts';
import { parseEdtf } from './edtf.ts';
import { type Grain, grainOf } from './grain.ts';
import { fail, type Scanner } from './scanner.ts';

/** When somebody was born: the first and last day it may have been, and how finely that is known. */
export interface Birth {
  readonly name: string;
  readonly first: number;
  readonly last: number;
  readonly grain: Grain;
}

const OLDEST = 120;
/** Grade 1 begins in the autumn after the sixth birthday, as it does in most of North America (common practice). */
const FIRST_GRADE = 6;
const LAST_GRADE = 13;
/** Who is born from this month on begins a year later. */
const AUTUMN = 9;

/** The birth of a person; a reason is noted where it is not known. */
export function birthOf(s: Scanner, person: { name: string; born?: string }): Birth | undefined {
  const date = person.born === undefined ? undefined : parseEdtf(person.born);
  const { earliest: first, latest: last } = date ?? {};
  if (first === undefined || last === undefined) {
    return fail(
      s,
      `The birth date of ${person.name} is not known; write it under people in collection.yaml.`,
    );
  }
  const sameMonth = Math.floor(first / 100) === Math.floor(last / 100);
  const grain = first === last ? 'day' : sameMonth && grainOf(first, last) === 'month' ? 'month' : 'year';
  return { name: person.name, first, last, grain };
}

/** The same day some months later; 29 February becomes 1 March in a common year. */
function later(day: number, months: number): number {
  const count = yearOfDay(day) * 12 + monthOfDay(day) - 1 + months;
  const [year, month] = [Math.floor(count / 12), (count % 12) + 1];
  if (isDay(year, month, dayOfDay(day))) return toDay(year, month, dayOfDay(day));
  return month < 12 ? toDay(year, month + 1, 1) : toDay(year + 1, 1, 1);
}

function text(day: number, grain: Grain): string {
  if (grain === 'day') return `${dayText(day)}~`;
  return grain === 'month'
    ? `${yearText(yearOfDay(day))}-${two(monthOfDay(day))}~`
    : `${yearText(yearOfDay(day))}~`;
}

/**
 * The time from the day the younger age is reached to the day before the older age ends, as an approximate span: ages
 * are remembered roughly. Where only the month or year of birth is known, so is only that of the span.
 */
export function spanOfAge(
  s: Scanner,
  birth: Birth,
  from: number,
  to: number,
  inMonths = false,
): string | undefined {
  const months = inMonths ? 1 : 12;
  if (to * months > OLDEST * 12 || from > to) return fail(s, `${birth.name} cannot have been ${to}.`);
  s.notes.push(
    `The date is worked out from the age of ${birth.name}, who was born in ${yearOfDay(birth.first)}.`,
  );
  const start = text(later(birth.first, from * months), birth.grain);
  const next = later(birth.last, (to + 1) * months);
  const end = text(birth.grain === 'day' ? dayBefore(next) : next, birth.grain);
  return start === end ? start : `${start}/${end}`;
}

/** A birthday is a day where the day of birth is known, else a month or year. */
export function birthday(s: Scanner, birth: Birth, age: number): string | undefined {
  if (age > OLDEST) return fail(s, `${birth.name} cannot have been ${age}.`);
  s.notes.push(`The date is worked out from the birth date of ${birth.name}.`);
  const [start, end] = [
    text(later(birth.first, 12 * age), birth.grain),
    text(later(birth.last, 12 * age), birth.grain),
  ];
  if (start !== end) return `${start}/${end}`;
  return birth.grain === 'year' ? start : start.slice(0, -1);
}

/** The school years in which somebody was in a grade. */
export function spanOfGrade(s: Scanner, birth: Birth, grade: number): string | undefined {
  if (grade > LAST_GRADE) return fail(s, `There is no grade ${grade}.`);
  s.notes.push(
    `The date is worked out from the birth of ${birth.name} in ${yearOfDay(birth.first)}, with school begun at ${FIRST_GRADE}.`,
  );
  const late = birth.grain !== 'year' && monthOfDay(birth.first) >= AUTUMN ? 1 : 0;
  const begin = FIRST_GRADE + grade - 1 + late;
  return `${yearText(yearOfDay(birth.first) + begin)}~/${yearText(yearOfDay(birth.last) + begin + 1)}~`;
}
