import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { EVERYDAY_HEADINGS } from '../../src/intake/headings.ts';
import { readList } from '../../src/intake/list.ts';
import { withNumbers } from '../../src/intake/number-cells.ts';
import { times } from '../support/times.ts';

const numbered = (text: string, numbers: Record<number, string>) =>
  Buffer.from(withNumbers(Buffer.from(text), new Map(entries(numbers)))).toString();
const entries = (numbers: Record<number, string>) =>
  Object.entries(numbers).map(([row, number]) => [Number(row), number] as const);

// What is to be put in where is told by hand; the row numbers are those of a spreadsheet.
describe('numbers put into a list', () => {
  it.each<[string, string, Record<number, string>, string]>([
    ['an empty cell', 'no,title\n,a\n2,b\n,c\n', { 2: '1', 4: '3' }, 'no,title\n1,a\n2,b\n3,c\n'],
    ['the last column', 'title,no\na,\nb,', { 2: '1', 3: '2' }, 'title,no\na,1\nb,2'],
    [
      'a row that lacks the cell',
      'title,who,no\na\nb,Ada\n',
      { 2: '1', 3: '2' },
      'title,who,no\na,,1\nb,Ada,2\n',
    ],
    ['a row that ends with the text', 'title,who,no\na,', { 2: '1' }, 'title,who,no\na,,1'],
    ['a quoted empty cell', 'no,title\n"",a\n', { 2: '1' }, 'no,title\n"1",a\n'],
    ['a quoted blank cell', 'no,title\n "  " ,a\n', { 2: '1' }, 'no,title\n "1  " ,a\n'],
    ['a cell of blanks', 'no,title\n  ,a\n', { 2: '1' }, 'no,title\n1  ,a\n'],
    ['CRLF', 'no,title\r\n,a\r\n,b\r\n', { 3: '1' }, 'no,title\r\n,a\r\n1,b\r\n'],
    ['CR alone', 'title,no\ra\rb,\r', { 2: '1', 3: '2' }, 'title,no\ra,1\rb,2\r'],
    [
      'a line break in a cell before it',
      'title,no\n"a\nb",\n"c\r\nd"\n',
      { 2: '1', 3: '2' },
      'title,no\n"a\nb",1\n"c\r\nd",2\n',
    ],
    [
      'quotation marks before it',
      'title,no\n"a ""b"", c",\nan 8" record,\n',
      { 2: '1', 3: '2' },
      'title,no\n"a ""b"", c",1\nan 8" record,2\n',
    ],
    ['empty rows between', '\nno,title\n\n,a\n,,\n,b\n', { 4: '1', 6: '2' }, '\nno,title\n\n1,a\n,,\n2,b\n'],
    ['semicolons', 'title;no\na, b;\n', { 2: '1' }, 'title;no\na, b;1\n'],
    ['tabs', 'title\tno\na\t\n', { 2: '1' }, 'title\tno\na\t1\n'],
    [
      'a separator in a line of its own',
      'sep=;\r\ntitle;no\r\na;\r\n',
      { 2: '1' },
      'sep=;\r\ntitle;no\r\na;1\r\n',
    ],
    [
      'a number with a comma in it',
      'no,title\n,a\n"",b\n',
      { 2: '1,5', 3: '1"6' },
      'no,title\n"1,5",a\n"1""6",b\n',
    ],
  ])('%s', (_, list, numbers, expected) => expect(numbered(list, numbers)).toBe(expected));

  it.each<[string, string, Record<number, string>, string]>([
    ['commas', 'title,who\na,Ada\n\n"b\nc"\n', { 2: '1', 4: '2' }, 'number,title,who\n1,a,Ada\n\n2,"b\nc"\n'],
    ['a row without a number', 'title;who\n;Ada\na;\n', { 3: '1' }, 'number;title;who\n;;Ada\n1;a;\n'],
    ['one column', 'title\na\nb\n', { 2: '1', 3: '2' }, 'number,title\n1,a\n2,b\n'],
    ['one column with commas', 'title\nA quilt, blue\n', { 2: '1' }, 'number;title\n1;A quilt, blue\n'],
    [
      'one column with both',
      'title\nA quilt, blue; torn\n',
      { 2: '1' },
      'number\ttitle\n1\tA quilt, blue; torn\n',
    ],
  ])('in a first column of their own where there is none: %s', (_, list, numbers, expected) =>
    expect(numbered(list, numbers)).toBe(expected),
  );

  it.each(['number', 'Number', ...EVERYDAY_HEADINGS.number, 'No.', 'Nr', '#', '№', 'Item #'])(
    'under the heading %s',
    (heading) =>
      expect(numbered(`what;${heading};who\na;;Ada\n`, { 2: '7' })).toBe(`what;${heading};who\na;7;Ada\n`),
  );

  it.each(['a number is there', 'the row is not there'])('not where %s', (why) => {
    const numbers = new Map(why.startsWith('a') ? [[2, '9']] : ([[5, '9']] as [number, string][]));
    expect(() => withNumbers(Buffer.from('no,title\n1,a\n'), numbers)).toThrow(CatalogueError);
  });

  it('not into one column that holds every separator', () => {
    const list = Buffer.from('title\na, b; c\td\n');
    expect(() => withNumbers(list, new Map([[2, '1']]))).toThrow(/column headed “number”/);
  });

  // The reader refuses such a list before, in the same words.
  it('not into a list whose encoding is in doubt', () => {
    // UTF-8 for é, and a byte that is no UTF-8.
    const list = Buffer.from([...Buffer.from('no,title\n,é'), 0xc6, ...Buffer.from('bler\n')]);
    expect(() => withNumbers(list, new Map([[2, '1']]))).toThrow(/not in UTF-8: the byte C6/);
  });
});

