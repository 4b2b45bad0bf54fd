import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILM_REELS } from '../../src/housing/media-sizes.ts';
import { readSize, readSizeOf } from '../../src/housing/read-size.ts';
import { SIZE_NAMES } from '../../src/housing/size-named.ts';

interface Row {
  phrase: string;
  /** Millimetres, the longest first, a thickness last; or `impossible`, `unlikely` or `unknown`. */
  expect: string;
  /** Blank where the phrase says nothing of it. */
  form: string;
  /** `yes`, `no`, or blank where it does not matter. */
  assumed: string;
  source: string;
}

// Written from the standards, from arithmetic and from memory, each with its mark, before the reader ran.
const text = readFileSync(new URL('sizes.csv', import.meta.url), 'utf8');
const rows: Row[] = parse(text, { columns: true, bom: true });

/** The millimetres that a phrase gives; throws where it gives none. */
function sizeOf(phrase: string) {
  const reading = readSize(phrase);
  if (reading.kind !== 'size') throw new Error(`“${phrase}” is ${reading.kind}.`);
  return reading.size;
}

describe('sizes.csv', () => {
  it('has the size that was asked for', () => expect(rows.length).toBeGreaterThanOrEqual(150));

  it.each(rows.map((row, index) => ({ line: index + 2, ...row })))('line $line: $phrase', (row) => {
    const reading = readSize(row.phrase);
    if (reading.kind !== 'size') {
      expect(reading.kind, row.source).toBe(row.expect);
      return;
    }
    const { long, short, thick } = reading.size;
    const got = [long, short, ...(thick === undefined ? [] : [thick])];
    const expected = row.expect.split(' x ').map(Number);
    expect(got.length, `${row.source}: ${got}`).toBe(expected.length);
    for (const [index, mm] of expected.entries()) expect(got[index], row.source).toBeCloseTo(mm, 6);
    expect(reading.form ?? '', row.source).toBe(row.form);
    if (row.assumed !== '') expect(reading.assumed === undefined ? 'no' : 'yes').toBe(row.assumed);
  });

  it.each(rows.filter((row) => row.expect === 'impossible' || row.expect === 'unlikely'))(
    '$phrase says why it is none',
    ({ phrase }) => {
      const reading = readSize(phrase);
      expect('why' in reading && reading.why).toMatch(/^[A-Z].+\.$/);
    },
  );
});

// ISO 216: the sides are as 1 to √2; A0 has 1 m², B0 is 1 m wide, and B and A as well as C lie between each other by
// the geometric mean (ISO 269 for C); each size is half of the one before, what is left of a millimetre dropped.
describe('paper of ISO 216', () => {
  const ROOT = Math.SQRT2;
  const widths = { A: 1000 / ROOT ** 0.5, B: 1000, C: Math.sqrt((1000 / ROOT ** 0.5) * 1000) };
  const cases = Object.entries(widths).flatMap(([letter, width]) => {
    const sizes: { name: string; long: number; short: number }[] = [];
    let [long, short] = [Math.round(width * ROOT), Math.round(width)];
    for (let step = 0; step <= 10; step++) {
      sizes.push({ name: `${letter}${step}`, long, short });
      [long, short] = [short, Math.floor(long / 2)];
    }
    return sizes;
  });

  it.each(cases)('$name is $short × $long mm', ({ name, long, short }) => {
    expect(sizeOf(name)).toEqual({ long, short });
    expect(sizeOf(`DIN ${name}`)).toEqual({ long, short });
  });
});

