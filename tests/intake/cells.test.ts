import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accessReader } from '../../src/intake/access.ts';
import { readCopyPath } from '../../src/intake/copy-path.ts';
import { maybeTwo, splitCell, splitNames } from '../../src/intake/names.ts';
import { readQuantity } from '../../src/intake/quantity.ts';

describe('quantity', () => {
  it.each([
    ['12', 12, false],
    ['1', 1, false],
    ['about 40', 40, true],
    ['About 40', 40, true],
    ['c. 40', 40, true],
    ['c40', 40, true],
    ['ca. 40', 40, true],
    ['circa 40', 40, true],
    ['~40', 40, true],
    ['~ 40', 40, true],
    ['approx. 40', 40, true],
    ['40?', 40, true],
    ['a dozen', 12, false],
    ['about a dozen', 12, true],
    ['three', 3, false],
    ['1,200', 1200, false],
    ['1.200', 1200, false],
    ['1 200', 1200, false],
    ['12 pieces', 12, false],
    ['about 30 items', 30, true],
    ['0012', 12, false],
  ])('%j is read', (written, quantity, approximate) => {
    expect(readQuantity(written)).toEqual({ quantity, approximate });
  });

  it.each([
    '',
    '0',
    '-3',
    '1.5',
    '1,2',
    '12-15',
    'a few',
    'several',
    'lots',
    '2 albums',
    'ca',
    'about',
    '1e5',
    '１２',
    '∞',
    '1,2000',
    '9'.repeat(20),
  ])('%j is left to a person', (written) => expect(readQuantity(written)).toBeUndefined());

  it('is always a whole number above nothing, whatever was written', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'c. ~0123,?about') })),
        (text) => {
          const read = readQuantity(text);
          if (read !== undefined) expect(Number.isSafeInteger(read.quantity) && read.quantity > 0).toBe(true);
        },
      ),
    );
  });
});

describe('path of a digital copy', () => {
  it.each([
    ['copies/ferry.jpg', 'copies/ferry.jpg'],
    ['copies\\album 1\\ferry.jpg', 'copies/album 1/ferry.jpg'],
    ['./copies//ferry.jpg', 'copies/ferry.jpg'],
    ['a/../copies/ferry.jpg', 'copies/ferry.jpg'],
    ['ferry..final.jpg', 'ferry..final.jpg'],
    ['fähre 🍎.tif', 'fähre 🍎.tif'],
    ['https://example.org/ferry.jpg', 'https://example.org/ferry.jpg'],
  ])('%j is read', (written, path) => expect(readCopyPath(written)).toEqual({ path }));

  it.each([
    ...[
      '../ferry.jpg',
      'copies/../../ferry.jpg',
      '..\\ferry.jpg',
      '..',
      '/etc/ferry.jpg',
      '\\\\server\\ferry.jpg',
    ],
    ...[
      'C:\\ferry.jpg',
      'c:ferry.jpg',
      '~/ferry.jpg',
      'file:///ferry.jpg',
      'javascript:alert(1)',
      'data:text/html,x',
    ],
    ...['copies/', '.', './', 'http://', 'https:// x', './javascript:alert(1)'],
  ])('%j is refused', (written) => {
    const copy = readCopyPath(written);
    expect('trouble' in copy && copy.trouble).toContain(written);
  });

  it('never leads out of the folder, whatever was written', () => {
    const soup = fc.string({ unit: fc.constantFrom('.', '/', '\\', 'a', '~', ':', 'c', ' '), maxLength: 12 });
    fc.assert(
      fc.property(soup, (written) => {
        const copy = readCopyPath(written);
        if (!('path' in copy)) return;
        expect(copy.path.split('/').filter((part) => part === '' || part === '.' || part === '..')).toEqual(
          [],
        );
        expect(copy.path).not.toMatch(/\\|^[a-z]:/i);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('several in one cell', () => {
  it.each([
    ['', []],
    ['Ada Quill', ['Ada Quill']],
    ['Ada Quill; Nils Quill', ['Ada Quill', 'Nils Quill']],
    ['Quill, Ada;Quill, Nils;', ['Quill, Ada', 'Quill, Nils']],
    ['Ada Quill\nNils Quill', ['Ada Quill', 'Nils Quill']],
    ['Ada; Ada', ['Ada']],
    [' ; ', []],
  ])('%j', (cell, parts) => expect(splitCell(cell)).toEqual(parts));

  const known = new Set(['ada quill', 'nils quill', 'quill & sons', 'ada', 'quill']);

  it.each([
    ['Ada & Nils Quill', ['Ada & Nils Quill']],
    ['Ada Quill and Tom Reed', ['Ada Quill and Tom Reed']],
    ['Ada Quill and Nils Quill', ['Ada Quill', 'Nils Quill']],
    ['Ada Quill, Nils Quill & Ada Quill', ['Ada Quill', 'Nils Quill', 'Ada Quill']],
    ['Quill & Sons', ['Quill & Sons']],
    ['Quill, Ada', ['Quill, Ada']],
  ])('names: %j comes apart only where every part is known', (cell, parts) => {
    expect(splitNames(cell, known)).toEqual(parts);
    expect(splitNames(cell, new Set())).toEqual([cell]);
  });

  it('names that may be two are noticed', () => {
    expect(
      ['Ada & Nils Quill', 'Ada and Nils', 'Ada + Nils', 'Orlando', 'Quill, Ada', 'Anders'].map(maybeTwo),
    ).toEqual([...[true, true, true, false, false, false]]);
  });
});

describe('access', () => {
  it('takes the heading for the statement where a cell only says yes', () => {
    const read = accessReader('Private');
    expect(['yes', 'X', 'true', '✓', 'no', '', '-', 'until Ada agrees'].map(read)).toEqual([
      ...['Private', 'Private', 'Private', 'Private', undefined, undefined, undefined, 'until Ada agrees'],
    ]);
  });

  it('takes the cell as it is under any other heading', () => {
    expect(['yes', 'family only', ''].map(accessReader('access'))).toEqual(['yes', 'family only', undefined]);
  });
});
