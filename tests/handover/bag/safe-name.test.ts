import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { safeName } from '../../../src/handover/bag/index.ts';

const named = (name: string) => safeName(name, new Set());

describe('a name that survives on any system', () => {
  // The right-hand side by hand: as much of the name as can be kept.
  test.each([
    ['Bea to Tom, 1962.jpg', 'Bea to Tom, 1962.jpg'],
    ['Núñez.jpg', 'Núñez.jpg'],
    ['渡し船の切符.jpg', '渡し船の切符.jpg'],
    ['CON.jpg', '_CON.jpg'],
    ['lpt1', '_lpt1'],
    ['com¹.old.txt', '_com¹.old.txt'],
    ['console.txt', 'console.txt'],
    ['../../etc/passwd', 'etc-passwd'],
    ['C:\\ferry\\bell.txt', 'C-ferry-bell.txt'],
    ['who? what: "this" <or> that|*.txt', 'who- what- -this- -or- that-.txt'],
    ['100% wool.txt', '100- wool.txt'],
    ['line\nend\r\n.txt', 'line end.txt'],
    ['dot at the end.', 'dot at the end'],
    ['blank at the end ', 'blank at the end'],
    ['scan .jpg', 'scan.jpg'],
    ['.hidden', 'hidden'],
    ['~letter.txt', 'letter.txt'],
    ['-rf', 'rf'],
    ['.jpg', 'jpg'],
    ['', 'unnamed'],
    ['...', 'unnamed'],
    ['turned\u202Egpj.exe', 'turned gpj.exe'],
    ['half \uD83C pair.txt', 'half pair.txt'],
  ])('%j becomes %j', (name, safe) => {
    expect(named(name)).toBe(safe);
  });

  test('300 bytes become no more than 120, with the extension, and whole letters', () => {
    expect(named(`${'a'.repeat(300)}.jpg`)).toBe(`${'a'.repeat(116)}.jpg`);
    // é takes two bytes: 58 of them fill 116.
    expect(named(`${'é'.repeat(300)}.jpg`)).toBe(`${'é'.repeat(58)}.jpg`);
    // A family of three is one letter of 18 bytes; six of them take 108.
    const family = '👨‍👩‍👧';
    expect(Buffer.byteLength(family)).toBe(18);
    expect(named(`${family.repeat(20)}.jpg`)).toBe(`${family.repeat(6)}.jpg`);
    expect(named(`x.${'y'.repeat(40)}`)).toBe(`x.${'y'.repeat(40)}`);
  });

  test('names that some system holds for the same are told apart', () => {
    const taken = new Set<string>();
    const names = [
      'Bell.jpg',
      'bell.jpg',
      'BELL.JPG',
      'Núñez'.normalize('NFC'),
      'Núñez'.normalize('NFD'),
      'be\u200Bll.jpg',
    ];
    expect(names.map((name) => safeName(name, taken))).toEqual([
      'Bell.jpg',
      'bell-2.jpg',
      'BELL-3.JPG',
      'Núñez',
      'Núñez-2',
      'be\u200Bll-4.jpg',
    ]);
  });
});

const NASTY = fc.constantFrom(
  'CON',
  '.',
  ' ',
  '/',
  '\\',
  ':',
  '\n',
  '\u0000',
  'é',
  'e\u0301',
  'İ',
  'ß',
  'ẞ',
  'ﬁ',
  '~',
  '%',
  '👨‍👩‍👧',
  'a',
);
const NAME = fc.oneof(
  fc.array(NASTY, { maxLength: 60 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

describe('of any names', () => {
  test('each is fit for every system', () => {
    fc.assert(
      fc.property(NAME, (name) => {
        const safe = named(name);
        expect(Buffer.byteLength(safe)).toBeLessThanOrEqual(120);
        expect(Buffer.byteLength(safe)).toBeGreaterThan(0);
        expect(safe).toBe(safe.normalize('NFC'));
        expect(safe).not.toMatch(/\p{Cs}/u);
        // Microsoft, Naming Files, Paths, and Namespaces (from memory).
        expect(safe).not.toMatch(/[<>:"/\\|?*\u0000-\u001F\u007F]|[. ]$|^[. ]/);
        expect(safe).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i);
        expect(named(safe)).toBe(safe);
      }),
      { numRuns: 2000 },
    );
  });

  test('no two are the same where case and accents are folded', () => {
    fc.assert(
      fc.property(fc.array(NAME, { maxLength: 30 }), (names) => {
        const taken = new Set<string>();
        const safe = names.map((name) => safeName(name, taken));
        const folds = [
          (name: string) => name.toLowerCase(),
          (name: string) => name.toUpperCase(),
          (name: string) => name.normalize('NFD').toLowerCase(),
        ];
        for (const fold of folds) expect(new Set(safe.map(fold)).size).toBe(safe.length);
      }),
      { numRuns: 500 },
    );
  });
});