const ENCODINGS = {
  'UTF-8': (text: string) => Buffer.from(text),
  'UTF-8 with a byte order mark': (text: string) => Buffer.from(`\uFEFF${text}`),
  'UTF-16 LE': (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le'),
  'UTF-16 BE': (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le').swap16(),
} satisfies Record<string, (text: string) => Buffer>;

/** A list as people and spreadsheet programs write them; most cells of the number column are blank. */
const list = fc
  .record({
    separator: fc.constantFrom(',', ';', '\t'),
    end: fc.constantFrom('\n', '\r\n', '\r'),
    last: fc.boolean(),
    named: fc.boolean(),
    // Where the number column stands, if there is one, among title and three more.
    at: fc.option(fc.nat({ max: 4 }), { nil: undefined }),
    numberHeading: fc.constantFrom('number', 'No.', '#', 'Item no'),
    others: fc.constantFrom(['who', 'note', 'shelf'], ['Notes', 'when', 'Æble, pære'], []),
    rows: fc.array(
      fc.oneof(
        { weight: 1, arbitrary: fc.constantFrom('blank', 'separators') },
        {
          weight: 8,
          arbitrary: fc.record({
            title: fc.string({
              unit: fc.constantFrom(
                'a',
                'é',
                '🍎',
                '東',
                ' ',
                ',',
                ';',
                '\t',
                '"',
                '\n',
                "'",
                '\u00A0',
                '\uFEFF',
              ),
              minLength: 1,
              maxLength: 12,
            }),
            others: fc.array(
              fc.constantFrom('', ' ', 'x', '"', 'x,y', ';', 'Ada; Nils', '\u00A0', 'a\r\nb'),
              {
                minLength: 3,
                maxLength: 3,
              },
            ),
            always: fc.boolean(),
            number: fc.constantFrom('', '', '', ' ', '""', '"  "', '  "" ', '\u00A0', 'own'),
            cut: fc.boolean(),
          }),
        },
      ),
      { minLength: 1, maxLength: 8 },
    ),
  })
  .map(({ separator, end, last, named, at, numberHeading, others, rows }) => {
    const cell = (text: string, always: boolean) =>
      always || /[",;\t\r\n]|^ /.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
    const line = (cells: string[], number: string) =>
      at === undefined ? cells : cells.toSpliced(Math.min(at, cells.length), 0, number);
    const lines = rows.map((row, index) => {
      if (row === 'blank') return '';
      if (row === 'separators') return separator.repeat(others.length);
      const cells = [`${row.title}t`, ...row.others.slice(0, others.length)].map((text) =>
        cell(text, row.always),
      );
      const number = row.number === 'own' ? `own ${index}` : row.number;
      const whole = line(cells, number);
      // A short row: what is blank at its end is left away.
      while (row.cut && whole.length > 1 && whole.at(-1)?.trim() === '') whole.pop();
      return whole.join(separator);
    });
    const heads = line(
      ['title', ...others].map((text) => cell(text, false)),
      numberHeading,
    ).join(separator);
    return (
      (named ? `sep=${separator}${end === '\r' ? '\n' : end}` : '') +
      [heads, ...lines].join(end) +
      (last ? end : '')
    );
  });

describe('whatever the list', () => {
  const given = fc.constantFrom(
    (row: number) => String(1000 + row),
    (row: number) => `QF ${row}`,
    (row: number) => `${row}, "b"; c`,
  );

  it.each(Object.keys(ENCODINGS) as (keyof typeof ENCODINGS)[])(
    'its things stay and get their numbers: %s',
    (name) => {
      fc.assert(
        fc.property(list, given, (text, number) => {
          const bytes = ENCODINGS[name](text);
          const before = readList(bytes, 'list.csv');
          fc.pre(before.findings.every(({ weight }) => weight !== 'must'));
          const fresh = before.things.filter((thing) => thing.number === undefined);
          const numbers = new Map(fresh.map(({ row }) => [row, number(row)]));
          const written = withNumbers(bytes, numbers);
          const after = readList(written, 'list.csv');
          expect(after.things).toEqual(
            before.things.map((thing): Thing => ({ ...thing, number: thing.number ?? number(thing.row) })),
          );
          expect(onlyAdded(bytes, written)).toBe(true);
        }),
        { numRuns: times(300) },
      );
    },
  );

  it('one that has all its numbers stays as it is, to the byte', () => {
    fc.assert(
      fc.property(list, (text) => {
        const bytes = Buffer.from(text);
        fc.pre(/no|number|#/i.test(text.split('\n')[0] ?? '') && !text.startsWith('sep'));
        const { things, findings } = readList(bytes, 'list.csv');
        fc.pre(findings.every(({ weight }) => weight !== 'must'));
        const numbers = new Map(
          things.flatMap(
            ({ row, number }) => (number === undefined ? [[row, `${row}`]] : []) as [number, string][],
          ),
        );
        const once = withNumbers(bytes, numbers);
        expect(Buffer.from(withNumbers(once, new Map())).equals(once)).toBe(true);
      }),
      { numRuns: times(200) },
    );
  });
});

/** Whether all bytes of the one stand in the other in the same order, and nothing was taken away. */
function onlyAdded(original: Uint8Array, written: Uint8Array): boolean {
  let at = 0;
  for (const byte of written) if (byte === original[at]) at++;
  return at === original.length;
}
