import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bounds,
  compareRanks,
  dateRank,
  datesOfWhole,
  decadeOf,
  displayDate,
  inclusiveDates,
  isEdtf,
  isWithin,
  readDate,
  yearOf,
} from '../../src/dates/index.ts';
import { date } from './arbitrary.ts';

const edtfOf = (phrase: string) => {
  const reading = readDate(phrase);
  return reading.kind === 'date' ? reading.edtf : `${reading.kind}: ${JSON.stringify(reading)}`;
};

describe('any date', () => {
  it('is EDTF', () => {
    fc.assert(fc.property(date, (edtf) => isEdtf(edtf)));
  });

  it('comes back from its display', () => {
    fc.assert(
      fc.property(date, (edtf) => {
        expect(edtfOf(displayDate(edtf)), displayDate(edtf)).toBe(edtf);
      }),
      { numRuns: 2000 },
    );
  });

  it('shows no month or day as a bare number between signs (DACS 2.4.14)', () => {
    fc.assert(fc.property(date, (edtf) => !/\d[-/.]\d{1,2}[-/.]\d/.test(displayDate(edtf))));
  });

  it('lies within itself, and its year within its decade', () => {
    fc.assert(
      fc.property(date, (edtf) => {
        expect(isWithin(edtf, edtf)).toBe(true);
        const [year, decade] = [yearOf(edtf), decadeOf(edtf)];
        if (year !== undefined) expect(decade).toBe(Math.floor(year / 10) * 10);
      }),
    );
  });
});

const dates = fc.array(date, { minLength: 1, maxLength: 12 });

const ofWhole = (parts: readonly string[]) => datesOfWhole(new Map(parts.map((part) => [part, 1])));

describe('the roll-up of dates', () => {
  // DACS 2.4.9: the dates of a part fall within those of its whole.
  it.each([
    ['inclusive dates', inclusiveDates],
    ['inclusive dates with gaps', (parts: readonly string[]) => ofWhole(parts).inclusive],
  ])('%s contain every part', (_name, rollUp) => {
    fc.assert(
      fc.property(dates, (parts) => {
        const whole = rollUp(parts) ?? '';
        expect(isEdtf(whole), whole).toBe(true);
        for (const part of parts) expect(isWithin(part, whole), `${part} within ${whole}`).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('does not depend on the order of the parts', () => {
    fc.assert(
      fc.property(dates, fc.infiniteStream(fc.nat()), (parts, keys) => {
        const shuffled = parts
          .map((part) => [keys.next().value ?? 0, part] as const)
          .sort(([one], [other]) => one - other)
          .map(([, part]) => part);
        expect(inclusiveDates(shuffled)).toBe(inclusiveDates(parts));
      }),
    );
  });

  it('of a roll-up is the roll-up', () => {
    fc.assert(
      fc.property(dates, (parts) => {
        const whole = inclusiveDates(parts);
        expect(inclusiveDates([whole ?? '', whole ?? ''])).toBe(whole);
      }),
    );
  });

  it('can be shown and read again', () => {
    fc.assert(
      fc.property(dates, (parts) => {
        const whole = inclusiveDates(parts) ?? '';
        const again = edtfOf(displayDate(whole));
        expect(bounds(again), `${whole} shown as ${displayDate(whole)}`).toEqual(bounds(whole));
      }),
      { numRuns: 2000 },
    );
  });

  it('gives bulk dates within the inclusive dates, or none', () => {
    fc.assert(
      fc.property(fc.array(date, { minLength: 10, maxLength: 40 }), (parts) => {
        const { bulk } = ofWhole(parts);
        const whole = inclusiveDates(parts) ?? '';
        if (bulk !== undefined) expect(isWithin(bulk, whole), `${bulk} within ${whole}`).toBe(true);
      }),
    );
  });
});

describe('the order of dates', () => {
  const text = fc.oneof(date, fc.string());
  const compareDates = (a: string, b: string) => compareRanks(dateRank(a), dateRank(b));

  it('is total', () => {
    fc.assert(
      fc.property(text, text, text, (a, b, c) => {
        expect(Math.sign(compareDates(a, b))).toBe(-Math.sign(compareDates(b, a)) + 0);
        if (compareDates(a, b) === 0) expect(a).toBe(b);
        if (compareDates(a, b) <= 0 && compareDates(b, c) <= 0)
          expect(compareDates(a, c)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 2000 },
    );
  });

  it('is the same whatever order came before', () => {
    fc.assert(
      fc.property(fc.array(text), (all) => {
        expect([...all].reverse().sort(compareDates)).toEqual([...all].sort(compareDates));
      }),
    );
  });
});
