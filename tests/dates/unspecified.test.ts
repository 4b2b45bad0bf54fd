import { describe, expect, it } from 'vitest';
import { bounds, readDate } from '../../src/dates/index.ts';

// ISO 8601-2, 8.3 (EDTF level 2): an X stands for any one digit, wherever it stands. The bounds are counted by hand on
// the calendar: 1000 and 1400 have no 29 February, 1200 and 1600 do; of the months that end in 1, November is
// the last.
describe('bounds where some digit is not specified', () => {
  it.each([
    ['1X52', '1052-01-01', '1952-12-31'],
    ['1X00-02-29', '1200-02-29', '1600-02-29'],
    ['-1X00-02-29', '-1600-02-29', '-1200-02-29'],
    ['2001-X1', '2001-01-01', '2001-11-30'],
    ['2001-X0', '2001-10-01', '2001-10-31'],
    ['2001-X2-30', '2001-12-30', '2001-12-30'],
    ['2001-04-X1', '2001-04-01', '2001-04-21'],
    ['2001-04-3X', '2001-04-30', '2001-04-30'],
  ])('%s is from %s to %s', (edtf, earliest, latest) => {
    expect(bounds(edtf)).toEqual({ earliest, latest });
  });

  it('has none where no day can be meant', () => {
    expect(bounds('2001-02-3X')).toEqual({});
    expect(bounds('1X00-02-30')).toEqual({});
  });
});

// The program itself tells them apart so where it shows them: "1900s (decade)" for 190X.
describe('"1800s", which may be ten years or a hundred', () => {
  it.each([
    ['1800s (decade)', '180X'],
    ['1800s (century)', '18XX'],
  ])('%s says which', (phrase, edtf) => {
    expect(readDate(phrase)).toEqual({ kind: 'date', edtf, assumed: [] });
  });
});
