import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Filled, fewVolumes, regularRuns } from '../../src/review/run-regular.ts';

const at = (from: number, row: number, over: Partial<Filled> = {}): Filled => ({
  ...{ from, to: from, isProof: true, said: `${from}`, row },
  ...over,
});

/** Things of a series in no order, one at each place. */
const series = (places: readonly number[]) => places.map((place, index) => at(place, index + 2));

/** A regular series with single holes inside it, no two side by side, at most one place in four. */
const withHoles = fc
  .record({
    first: fc.integer({ min: 1, max: 2000 }),
    length: fc.integer({ min: 8, max: 60 }),
    step: fc.constantFrom(1, 2, 3, 5, 10),
    holes: fc.array(fc.nat(), { maxLength: 15 }),
  })
  .map(({ first, length, step, holes }) => {
    const chosen: number[] = [];
    for (const hole of holes) {
      const place = 1 + (hole % (length - 2));
      if (chosen.length < Math.floor(length / 4) && chosen.every((other) => Math.abs(other - place) > 1))
        chosen.push(place);
    }
    const placeOf = (index: number) => first + index * step;
    const all = Array.from({ length }, (_, index) => index);
    return {
      there: all.filter((index) => !chosen.includes(index)).map(placeOf),
      holes: chosen.sort((a, b) => a - b).map(placeOf),
      step,
    };
  });

describe('a regular series (arithmetic)', () => {
  test('its holes are found exactly, in whatever order the list has it', () => {
    fc.assert(
      fc.property(withHoles, fc.infiniteStream(fc.nat()), ({ there, holes, step }, keys) => {
        const shuffled = series(there)
          .map((filled) => ({ filled, key: keys.next().value ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ filled }) => filled);
        expect(regularRuns(shuffled)).toMatchObject([{ missing: holes, step, twice: [] }]);
      }),
      { numRuns: 300 },
    );
  });

  test('what is there twice is found exactly', () => {
    fc.assert(
      fc.property(withHoles, fc.nat(), ({ there }, which) => {
        const place = there[which % there.length] ?? 0;
        const [run] = regularRuns([...series(there), at(place, 999)]);
        expect(run?.twice).toEqual([{ from: place, to: place, rows: [expect.any(Number), 999] }]);
      }),
    );
  });

  test('a bundle fills its years', () => {
    const things = [...series([1908, 1909, 1910, 1911, 1912]), at(1913, 20, { to: 1916 }), at(1918, 21)];
    expect(regularRuns(things)).toMatchObject([{ first: 1908, last: 1918, missing: [1917] }]);
  });

  test('a doubtful date fills its place and proves nothing', () => {
    const four = series([1908, 1909, 1911, 1912]);
    expect(regularRuns([...four, at(1910, 9, { isProof: false })])).toMatchObject([{ missing: [] }]);
    expect(regularRuns(four)).toMatchObject([{ missing: [1910] }]);
    expect(regularRuns([...four.slice(1), at(1910, 9, { isProof: false })])).toEqual([]);
  });
});

describe('what is no run', () => {
  test('a series without a step that repeats', () => {
    // Every step to the next is different, so none can be the common one.
    const irregular = fc
      .record({
        first: fc.integer({ min: 1, max: 90000 }),
        steps: fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 3, maxLength: 12 }),
      })
      .map(({ first, steps }) => {
        const places = [first];
        for (const step of steps) places.push((places.at(-1) ?? 0) + step);
        return places;
      });
    fc.assert(
      fc.property(irregular, (places) => {
        expect(regularRuns(series(places))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test('numbers drawn at random, and nearly all years drawn at random', () => {
    // The seed is fixed: what chance makes of it is always the same. 2000 series of each sort.
    const drawn = (range: number) =>
      fc
        .sample(fc.uniqueArray(fc.integer({ min: 1, max: range }), { minLength: 4, maxLength: 12 }), {
          seed: 6,
          numRuns: 2000,
        })
        .filter((places) => regularRuns(series(places)).length > 0).length;
    expect(drawn(99_999)).toBe(0);
    expect(drawn(150)).toBeLessThan(10);
  });

  test.each([
    ['three of them', [1908, 1909, 1910]],
    ['two close pairs', [1908, 1909, 1930, 1931]],
    ['more holes than things', [1908, 1909, 1912, 1913, 1917, 1918, 1922, 1923]],
    ['places enough, but hardly a step like another', [1908, 1909, 1910, 1912, 1914, 1917]],
    ['a step of two years, four times', [1908, 1910, 1914, 1916]],
  ])('%s', (_, places) => {
    expect(regularRuns(series(places))).toEqual([]);
  });

  test('a thing far from all others is not the beginning of the run', () => {
    expect(regularRuns(series([1880, 1908, 1909, 1911, 1912]))).toMatchObject([{ missing: [1910] }]);
  });

  test('two stretches far apart are two runs', () => {
    const years = [1890, 1891, 1893, 1894, 1950, 1951, 1952, 1954];
    expect(regularRuns(series(years)).map(({ missing }) => missing)).toEqual([[1892], [1953]]);
  });

  test('where most years are there twice, there are two series in one', () => {
    const years = [1908, 1909, 1910, 1911, 1912];
    const [run] = regularRuns([...series(years), ...series(years)]);
    expect(run?.twice).toEqual([]);
  });
});

describe('a work of few volumes', () => {
  const volumes = (...places: readonly number[]) =>
    series(places).map((one) => ({ ...one, isVolume: true as const }));

  test.each([
    [[1, 2, 4], [3]],
    [[4, 1, 3], [2]],
  ])('%j: %j is missing', (there, missing) => {
    expect(fewVolumes(volumes(...there))).toMatchObject([{ first: 1, last: 4, step: 1, missing }]);
  });

  test.each([[[1, 2, 3]], [[2, 3, 4]], [[1, 2, 5]], [[1, 2]], [[1, 1, 3]], [[1, 2, 3, 5]]])(
    '%j: nothing is said',
    (there) => {
      expect(fewVolumes(volumes(...there))).toEqual([]);
    },
  );

  test('numbers that are not said to be volumes are none', () => {
    expect(fewVolumes(series([1, 2, 4]))).toEqual([]);
  });
});
