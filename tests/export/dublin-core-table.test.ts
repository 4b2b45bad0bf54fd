import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asWritten, csvCell } from '../../src/catalogue/csv-cell.ts';
import { DC_ELEMENTS } from '../../src/export/crosswalk/row.ts';
import { dublinCore } from '../../src/export/dublin-core/index.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { aidWith, recordsOf, tableOf, termsOf, textsOf } from '../support/dublin-core-records.ts';
import { nastyText } from '../support/hostile-text.ts';

const hard = aidWith(
  {
    ...{
      id: 'QF',
      title: '=SUM(A1) & "sons", Ltd.',
      creators: [{ agent: 'ada' }, { agent: 'firm' }, { agent: 'dvora' }],
    },
    languages: [
      { code: 'eng', name: 'English' },
      { code: 'heb', name: 'Hebrew', script: { code: 'Hebr', name: 'Hebrew' } },
    ],
    ...{ abstract: '-5 degrees', scopeAndContent: 'יוֹמָן\n\nÆbler, <b>pærer</b>' },
  },
  { recipient: { name: 'Osier County Library', separator: ' | ' } },
);

describe('names, languages and scripts that are hard to carry', () => {
  const expected = {
    title: ['=SUM(A1) & "sons", Ltd.'],
    creator: ['Quill, Ada "Addie", 1902-1988', 'Quill & Sons', 'דבורה קוויל'],
    description: ['-5 degrees', 'יוֹמָן\n\nÆbler, <b>pærer</b>'],
    type: ['Collection'],
    identifier: ['QF'],
    language: ['eng', 'heb'],
  };

  it('are right in XML', () => {
    expect(Object.keys(recordsOf(hard).get('QF.xml') ?? {})).toEqual(
      DC_ELEMENTS.filter((name) => name in expected),
    );
    expect(recordsOf(hard).get('QF.xml')).toEqual(expected);
    expect(termsOf(hard)[0]).toMatchObject({ title: expected.title, creator: expected.creator });
  });

  // RFC 4180, as csv-parse reads it.
  it('are right in the table, with the separator that the recipient chose', () => {
    const [row = {}] = tableOf(hard);
    expect(Object.keys(row)).toEqual([...DC_ELEMENTS]);
    for (const name of DC_ELEMENTS) {
      const values = (expected as Record<string, string[]>)[name] ?? [];
      expect([name, asWritten(row[name] ?? '')]).toEqual([name, values.join(' | ')]);
    }
    // Harmless: nothing begins as a formula does.
    expect(row.title).toBe(`'=SUM(A1) & "sons", Ltd.`);
  });

  it('is in UTF-8 with a byte order mark, lines ending in CR and LF', () => {
    const text = textsOf(dublinCore(hard)).get('dublin-core.csv') ?? '';
    expect(text.startsWith('\uFEFFtitle,creator,')).toBe(true);
    expect(text.endsWith('\r\n')).toBe(true);
  });

  it('parts values by a stroke between blanks where no recipient says otherwise', () => {
    const { recipient: _, ...aid } = hard;
    expect(tableOf(aid)[0]?.language).toBe('eng | heb');
  });
});

/** The wrapper around libxml2 takes a byte order mark at the start of any text for one of the file. */
const marked = (text: string) => text.replaceAll('\uFEFF', '');

describe('the table', () => {
  it('says what the records say, for finding aids of every shape', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 4 }), (aid) => {
        const rows = tableOf(
          { ...aid, recipient: { name: 'x', languageCodes: 'iso639-2b', separator: '\u241E' } },
          'item',
        );
        const records = [...recordsOf(aid, 'item').values()];
        expect(rows.length).toBe(records.length);
        for (const [at, row] of rows.entries()) {
          for (const name of DC_ELEMENTS) {
            const inXml = (records[at]?.[name] ?? []).join('\u241E');
            expect(marked(asWritten(row[name] ?? ''))).toBe(marked(inXml));
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  // OWASP, "CSV injection": = + - @, tab and line breaks at the start of a cell (from memory).
  it('has no cell that a spreadsheet would run, and none that cannot be read back as written', () => {
    const nasty = fc.tuple(
      fc.constantFrom('', '=', '+', '-', '@', '\t', '\r', '\n', "'", "'=", "''@", '＝'),
      nastyText,
    );
    fc.assert(
      fc.property(
        nasty.map((parts) => parts.join('')),
        (text) => {
          const [[cell = '']] = parse(`${csvCell(text)},x\r\n`) as [string[]];
          expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/);
          expect(asWritten(cell)).toBe(text);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
