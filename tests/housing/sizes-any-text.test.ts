import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { once } from '../../src/catalogue/once.ts';
import { readSize } from '../../src/housing/read-size.ts';

// For their number only; sizes.test.ts holds what they mean.
const text = readFileSync(new URL('sizes.csv', import.meta.url), 'utf8');
const rows: { phrase: string }[] = parse(text, { columns: true, bom: true });

// Speed in processor time, so that it does not hang on what else the machine does.
describe('readSize, whatever the cell holds,', () => {
  it('never throws, and gives only sizes that can be', () => {
    const pieces = fc.constantFrom(
      ...[
        '8',
        'x',
        '10',
        ' in',
        ' cm',
        '½',
        '/',
        '-',
        ',',
        '.',
        ' ',
        '"',
        "'",
        'A4',
        'reel',
        '(',
        'mm',
        '0',
        '35 mm',
      ],
      ...[
        '1/0',
        '5/8',
        'ft',
        'thick',
        'to',
        'slide',
        '78',
        'super 8',
        'diameter',
        'rpm',
        '1e9',
        '\u0000',
        '２０',
      ],
    );
    const phrases = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(phrases, (phrase) => {
        const reading = readSize(phrase);
        if (reading.kind !== 'size') return;
        const { long, short, thick } = reading.size;
        expect(short).toBeGreaterThanOrEqual(1);
        expect(long).toBeGreaterThanOrEqual(short);
        expect(long).toBeLessThanOrEqual(5000);
        if (thick !== undefined) expect(thick).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });

  it('is quick: 100,000 cells in less than 0.3 s', () => {
    const read = once(readSize);
    const start = process.cpuUsage();
    for (let index = 0; index < 100_000; index++) read(rows[index % rows.length]?.phrase ?? '');
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(300);
  });

  it('takes time in proportion to the length of hostile text', () => {
    const hostile = ['8 x ', '1 ', '"', '8½', 'a ', '((', '1-', 'x'].map((piece) => piece.repeat(20_000));
    const start = process.cpuUsage();
    for (const phrase of hostile) readSize(phrase);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(2000);
  });
});
