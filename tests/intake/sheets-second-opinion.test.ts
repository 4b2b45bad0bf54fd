import fc from 'fast-check';
import { writeOds } from 'hucre/ods';
import { readXlsx as readXlsxElsewhere, writeXlsx } from 'hucre/xlsx';
import { describe, expect, it } from 'vitest';
import { beginWorkbook } from '../../src/catalogue/begin-workbook.ts';
import { COLUMNS } from '../../src/catalogue/thing.ts';
import { readList } from '../../src/intake/list.ts';
import { fromSerial } from '../../src/intake/sheets/serial.ts';
import { readWorkbook } from '../../src/intake/sheets/workbook.ts';
import { KINDS } from '../../src/kinds/kinds.ts';

// hucre reads and writes both formats on its own; what it writes must be read here as it was meant.
const word = fc
  .string({ unit: fc.constantFrom(...'abcÄé–“”&<>"\' \n12🍎;,='), minLength: 1, maxLength: 12 })
  .filter((text) => text.trim() !== '' && text === text.trim());
const value = fc.oneof(
  word,
  fc.integer({ min: -1_000_000, max: 1_000_000 }),
  fc.boolean(),
  fc.constant(null),
);
const tables = fc.array(fc.array(value, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 8 });

const shown = (cell: string | number | boolean | null) =>
  cell === null ? '' : typeof cell === 'boolean' ? (cell ? 'TRUE' : 'FALSE') : String(cell);
/** Cells as texts, without empty ones at the end. */
function asTexts(row: readonly (string | number | boolean | null)[]): string[] {
  const cells = row.map(shown);
  while (cells.at(-1) === '') cells.pop();
  return cells;
}
const widened = (rows: readonly { row: number; cells: readonly string[] }[], length: number) =>
  Array.from({ length }, (_, at) => asTexts(rows.find(({ row }) => row === at + 1)?.cells ?? []));

describe.each([
  ['XLSX', writeXlsx],
  ['ODS', writeOds],
] as const)('a table that another program writes as %s', (_, write) => {
  it('is read cell by cell', async () => {
    await fc.assert(
      fc.asyncProperty(tables, async (rows) => {
        const bytes = await write({ sheets: [{ name: 'List', rows }] });
        const [sheet] = readWorkbook(bytes, 'list');
        expect(widened(sheet?.rows ?? [], rows.length)).toEqual(rows.map(asTexts));
      }),
      { numRuns: 60 },
    );
  });
});

describe('days', () => {
  it('are counted as the calendar does, in both counts', () => {
    // After February 1900, day n is n days after 1899-12-30; in the other count, n days after 1904-01-01.
    const DAY = 86_400_000;
    fc.assert(
      fc.property(fc.integer({ min: 61, max: 2_957_003 }), (day) => {
        const iso = (from: number) => new Date(from + day * DAY).toISOString().slice(0, 10);
        expect(fromSerial(day, 1900)).toEqual({ date: iso(Date.UTC(1899, 11, 30)) });
        expect(fromSerial(day, 1904)).toEqual({ date: iso(Date.UTC(1904, 0, 1)) });
      }),
    );
  });

  it('have times, to the second', () => {
    expect(fromSerial(22_780.5, 1900)).toEqual({ date: '1962-05-14', time: '12:00' });
    expect(fromSerial(22_780 + 3661 / 86_400, 1900)).toEqual({ date: '1962-05-14', time: '01:01:01' });
    expect(fromSerial(22_780.999_999_9, 1900)).toEqual({ date: '1962-05-15' });
    expect(fromSerial(-1, 1900)).toBeUndefined();
    expect(fromSerial(0, 1900)).toBeUndefined();
    expect(fromSerial(2_958_466, 1900)).toBeUndefined();
    expect(fromSerial(Number.NaN, 1904)).toBeUndefined();
  });
});

describe('the list that begin writes', () => {
  const bytes = beginWorkbook();

  it('is a list without things, its example apart', () => {
    const { things, findings } = readList(bytes, 'list.xlsx');
    expect(things).toEqual([]);
    expect(findings.map(({ rule }) => rule)).toEqual(['list.no-things', 'list.example']);
  });

  it('is read by another program, with its choices', async () => {
    const { sheets } = await readXlsxElsewhere(bytes);
    const [list, guide] = sheets;
    expect(sheets.map(({ rows }) => rows[0]?.[0])).toEqual(['number', 'How to fill in this list']);
    expect(list?.rows[0]).toEqual([...COLUMNS]);
    const choices = list?.dataValidations?.map(({ type, range, formula1 }) => [type, range, formula1]);
    const letter = (column: (typeof COLUMNS)[number]) => String.fromCharCode(65 + COLUMNS.indexOf(column));
    expect(choices?.map(([type, range]) => [type, String(range).charAt(0)])).toEqual([
      ['list', letter('kind')],
      ['list', letter('condition')],
    ]);
    // The choices are cells of the second sheet: each kind once, from the second row on.
    const offered = guide?.rows.slice(1, KINDS.length + 1).map((row) => row[4]);
    expect(offered).toEqual(KINDS.map(({ one }) => one));
    expect(choices?.[0]?.[2]).toBe(`'How to fill it in'!$E$2:$E$${KINDS.length + 1}`);
    // Every column is explained.
    expect(COLUMNS.filter((column) => !guide?.rows.some((row) => row[0] === column && row[1]))).toEqual([]);
  });

  it('is the same, byte for byte, every time', () => expect(Buffer.compare(beginWorkbook(), bytes)).toBe(0));
});
