import { describe, expect, test } from 'vitest';
import type { Thing } from '../../src/catalogue/thing.ts';
import type { CopyFacts } from '../../src/copies/facts.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { reviewCopies } from '../../src/review/copies.ts';
import { RESOLUTIONS } from '../../src/review/resolutions.ts';
import { someThing } from '../support/catalogue.ts';

/** Whether copies of these pixels are found too coarse for a thing. */
function tooCoarse(over: Partial<Thing>, ...sizes: readonly [width: number, height: number][]): string[] {
  const copies = sizes.map((_, at) => `copies/${at}.jpg`);
  const facts = new Map<string, CopyFacts>(
    sizes.map(([width, height], at) => [
      `copies/${at}.jpg`,
      { path: `copies/${at}.jpg`, bytes: 9, mediaType: 'image/jpeg', width, height },
    ]),
  );
  return reviewCopies({ things: [someThing({ row: 2, ...over, copies })] }, facts, []).map(
    ({ rule, found }) => {
      expect(rule).toBe('copies.resolution');
      return found;
    },
  );
}

// FADGI guidelines, two stars, from memory: 300 pixels an inch. The rest is arithmetic: 10 in × 300 = 3000.
describe('what lies flat: 300 pixels an inch', () => {
  test.each([
    ['8 x 10 in', 3000, 2400],
    ['8 x 10 in', 2400, 3000],
    ['20.32 × 25.4 cm', 3000, 2400],
    ['3 x 5 in', 1500, 900],
    // Sizes are rounded and scans cropped: 2850 is 95 of 100.
    ['8 x 10 in', 2850, 2280],
    // Cropped to a strip, the longer side is still that of the thing.
    ['8 x 10 in', 3000, 500],
    // A thing of an inch needs no thousand pixels.
    ['1 x 1 in', 300, 300],
  ])('a photograph of %s with %i × %i is fine', (size, width, height) => {
    expect(tooCoarse({ kind: 'photograph', size }, [width, height])).toEqual([]);
  });

  test.each([
    ['8 x 10 in', 2840, 2272, 284],
    ['3 x 5 in', 720, 432, 144],
    ['20.32 × 25.4 cm', 1500, 1200, 150],
  ])('a photograph of %s with %i × %i is not', (size, width, height, dpi) => {
    const [found] = tooCoarse({ kind: 'photograph', size }, [width, height]);
    expect(found).toContain(`${width} × ${height} pixels for “${size}” are ${dpi} an inch`);
  });

  test('letters, and things of no kind that is known, as well', () => {
    expect(tooCoarse({ kind: 'letter', size: '8 x 10 in' }, [2000, 1600])).toHaveLength(1);
    expect(tooCoarse({ size: '8 x 10 in' }, [2000, 1600])).toHaveLength(1);
  });

  test('of what is larger than 60 cm, 200', () => {
    expect(tooCoarse({ kind: 'map', size: '24 x 36 in' }, [7200, 4800])).toEqual([]);
    expect(tooCoarse({ kind: 'map', size: '24 x 36 in' }, [6000, 4000])).toHaveLength(1);
  });
});

describe('where the size says nothing', () => {
  test.each([
    {},
    { size: 'large' },
    { kind: 'photograph' },
    { size: 'frame 16 x 12 in' },
    { size: '14 x 14 in, framed' },
    { size: '35 mm' },
  ])('%j: 1000 pixels along the longer side', (over) => {
    expect(tooCoarse(over, [1000, 300])).toEqual([]);
    // 950 is 95 of 100.
    expect(tooCoarse(over, [949, 900])).toHaveLength(1);
  });

  test('an album, a framed photograph, a thing in the round: its size is not that of the picture', () => {
    for (const kind of ['album', 'framed photograph', 'quilt'])
      expect(tooCoarse({ kind, size: '80 x 92 in' }, [1200, 1000])).toEqual([]);
  });

  test('negatives and slides are made to be enlarged: 3000 along the longer side', () => {
    expect(tooCoarse({ kind: 'slide', size: '35 mm' }, [3000, 2000])).toEqual([]);
    expect(tooCoarse({ kind: 'slide', size: '35 mm' }, [1500, 1000])).toHaveLength(1);
  });

  test('what was digital from the start is as it is, and so is a picture out of a film', () => {
    expect(tooCoarse({ kind: 'digital file' }, [320, 240])).toEqual([]);
    expect(tooCoarse({ kind: 'film reel' }, [320, 240])).toEqual([]);
  });
});

test('of several copies of a thing the finest counts', () => {
  const thing = { kind: 'photograph', size: '8 x 10 in' };
  expect(tooCoarse(thing, [300, 240], [3000, 2400], [600, 480])).toEqual([]);
  const found = tooCoarse(thing, [300, 240], [1200, 960]);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain('1200 × 960');
});

test('what is measured in no pixels is not judged', () => {
  const facts = new Map([['a.pdf', { path: 'a.pdf', bytes: 9, mediaType: 'application/pdf' }]]);
  const things = [someThing({ row: 2, kind: 'letter', size: '8 x 10 in', copies: ['a.pdf'] })];
  expect(reviewCopies({ things }, facts, [])).toEqual([]);
});

test('every kind and group of the table is one of the table of kinds', () => {
  const kinds = new Set(KINDS.map(({ one }) => one));
  const groups = new Set<string>(KINDS.map(({ group }) => group));
  expect(RESOLUTIONS.flatMap(({ kinds: named = [] }) => named).filter((one) => !kinds.has(one))).toEqual([]);
  expect(RESOLUTIONS.flatMap(({ group }) => group ?? []).filter((group) => !groups.has(group))).toEqual([]);
});
