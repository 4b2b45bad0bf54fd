import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  holdsEan13,
  holdsIban,
  holdsItalianTaxCode,
  holdsLuhn,
  holdsMod11And10,
  restOf,
} from '../../src/review/private-check-digits.ts';
import { NUMBER_RULES } from '../../src/review/private-number-rules.ts';
import { findNumbers, maskNumbers } from '../../src/review/private-numbers.ts';

const namesIn = (text: string) => findNumbers(text).map(({ rule }) => rule.name);

// Numbers that their keepers, or the standards, print as examples, and made-up ones; none is that of a person.
// The sources are from memory. The second of each pair has one digit or letter changed.
const EXAMPLES: readonly [name: string, holds: string, fails: string, source: string][] = [
  ['IBAN', 'GB82 WEST 1234 5698 7654 32', 'GB82 WEST 1234 5698 7654 33', 'ISO 13616, the usual example'],
  ['IBAN', 'DE89370400440532013000', 'DE89370400440532013001', 'IBAN registry, Germany'],
  ['IBAN', 'NO93 8601 1117 947', 'NO93 8601 1117 948', 'IBAN registry, Norway'],
  ['IBAN', 'FR14 2004 1010 0505 0001 3M02 606', 'FR14 2004 1010 0505 0001 3M02 607', 'IBAN registry, France'],
  ['IBAN', 'CH93 0076 2011 6238 5295 7', 'CH93 0076 2011 6238 5295 8', 'IBAN registry, Switzerland'],
  ['payment card', '4111 1111 1111 1111', '4111 1111 1111 1112', 'test number of card networks'],
  ['payment card', '5555-5555-5555-4444', '5555-5555-5555-4445', 'test number of card networks'],
  ['payment card', '3782 822463 10005', '3782 822463 10006', 'test number of card networks'],
  ['US social security', '123-45-6789', '000-45-6789', 'made up; 000 is never given out'],
  ['US social security', '665-01-0001', '666-01-0001', 'made up; 666 is never given out'],
  ['US social security', '899-01-0001', '900-01-0001', 'made up; 9.. is never given out'],
  ['US social security', '123-01-6789', '123-00-6789', 'made up; 00 is never given out'],
  ['US social security', '123-45-0001', '123-45-0000', 'made up; 0000 is never given out'],
  ['US social security', 'SSN 123456789', 'no. 123456789', 'made up; bare digits need the word'],
  ['Canadian', 'SIN 046 454 286', 'SIN 046 454 287', 'the usual example'],
  ['Canadian', 'social insurance 046-454-286', 'ticket 046-454-286', 'the usual example; it needs the word'],
  ['National Health Service', 'NHS no. 943 476 5919', 'NHS no. 943 476 5918', 'NHS Data Dictionary'],
  ['National Health Service', 'NHS 9434765919', 'telephone 943 476 5919', 'needs the word'],
  ['national insurance', 'AB 12 34 56 C', 'AB 12 34 56 E', 'made up; the last is A to D'],
  ['national insurance', 'AB123456C', 'QQ123456C', 'made up; no Q'],
  ['national insurance', 'ab123456c', 'GB123456C', 'made up; GB is not given out'],
  ['Norwegian', '13097248022', '13097248023', 'an invented person of the tax administration'],
  ['Swedish', '811228-9874', '811228-9875', 'Swedish Tax Agency'],
  ['Swedish', '19670919-9530', '19670919-9531', 'Swedish Tax Agency'],
  ['Swedish', 'personnummer 8112289874', 'no. 8112289874', 'Swedish Tax Agency; bare digits need the word'],
  ['Finnish', '131052-308T', '131052-308U', 'Population Register Centre'],
  ['Danish', '070761-4285', '070761-4286', 'CPR office'],
  ['Danish', 'CPR 070761-4286', 'CPR 320761-4286', 'made up; with the word the day is enough'],
  ['German', '86095742719', '86095742718', 'Federal Central Tax Office'],
  ['German', '47 036 892 816', '47 036 892 817', 'Federal Central Tax Office'],
  ['Polish', '44051401359', '44051401358', 'the usual example'],
  ['Belgian', '85.07.30-033.28', '85.07.30-033.29', 'the usual example'],
  ['French', '2 95 10 99 126 111 93', '2 95 10 99 126 111 94', 'the usual example'],
  ['Spanish', '12345678Z', '12345678A', 'the usual example'],
  ['Spanish', 'X1234567L', 'X1234567M', 'the usual example'],
  ['Italian', 'MRTMTT25D09F205Z', 'MRTMTT25D09F205Y', 'the usual example'],
  ['Swiss', '756.9217.0769.85', '756.9217.0769.84', 'Federal Social Insurance Office'],
  ['Dutch', 'BSN 111222333', 'BSN 111222334', 'the usual example'],
  ['sort code', 'sort code 20-00-00', 'rows 20-00-00', 'made up; it needs the words'],
  ['bank account number', 'acct 55779911', 'ticket 55779911', 'made up; it needs the word'],
  ['bank account number', 'account number 5577 9911', 'account number 1919-1921', 'made up; years are none'],
  ['bank account number', 'a/c 55779911', 'a/c 557', 'made up; three figures are none'],
  ['Dutch', 'sofinummer 1112.22.333', 'no. 1112.22.333', 'the usual example; it needs the word'],
];

