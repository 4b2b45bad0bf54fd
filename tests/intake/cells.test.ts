import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accessReader } from '../../src/intake/access.ts';
import { readCopyPath } from '../../src/intake/copy-path.ts';
import { readList } from '../../src/intake/list.ts';
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
    // Products, sums and lots of a known number: arithmetic.
    ['2 bundles of 20', 40, false],
    ['2 boxes of 36', 72, false],
    ['2 boxes (36 each)', 72, false],
    ['3 packets of about 10', 30, true],
    ['2 x 36', 72, false],
    ['2 dozen', 24, false],
    ['half a dozen', 6, false],
    ['a pair', 2, false],
    ['3 pairs', 6, false],
    ['two hundred', 200, false],
    ['twelve', 12, false],
    ['twenty-two', 22, false],
    ['12 + 3', 15, false],
    ['12 and 3 cards', 15, false],
    ['1 (52 prints)', 52, false],
    ['bundle of 14', 14, false],
    // At least, at most, between: the larger number, as a guess.
    ['200+', 200, true],
    ['200+ photos', 200, true],
    ['at least 12', 12, true],
    ['40 or so', 40, true],
    ['40-50', 50, true],
    ['40–50', 50, true],
    ['between 40 and 50', 50, true],
    ['12-15', 15, true],
    ['two or three', 3, true],
    ['3 reels', 3, false],
    ['3 small reels', 3, false],
    ['4 vols', 4, false],
    ['2 albums', 2, false],
  ])('%j is read', (written, quantity, approximate) => {
    expect(readQuantity(written)).toEqual({ quantity, approximate });
  });

  // A sheet has two pages.
  it.each([
    ['6 sheets', 6],
    ['about 6 sheets', 6],
    ['3 pages', 2],
    ['12 pp.', 6],
    ['10 leaves', 10],
  ])('%j is how much one thing is, not how many there are', (written, sheets) => {
    const read = readQuantity(written, 'letter');
    expect([read?.quantity, read?.sheets]).toEqual([undefined, sheets]);
  });

  it('counts the sheets of several letters together', () => {
    expect(readQuantity('3 letters (12 pages)')).toEqual({ quantity: 3, sheets: 6, approximate: false });
  });

  // What holds several is a thing itself, unless the kind names what is in it.
  it.each([
    ['3 reels', '8mm film', 3],
    ['2 albums', 'photograph album', 2],
    ['2 albums', 'photographs', undefined],
    ['4 vols', 'letters', undefined],
    ['1 (52 prints)', 'photographs', 52],
    ['1 (52 prints)', 'photograph album', 1],
    ['bundle of 14', 'bundle of letters', 14],
    ['3 spoons', 'silver spoons', 3],
    ['12 pages', 'loose pages', 12],
    ['12 strips', 'negatives', undefined],
  ])('%j of %j', (written, kind, quantity) => expect(readQuantity(written, kind)?.quantity).toBe(quantity));

  it.each(['-', '–', 'n/a'])('%j says nothing', (written) =>
    expect(readQuantity(written)).toEqual({ approximate: false }),
  );

  it.each([
    '',
    '0',
    '-3',
    '1.5',
    '1,2',
    'a few',
    'a handful',
    'several hundred',
    'dozens',
    '2 boxes',
    '12 + several',
    '12 letters and 3 cards',
    '2 (52 prints)',
    '12 (two missing)',
    '3 of 5',
    '1/2',
    '50-40',
    '1914-1918',
    '12 elephants',
    '0 letters',
    'several',
    'lots',
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
        fc.oneof(
          fc.string(),
          fc.string({ unit: fc.constantFrom(...'c. ~0123,?about') }),
          fc
            .array(
              fc.constantFrom(
                '0',
                '2',
                '36',
                ' of ',
                ' boxes',
                ' + ',
                '-',
                ' (',
                ')',
                ' each',
                'x',
                ' dozen',
              ),
            )
            .map((words) => words.join('')),
        ),
        (text) => {
          const { quantity = 1, sheets = 1 } = readQuantity(text) ?? {};
          for (const number of [quantity, sheets])
            expect(Number.isSafeInteger(number) && number > 0).toBe(true);
        },
      ),
    );
  });
});

describe('a row whose quantity is no mere number', () => {
  const rowOf = (kind: string, quantity: string) => {
    const { things, findings } = readList(
      Buffer.from(`Title,Kind,How many\nThe flood,${kind},${quantity}`),
      'list.csv',
    );
    return { ...things[0], rules: findings.map(({ rule }) => rule) };
  };

  it('is marked where it cannot be read, and keeps its words', () => {
    const row = rowOf('photographs', 'several hundred');
    expect(row).toMatchObject({
      quantityUnread: true,
      extra: [{ heading: 'How many', text: 'several hundred' }],
      rules: ['list.quantity-unreadable'],
    });
    expect(row.quantity).toBeUndefined();
  });

  it('has its sheets, and keeps its words', () => {
    const row = rowOf('letter', '6 sheets');
    expect(row).toMatchObject({ sheets: 6, extra: [{ text: '6 sheets' }], rules: [] });
    expect([row.quantity, row.quantityApproximate]).toEqual([undefined, undefined]);
  });

  it('is read in the light of its kind', () => {
    expect(rowOf('slides', '2 boxes of 36')).toMatchObject({ quantity: 72, extra: [], rules: [] });
    expect(rowOf('photographs', '2 albums').quantityUnread).toBe(true);
    expect(rowOf('photograph album', '2 albums')).toMatchObject({ quantity: 2, rules: [] });
  });

  it('says nothing with a dash', () => {
    expect(rowOf('letter', '-')).toMatchObject({ extra: [], rules: [] });
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
    ['Ada Quill und Nils Quill', ['Ada Quill', 'Nils Quill']],
    ['Ada Quill og Nils Quill', ['Ada Quill', 'Nils Quill']],
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

  // Common practice: a name turned round has its surname alone before the comma.
  it.each([
    ['Hattie Rook, Elsie Rook', true],
    ['Solveig Heron und Nils Quill', true],
    ['Einar og Karin Rook', true],
    ['Ada Quill u. Nils Quill', true],
    ['Ada et Nils Quill', true],
    ['Ortega y Gasset', false],
    ['Gunda Undset', false],
    ['Ann Moss, Ruth Moss', true],
    ['A. Quill, N. J. Heron-Rook', true],
    ['Ann van der Moss, Mrs Ruth Moss', true],
    ['Ada Quill, Nils Quill, Élise Rook', true],
    ['Quill, Ada Mary', false],
    ['van der Moss, Ann Ruth', false],
    ['Ada Quill, Jr', false],
    ['Ada Quill, née Rook', false],
    ['Ada Quill, the younger', false],
    ['Hask & Sons', false],
    ['Rook, Heron & Co.', false],
    ['Heron Bros, Millrace', false],
    ['Quill and Rook Ltd', false],
    ['Millrace Silver Band, Quill Landing', false],
  ])('%s: two names? %s', (name, isTwo) => {
    expect(maybeTwo(name)).toBe(isTwo);
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