describe('names of sizes', () => {
  const named = SIZE_NAMES.flatMap((row) => row.names.map((name) => ({ name, row })));

  it('each stand in one row', () => {
    const names = named.map(({ name }) => name);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it.each(named.filter(({ row }) => row.face !== undefined))('“$name” is read as its row says', (one) => {
    const { face, form } = one.row;
    // A number alone is a name only where its kind is known: "127" negatives.
    const reading = readSizeOf(one.name, /^\d+$/.test(one.name) ? form : undefined);
    expect(reading).toMatchObject({ kind: 'size', size: { ...face }, ...(form && { form }) });
    expect(one.row.source).not.toBe('');
    expect(reading.kind === 'size' && reading.assumed !== undefined).toBe(one.row.loose);
  });

  // Arithmetic: film 0.14 mm thick, wound without a core, makes a disc of the area that its edge has.
  it.each(FILM_REELS.map((row) => ({ ...row })))('$feet ft of film go on a reel of $across mm', (row) => {
    expect(Math.sqrt((4 * row.feet * 304.8 * 0.14) / Math.PI)).toBeLessThan(row.across);
  });
});

describe('what the kind tells', () => {
  it('is that “imperial” is a mount of a photograph and a sheet of anything else', () => {
    expect(readSizeOf('imperial', 'photograph')).toMatchObject({ form: 'mounted', size: { long: 250.825 } });
    expect(readSizeOf('imperial', 'sheet')).toMatchObject({ size: { long: 762 } });
  });

  it('is that “127” is film where negatives are meant, and says nothing of a photograph', () => {
    expect(readSizeOf('127', 'negative')).toMatchObject({ form: 'negative', size: { long: 65, short: 46 } });
    expect(readSizeOf('127', 'photograph').kind).toBe('unknown');
  });

  it('is that a gauge and a length are of film, and that the same measures of a textile are its own', () => {
    expect(readSizeOf('35 mm x 300 ft', 'film')).toMatchObject({
      kind: 'size',
      size: { long: 178, thick: 40 },
    });
    expect(readSizeOf('16 mm x 12 ft', 'textile')).toMatchObject({
      size: { long: expect.closeTo(3657.6), short: 16 },
    });
  });
});

describe('readSize', () => {
  const mm = fc.integer({ min: 2, max: 4999 });

  // A wrong unit makes a folder too small by more than half, so what was assumed is told.
  it('says which unit it assumed', () => {
    const units = ['16x20', '18 x 24', '210x297', '8 x 10 in', 'A4'].map((phrase) => {
      const reading = readSize(phrase);
      return reading.kind === 'size' ? reading.guessedUnit : reading.kind;
    });
    expect(units).toEqual(['inches', 'centimetres', 'millimetres', undefined, undefined]);
  });

  it('does not care about the order of the two measures', () => {
    const unit = fc.constantFrom(' mm', ' cm', ' in', '', ' ft');
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 1, max: 120 }), unit, (a, b, with_) => {
        const [one, other] = [readSize(`${a} x ${b}${with_}`), readSize(`${b} x ${a}${with_}`)];
        expect(one.kind).toBe(other.kind);
        if (one.kind === 'size' && other.kind === 'size') expect(one.size).toEqual(other.size);
      }),
    );
  });

  it('gives the same millimetres whatever the unit', () => {
    fc.assert(
      fc.property(mm, mm, (a, b) => {
        const expected = { long: Math.max(a, b), short: Math.min(a, b) };
        for (const [unit, factor] of [
          ['mm', 1],
          ['cm', 10],
          ['m', 1000],
          ['in', 25.4],
          ['ft', 304.8],
        ] as const) {
          const { long, short } = sizeOf(`${(a / factor).toFixed(9)} x ${(b / factor).toFixed(9)} ${unit}`);
          expect(long).toBeCloseTo(expected.long, 4);
          expect(short).toBeCloseTo(expected.short, 4);
        }
      }),
    );
  });

  it('takes the smallest of three measures for the thickness', () => {
    fc.assert(
      fc.property(mm, mm, mm, (a, b, c) => {
        const [thick, short, long] = [a, b, c].sort((one, other) => one - other);
        expect(sizeOf(`${a} × ${b} × ${c} mm`)).toEqual({ long, short, thick });
      }),
    );
  });
});