describe('numbers by which people can be got at', () => {
  test.each(EXAMPLES)('%s: %s is found, %s is not (%s)', (name, holds, fails) => {
    expect(namesIn(holds)).toEqual([expect.stringContaining(name)]);
    expect(namesIn(fails)).toEqual([]);
    expect(namesIn(`On the back: ${holds}, in pencil.`)).toHaveLength(1);
  });

  test('every rule has an example above', () => {
    const without = NUMBER_RULES.filter(({ name }) => EXAMPLES.every(([part]) => !name.includes(part)));
    expect(without).toEqual([]);
  });

  test.each([
    'telephone 610-555-0123',
    '+1 (610) 555-0123',
    '1923-05-02 to 1923-06-17',
    '19230502-19230617',
    'ISBN 978-0-306-40615-7',
    'ISSN 0317-8471',
    'IMG_20230502_123456.jpg',
    'nos. 123456-123470',
    '24 x 36 in, 1:63360',
    'barrels 412, 1200, 1400, 1500, 1600',
    'ZIP 12345-6789',
    '1234 5678 9012 3456',
  ])('“%s” is none', (text) => {
    expect(namesIn(text)).toEqual([]);
  });

  test('no date in figures is taken for one', () => {
    const two = (n: number) => String(n).padStart(2, '0');
    const date = fc.tuple(
      fc.integer({ min: 1800, max: 2026 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
      fc.constantFrom('-', '.', '/', ''),
    );
    fc.assert(
      fc.property(date, date, ([y, m, d, sign], [y2]) => {
        const day = [y, two(m), two(d)].join(sign);
        expect(namesIn(`${day}, and again ${y2}`)).toEqual([]);
        expect(namesIn([two(d), two(m), y].join(sign))).toEqual([]);
      }),
    );
  });

  test('what is masked can be read no more, and all the rest can', () => {
    expect(maskNumbers('Card 4111 1111 1111 1111 of 1998')).toBe('Card •••• •••• •••• •••• of 1998');
    expect(maskNumbers('IBAN GB82 WEST 1234 5698 7654 32 AND MORE')).toBe(
      'IBAN •••• •••• •••• •••• •••• •• AND MORE',
    );
    for (const [, holds] of EXAMPLES) {
      const masked = maskNumbers(`Straße: ${holds}.`);
      expect(findNumbers(masked)).toEqual([]);
      expect(masked).not.toMatch(/\d{2}/);
      expect(masked).toMatch(/^Straße: .*\.$/);
    }
  });

  test('a text without such a number stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        fc.pre(findNumbers(text).length === 0);
        expect(maskNumbers(text)).toBe(text);
      }),
    );
  });
});

