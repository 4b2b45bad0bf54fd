import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../src/intake/column-letters.ts';
import { columnOf } from '../../src/intake/columns.ts';
import { readTable } from '../../src/intake/csv.ts';

const read = (content: string | Uint8Array) => {
  const bytes = typeof content === 'string' ? Buffer.from(content) : content;
  const { table, findings } = readTable(bytes, 'list.csv', (text) => columnOf(text) !== undefined);
  if (table === undefined) return { findings };
  const { headings, headingRow } = table;
  const rows = [...table.rows];
  return { table: { headings, headingRow, rows }, findings: [...findings, ...table.oddities()] };
};
const onlyFinding = (content: string | Uint8Array) => {
  const { findings } = read(content);
  expect(findings).toHaveLength(1);
  const [finding] = findings;
  if (finding === undefined) throw new Error('no finding');
  expect(finding.weight).toBe('must');
  return finding;
};

describe('a list as a table', () => {
  const written = 'title,date\nA café in 1950,1950\n';
  const expected = {
    headings: ['title', 'date'],
    headingRow: 1,
    rows: [{ row: 2, cells: ['A café in 1950', '1950'] }],
  };

  it.each([
    ['UTF-8', Buffer.from(written)],
    ['UTF-8 with a byte order mark', Buffer.from(`\uFEFF${written}`)],
    ['UTF-16, little end first', Buffer.from(`\uFEFF${written}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\uFEFF${written}`, 'utf16le').swap16()],
    ['semicolons', Buffer.from(written.replaceAll(',', ';'))],
    ['tabs', Buffer.from(written.replaceAll(',', '\t'))],
    ['a line that names the separator', Buffer.from(`sep=;\r\n${written.replaceAll(',', ';')}`)],
  ])('reads %s', (_, bytes) => expect(read(bytes)).toEqual({ table: expected, findings: [] }));

  it('recognises the separator although the headings and cells hold others', () => {
    const { table } = read('title;place, town;date\n"Ada; Nils";Sallow Reach, Mill Lane;1,950\n');
    expect(table?.headings).toEqual(['title', 'place, town', 'date']);
    expect(table?.rows[0]?.cells).toEqual(['Ada; Nils', 'Sallow Reach, Mill Lane', '1,950']);
  });

  it('takes the first row that holds something for the headings, and counts on', () => {
    const { table } = read('\n,,\ntitle,date,\n\na,b,\n');
    expect(table?.headingRow).toBe(3);
    expect(table?.rows.map(({ row }) => row)).toEqual([5]);
  });

  it('needs no separator for a list of titles', () => {
    expect(read('title\nA letter, from Ada\n').table?.rows[0]?.cells).toEqual(['A letter, from Ada']);
  });
});

describe('a list that is none', () => {
  it.each([
    ['nothing', ''],
    ['a byte order mark', '\uFEFF'],
    ['line breaks', '\r\n\n'],
    ['separators', ',,\n , \n'],
  ])('is called empty if it holds only %s', (_, text) => {
    expect(onlyFinding(text).rule).toBe('list.empty');
  });

  // The signatures: PKWARE APPNOTE 4.3.7 for XLSX and ODS; [MS-CFB] 2.2 for XLS; ISO 32000-1, 7.5.2; PNG, 5.2.
  it.each([
    ['a workbook', [0x50, 0x4b, 0x03, 0x04, 0x14, 0, 6, 0], 'workbook (XLSX or ODS)'],
    ['an old workbook', [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1], 'old workbook (XLS)'],
    ['a PDF', [0x25, 0x50, 0x44, 0x46, 0x2d], 'PDF'],
    ['a picture', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a], 'PNG'],
    ['something binary', Array.from({ length: 600 }, (_, at) => (at * 7) % 256), 'not a text file'],
    ['NULs', Array.from({ length: 100 }, () => 0), 'not a text file'],
  ])('is named if it is %s, with a way out', (_, bytes, name) => {
    const { rule, found, advice } = onlyFinding(Uint8Array.from(bytes));
    expect(rule).toBe('file.binary');
    expect(found).toContain(name);
    expect(advice).toContain('CSV UTF-8');
  });

  it('in Windows-1252: line, letters before, byte and way out are said', () => {
    const finding = onlyFinding(
      Buffer.from('title,date\nfine,1950\nThe caf\u00E9 at the ferry,1951\nNo\u00EBl,1952\n', 'latin1'),
    );
    expect(finding.place).toEqual({ file: 'list.csv', line: 3 });
    expect(finding.found).toContain('E9 after “The caf”');
    expect(finding.found).toContain('2 lines');
    expect(finding.advice).toContain('CSV UTF-8');
  });

  it('with every kind of broken UTF-8 says the first bad byte (Unicode 16.0, table 3-7)', () => {
    const bad: [bytes: number[], first: string][] = [
      [[0x80], '80'],
      [[0xc0, 0xaf], 'C0'],
      [[0xe2, 0x82], 'E2'],
      [[0xed, 0xa0, 0x80], 'ED'],
      [[0xf0, 0x9f, 0x8d, 0x20], 'F0'],
      [[0xff], 'FF'],
    ];
    for (const [bytes, first] of bad) {
      const { found, place } = onlyFinding(
        Buffer.concat([Buffer.from('title\né🍎'), Buffer.from(bytes), Buffer.from('\n')]),
      );
      expect(found).toContain(`the byte ${first} after “é🍎”`);
      expect(place.line).toBe(2);
    }
  });

  it('with an open quotation mark: row and line are said', () => {
    const { rule, place } = onlyFinding('title,note\n"two\nlines",x\n\nb,"never closed\nc,d\n');
    expect(rule).toBe('list.unclosed-quote');
    expect(place).toEqual({ file: 'list.csv', row: 4, line: 5 });
  });
});

describe('characters that XML 1.0 forbids', () => {
  it('are each reported with row and column', () => {
    const { findings } = read('title,note,\nA\u0001,ok\nok,"b\u000Bc",\uFFFE\n');
    expect(findings.map(({ rule, weight, place }) => [rule, weight, place.row, place.column])).toEqual([
      ['list.forbidden-character', 'must', 2, 'title'],
      ['list.forbidden-character', 'must', 3, 'note'],
      ['list.forbidden-character', 'must', 3, 'C'],
    ]);
    expect(findings.map(({ found }) => /U\+\w{4}/.exec(found)?.[0])).toEqual(['U+0001', 'U+000B', 'U+FFFE']);
  });

  it('are no others: tabs, breaks, emoji and the far ends of Unicode pass', () => {
    expect(read('title,note\n"a\tb\nc",🍎\u0085\uFFFD\u{10FFFF}\uE000\n').findings).toEqual([]);
  });
});

it('columns are named as spreadsheets name them', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});
