import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Oddities, readRows } from '../../src/intake/csv-rows.ts';

const cellsOf = (text: string, separator = ',') => [...readRows(text, separator)].map(({ cells }) => cells);
const rowsOf = (text: string, separator = ',') => [...readRows(text, separator)].map(({ row }) => row);

describe('rows of comma-separated values', () => {
  // RFC 4180, section 2, rules 1 to 7, with its own examples.
  it.each([
    [
      'rule 1, CRLF after each record',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'rule 2, none after the last',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'rule 5, quoted fields',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'rule 6, a break in a field',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['rule 7, a doubled quote', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('follow RFC 4180, %s', (_, text, expected) => expect(cellsOf(text)).toEqual(expected));

  it('count as a spreadsheet does: empty rows count, breaks in a cell do not', () => {
    expect(rowsOf('a,b\n\n"x\ny\nz",1\n,,\n \n,2\n')).toEqual([1, 3, 6]);
  });

  it('end with LF, CRLF or CR alike', () => {
    for (const end of ['\n', '\r\n', '\r'])
      expect(cellsOf(['a,b', 'c,d', ''].join(end))).toEqual([
        ['a', 'b'],
        ['c', 'd'],
      ]);
  });

  it('keep an inch mark and a quotation inside a cell as they are', () => {
    expect(cellsOf('a 12" record,8" × 10"\nsaid "no",x')).toEqual([
      ['a 12" record', '8" × 10"'],
      ['said "no"', 'x'],
    ]);
  });

  it('take blanks around a quoted cell for nothing', () => {
    expect(cellsOf('a, "b, c" ,d')).toEqual([['a', 'b, c', 'd']]);
  });

  it('report text behind a closing quotation mark, and lose none of it', () => {
    const oddities: Oddities = { stray: [] };
    const rows = [...readRows('x\n"Ada" letter,1950', ',', oddities)];
    expect(oddities).toEqual({ stray: [2] });
    expect(rows[1]?.cells).toEqual(['Ada letter', '1950']);
  });

  it('say where a quotation mark was opened that nothing closes', () => {
    const unclosed = (text: string) => {
      const oddities: Oddities = { stray: [] };
      return [[...readRows(text, ',', oddities)].length, oddities.unclosed];
    };
    expect(unclosed('a,b\nc,"d\ne,f\n')).toEqual([1, { row: 2, at: 6 }]);
    expect(unclosed('"')).toEqual([0, { row: 1, at: 0 }]);
  });

  it('keep an empty cell at the end of a row, with or without a break after it', () => {
    expect(cellsOf('a,\n,b\nc,')).toEqual([
      ['a', ''],
      ['', 'b'],
      ['c', ''],
    ]);
  });

  it('without a separator, a line is a cell', () => {
    const rows = [...readRows('title\nA letter, from Ada; 1950', undefined)];
    expect(rows.map(({ cells }) => cells)).toEqual([['title'], ['A letter, from Ada; 1950']]);
  });

  // The reference is the csv-parse package: any table that it reads without an error reads the same here.
  const cell = fc.string({
    unit: fc.constantFrom('a', 'é', '🍎', ' ', ',', ';', '\t', '"', '\n', "'"),
    maxLength: 8,
  });
  const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 8 });
  const quoteIf = (text: string, always: boolean) =>
    always || /[",;\t\n]/.test(text) || /^ /.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

  it.each([',', ';', '\t'])('give what csv-parse gives, separator %j', (separator) => {
    fc.assert(
      fc.property(
        table,
        fc.boolean(),
        fc.constantFrom('\n', '\r\n'),
        fc.boolean(),
        (cells, always, end, last) => {
          const text =
            cells.map((row) => row.map((each) => quoteIf(each, always)).join(separator)).join(end) +
            (last ? end : '');
          const reference: string[][] = parse(text, { delimiter: separator, relax_column_count: true });
          const filled = reference.filter((row) => row.some((each) => each.trim() !== ''));
          expect(cellsOf(text, separator)).toEqual(filled);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('never throw, whatever the text, and never lose a letter outside quotation marks and separators', () => {
    const soup = fc.string({ unit: fc.constantFrom('a', 'b', ' ', ',', '"', '\n', '\r'), maxLength: 30 });
    fc.assert(
      fc.property(soup, (text) => {
        const oddities: Oddities = { stray: [] };
        const rows = [...readRows(text, ',', oddities)];
        const letters = (part: string) => part.replace(/[^ab]/g, '');
        if (oddities.unclosed === undefined) {
          expect(letters(rows.flatMap(({ cells }) => cells).join(''))).toBe(letters(text));
        }
      }),
      { numRuns: 1000 },
    );
  });
});