describe('check digits, worked out here another way', () => {
  const digits = (length: number) => fc.stringMatching(new RegExp(`^\\d{${length}}$`));

  test('Luhn: of ten last digits one holds, and no single digit can be mistaken (ISO/IEC 7812-1, annex B)', () => {
    // The example of the standard's formula as it is usually printed.
    expect(holdsLuhn('79927398713')).toBe(true);
    fc.assert(
      fc.property(digits(12), fc.nat(11), fc.integer({ min: 1, max: 9 }), (front, at, more) => {
        const held = [...'0123456789'].filter((last) => holdsLuhn(front + last));
        expect(held).toHaveLength(1);
        const changed = `${front.slice(0, at)}${(Number(front[at]) + more) % 10}${front.slice(at + 1)}`;
        expect(holdsLuhn(changed + held[0])).toBe(false);
      }),
    );
  });

  test('MOD 97: as whole numbers of any size (ISO/IEC 7064)', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^\d{1,30}$/), (text) => {
        expect(restOf(text, 97)).toBe(Number(BigInt(text) % 97n));
      }),
    );
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z0-9]{11,26}$/), (account) => {
        const value = (text: string) => BigInt([...text].map((sign) => Number.parseInt(sign, 36)).join(''));
        const check = 98n - (value(`${account}NO00`) % 97n);
        expect(holdsIban(`NO${String(check).padStart(2, '0')}${account}`)).toBe(true);
        expect(holdsIban(`NO${String((check % 97n) + 1n).padStart(2, '0')}${account}`)).toBe(false);
      }),
    );
  });

  test('MOD 11,10: one last digit of ten holds, and no single digit can be mistaken (ISO/IEC 7064)', () => {
    fc.assert(
      fc.property(digits(10), fc.nat(9), fc.integer({ min: 1, max: 9 }), (front, at, more) => {
        const held = [...'0123456789'].filter((last) => holdsMod11And10(front + last));
        expect(held).toHaveLength(1);
        const changed = `${front.slice(0, at)}${(Number(front[at]) + more) % 10}${front.slice(at + 1)}`;
        expect(holdsMod11And10(changed + held[0])).toBe(false);
      }),
    );
  });

  test('an article number: 4006381333931 (the example of EAN-13, from memory)', () => {
    expect(holdsEan13('4006381333931')).toBe(true);
    expect(holdsEan13('4006381333932')).toBe(false);
  });

  test('an Italian tax code: a second example (from memory)', () => {
    expect(holdsItalianTaxCode('RCCMNL83S18D969H')).toBe(true);
    expect(holdsItalianTaxCode('RCCMNL83S18D969I')).toBe(false);
  });

  test('Norwegian numbers: both digits as the weights say, over all days of a year', () => {
    // Made by counting through both check digits until both sums are multiples of eleven.
    const sum = (text: string, weights: readonly number[]) =>
      weights.reduce((total, weight, at) => total + weight * (text.charCodeAt(at) - 48), 0);
    for (let day = 1; day <= 28; day += 1) {
      const front = `${String(day).padStart(2, '0')}0562${100 + day}`;
      const valid = Array.from({ length: 100 }, (_, n) => front + String(n).padStart(2, '0')).filter(
        (text) =>
          sum(text, [3, 7, 6, 1, 8, 9, 4, 5, 2, 1, 0]) % 11 === 0 &&
          sum(text, [5, 4, 3, 2, 7, 6, 5, 4, 3, 2, 1]) % 11 === 0,
      );
      for (const text of valid) expect(namesIn(text)).toEqual([expect.stringContaining('Norwegian')]);
      expect(valid.length).toBeLessThan(2);
    }
  });
});
