import fc from 'fast-check';
import type { DateStatement } from '../../src/catalogue/component.ts';
import { nastyProse, nastyText } from './hostile-text.ts';

const pad = (value: number, width = 2) => String(value).padStart(width, '0');

const year = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1850, max: 2024 }) },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 2999 }) },
);
const yearText = year.map((value) => pad(value, 4));
const monthText = fc.tuple(yearText, fc.integer({ min: 1, max: 12 })).map(([y, m]) => `${y}-${pad(m)}`);
const dayText = fc.tuple(year, fc.integer({ min: 1, max: 12 }), fc.nat({ max: 30 })).map(([y, m, offset]) => {
  // Day 0 of the next month is the last of this one; the years 0 to 99 need setUTCFullYear.
  const last = new Date(0);
  last.setUTCFullYear(y, m, 0);
  return `${pad(y, 4)}-${pad(m)}-${pad((offset % last.getUTCDate()) + 1)}`;
});

/** A year, a month or a day, as EDTF level 0. */
export const plainDate: fc.Arbitrary<string> = fc.oneof(yearText, monthText, dayText);

const marked = fc.tuple(plainDate, fc.constantFrom('?', '~', '%')).map(([date, mark]) => `${date}${mark}`);
/** With a time of day: ISO 8601-1, 5.4.2; EDTF level 0. */
const instant = fc
  .tuple(dayText, fc.constantFrom('T23:20:30', 'T00:00:00Z', 'T09:05:00+05:30', 'T12:00:00-03'))
  .map((parts) => parts.join(''));
const inOrder = fc.tuple(plainDate, plainDate).map((dates) => dates.sort((a, b) => a.localeCompare(b)));
const interval = fc
  .tuple(inOrder, fc.constantFrom('', '~', '?'), fc.constantFrom('', '~', '?'))
  .map(([[from, to], before, after]) => `${from}${before}/${to}${after}`);
const openInterval = fc
  .tuple(plainDate, fc.boolean())
  .map(([date, end]) => (end ? `${date}/..` : `../${date}`));
const unspecified = fc.constantFrom('196X', '19XX', '156X-12-25', '1952-XX', '1952-05-XX', '196X~');
const season = fc.tuple(yearText, fc.integer({ min: 21, max: 24 })).map(([y, part]) => `${y}-${part}`);
const years = fc
  .uniqueArray(fc.integer({ min: 1850, max: 2000 }), { minLength: 2, maxLength: 5 })
  .map((list) => list.sort((a, b) => a - b));
const oneOf = years.map((list) => `[${list.join(',')}]`);
const allOf = years.map((list) => `{${list.join(',')}}`);
const setWithRange = fc
  .tuple(years, fc.constantFrom('[]', '{}'))
  .map(([list, braces]) => `${braces[0]}${list[0]},${list.at(-1)}..${Number(list.at(-1)) + 9}${braces[1]}`);
// Good EDTF that no attribute of EAD can hold: the EAD3 Schematron allows the years 0000 to 2999 there and nothing else.
const beyond = fc.constantFrom('-0009', 'Y170000002', '5021', '-0100/0099', 'Y-17E7', '1950S2', '../..');

/** A date in EDTF (ISO 8601-2:2019), levels 0 to 2, of every kind that the model may hold. */
export const edtfDate: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: plainDate },
  { weight: 3, arbitrary: interval },
  { weight: 2, arbitrary: marked },
  { weight: 1, arbitrary: openInterval },
  { weight: 1, arbitrary: instant },
  { weight: 1, arbitrary: unspecified },
  { weight: 1, arbitrary: season },
  { weight: 1, arbitrary: oneOf },
  { weight: 1, arbitrary: allOf },
  { weight: 1, arbitrary: setWithRange },
  { weight: 1, arbitrary: beyond },
);

/** What the model lets pass as EDTF and is none: a finding aid may come from anywhere. */
const notEdtf = fc.oneof(nastyText, fc.constantFrom('1952-13', '1952-02-30', '52', '1960/1950', '1950-1960'));

const statement = (expression: fc.Arbitrary<string>, edtf: fc.Arbitrary<string | undefined>) =>
  fc
    .record({
      type: fc.constantFrom('inclusive' as const, 'inclusive' as const, 'bulk' as const),
      expression,
      edtf,
      written: fc.option(nastyText, { nil: undefined }),
      note: fc.option(nastyProse, { nil: undefined }),
    })
    .map(
      ({ type, expression, edtf, written, note }): DateStatement => ({
        type,
        expression,
        ...(edtf === undefined ? {} : { edtf }),
        ...(written === undefined ? {} : { written }),
        ...(note === undefined ? {} : { note }),
      }),
    );

/** A statement of date: resolved, "undated" (DACS 2.4.16), or a phrase that nobody can resolve. */
export const dateStatement: fc.Arbitrary<DateStatement> = fc.oneof(
  { weight: 8, arbitrary: statement(nastyText, edtfDate) },
  {
    weight: 2,
    arbitrary: statement(fc.constantFrom('undated', 'the year of the flood'), fc.constant(undefined)),
  },
  { weight: 1, arbitrary: statement(nastyText, notEdtf) },
);
