import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinTitles, NUMBER_COLUMNS, numbersToCsv, splitTitles } from '../../src/catalogue/numbers-file.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import { readNumbers } from '../../src/intake/numbers.ts';
import { nastyText } from '../support/hostile-text.ts';

const read = (text: string) => readNumbers(Buffer.from(text), 'numbers.csv');
const code = (place: readonly number[]) => `QF/${place.join('/')}`;

const LETTER: Settled = {
  number: '13',
  title: 'Letter from Ada',
  place: [2, 5, 13],
  groups: ['Letters'],
  filedUnder: '1952',
  folder: 7,
  folderKind: 'folder-letter',
  box: '3',
  boxKind: 'document-box-letter',
};

describe('numbers.csv', () => {
  it('says what stands where in words that a person understands', () => {
    const bundle: Settled = {
      ...{
        number: '14',
        title: 'Tickets, a bundle',
        place: [2, 1, 6, 1],
        groups: ['Papers', 'Ferry > orchard'],
      },
      ...{ folder: 8, lastFolder: 10, gone: 'moved to 2/7/4' },
    };
    expect(numbersToCsv([LETTER, bundle], code)).toBe(
      [
        '\uFEFFnumber,title,reference code,place,groups,filed under,folder,folder kind,box,box kind,gone',
        '13,Letter from Ada,QF/2/5/13,/2/5/13,Letters,1952,7,folder-letter,3,document-box-letter,',
        '14,"Tickets, a bundle",QF/2/1/6/1,/2/1/6/1,Papers > Ferry \\> orchard,,8 to 10,,,,moved to 2/7/4',
        '',
      ].join('\r\n'),
    );
  });

  it('with nothing settled has its headings, and reads so', () => {
    expect(read(numbersToCsv([]))).toEqual({ rows: [], findings: [] });
  });

  it.each([
    ['semicolons', (text: string) => Buffer.from(text.replaceAll(',', ';'))],
    ['tabs', (text: string) => Buffer.from(text.replaceAll(',', '\t'))],
    ['no byte order mark and LF', (text: string) => Buffer.from(text.slice(1).replaceAll('\r\n', '\n'))],
    ['UTF-16 LE', (text: string) => Buffer.from(text.replaceAll(',', '\t'), 'utf16le')],
    ['UTF-16 BE', (text: string) => Buffer.from(text, 'utf16le').swap16()],
    ['every cell quoted', (text: string) => Buffer.from(text.slice(1).replace(/[^,\r\n]+/g, '"$&"'))],
    ['a separator in a line of its own', (text: string) => Buffer.from(`sep=,\r\n${text.slice(1)}`)],
    ['empty columns behind the last', (text: string) => Buffer.from(text.replaceAll('\r\n', ',,\r\n'))],
    ['columns in another order', () => Buffer.from(reordered(numbersToCsv([LETTER], code).slice(1)))],
    ['headings in capitals', (text: string) => Buffer.from(text.replace(/.*/, (line) => line.toUpperCase()))],
  ])('reads as a spreadsheet program saves it: %s', (_, saved) => {
    const { rows, findings } = readNumbers(saved(numbersToCsv([LETTER], code)), 'numbers.csv');
    expect(findings).toEqual([]);
    expect(rows).toEqual([LETTER]);
  });

  it('reads what a person writes for a place and for several folders', () => {
    const rows = ['1,a,,2/5/1,G,,3-5,,,,', '2,b,,2 / 5 / 2,G,,3–5,,,,', '3,c,,/2/5/03,G,,3 to 5,,,,'];
    const { rows: found, findings } = read([NUMBER_COLUMNS.join(','), ...rows].join('\n'));
    expect(findings).toEqual([]);
    expect(found.map(({ place, folder, lastFolder }) => [place, folder, lastFolder])).toEqual([
      [[2, 5, 1], 3, 5],
      [[2, 5, 2], 3, 5],
      [[2, 5, 3], 3, 5],
    ]);
  });

  it('needs no column of reference codes', () => {
    expect(
      read(
        'number,title,place,groups,filed under,folder,folder kind,box,box kind,gone\n1,a,/1/1/1,G,,,,,,\n',
      ),
    ).toEqual({
      rows: [{ number: '1', title: 'a', place: [1, 1, 1], groups: ['G'] }],
      findings: [],
    });
  });
});

function reordered(text: string): string {
  const lines = text.split('\r\n').filter((line) => line !== '');
  return lines.map((line) => line.split(',').reverse().join(',')).join('\r\n');
}

describe('what is written reads the same', () => {
  // The list gives numbers, and the settings kinds, without blanks around them; no text has a carriage return in it,
  // since the reader of a list makes line feeds of those.
  const text = nastyText.map((each) => each.replace(/\r\n?/g, '\n'));
  const word = text.map((each) => each.trim() || 'x');

  it('every row, whatever its texts', () => {
    const group = fc.record({
      titles: fc.array(text, { minLength: 1, maxLength: 3 }),
      folders: fc.array(
        fc.record({
          filedUnder: fc.option(text, { nil: undefined }),
          held: fc.option(
            fc.record({ more: fc.nat({ max: 2 }), kind: fc.option(word, { nil: undefined }) }),
            { nil: undefined },
          ),
          box: fc.option(word, { nil: undefined }),
          things: fc.array(
            fc.record({ number: word, title: text, gone: fc.option(word, { nil: undefined }) }),
            {
              minLength: 1,
              maxLength: 4,
            },
          ),
        }),
        { minLength: 1, maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(fc.array(group, { maxLength: 3 }), (groups) => {
        const rows = rowsOf(groups);
        const found = read(numbersToCsv(rows, code));
        expect(found.rows).toEqual(rows);
        expect(found.findings).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('titles of groups in one cell', () => {
    const title = fc.oneof(
      text,
      fc.string({ unit: fc.constantFrom('a', ' ', '>', '\\'), minLength: 1, maxLength: 8 }),
    );
    fc.assert(
      fc.property(fc.array(title, { maxLength: 4 }), (titles) => {
        expect(splitTitles(joinTitles(titles))).toEqual(titles);
      }),
      { numRuns: 2000 },
    );
  });
});

interface MadeGroup {
  titles: string[];
  folders: {
    filedUnder: string | undefined;
    held: { more: number; kind: string | undefined } | undefined;
    box: string | undefined;
    things: { number: string; title: string; gone: string | undefined }[];
  }[];
}

/** Rows without a contradiction: groups each with a first title of its own, things each with a number of its own. */
function rowsOf(groups: readonly MadeGroup[]): Settled[] {
  let folders = 0;
  let things = 0;
  const given = <T extends object>(all: T) =>
    Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as {
      [K in keyof T]?: Exclude<T[K], undefined>;
    };
  return groups.flatMap(({ titles, folders: members }, g) => {
    const [first = '', ...inner] = titles;
    // By a letter that no folding takes away.
    const named = [`${'abc'[g]}${first}`, ...inner];
    const above = [g + 1, ...inner.map(() => 1)];
    return members.flatMap(({ filedUnder, held, box, things: all }, f) => {
      const folder = held === undefined ? undefined : folders + 1;
      const last = folder === undefined ? undefined : folder + (held?.more ?? 0);
      folders = last ?? folders;
      return all.map(
        ({ number, title, gone }, t): Settled => ({
          number: `${number}${++things}`,
          title,
          place: [...above, f + 1, t + 1],
          groups: named,
          ...given({
            filedUnder,
            folder,
            lastFolder: last === folder ? undefined : last,
            folderKind: held?.kind,
            box,
            gone,
          }),
        }),
      );
    });
  });
}
