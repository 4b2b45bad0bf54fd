import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Label } from '../../src/export/labels/labels-of.ts';
import { newLabels, printedCsv, printedNow, readPrinted } from '../../src/export/labels/printed.ts';
import { nastyText } from '../support/hostile-text.ts';

const label = (number: string, title = 'Letters'): Label => ({
  key: `folder ${number}`,
  of: 'folder',
  type: 'Folder',
  number,
  collection: 'Quill Family Papers',
  series: ['Correspondence'],
  title,
});

const bytes = (text: string) => new TextEncoder().encode(text);

describe('labels printed before', () => {
  test('new, changed and as they were', () => {
    const first = [label('1'), label('2')];
    const printed = printedNow(first, first, new Map());
    const since = newLabels([label('1'), label('2', 'Letters and postcards'), label('3')], printed);
    const keys = (labels: readonly Label[]) => labels.map(({ key }) => key);
    expect([keys(since.before), keys(since.changed), keys(since.fresh)]).toEqual([
      ['folder 1'],
      ['folder 2'],
      ['folder 3'],
    ]);
  });

  test('a box that now holds glass is printed again', () => {
    const printed = printedNow([label('1')], [label('1')], new Map());
    expect(newLabels([{ ...label('1'), care: 'GLASS' }], printed).changed).toHaveLength(1);
  });

  test('what was not printed this time stays as it was; what is gone is forgotten', () => {
    const before = printedNow([label('1'), label('2')], [label('1'), label('2')], new Map());
    const all = [label('2', 'Other words'), label('3')];
    const now = printedNow(all, [label('3')], before);
    expect([...now.keys()]).toEqual(['folder 2', 'folder 3']);
    expect(newLabels(all, now).changed).toHaveLength(1);
  });

  test('the file is read back as it was written, and by another reader of CSV', () => {
    const texts = fc.array(nastyText, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(texts, (titles) => {
        const labels = titles.map((title, index) => label(String(index + 1), title));
        const csv = printedCsv(printedNow(labels, labels, new Map()));
        const read = readPrinted(bytes(csv));
        expect(newLabels(labels, read).before).toHaveLength(labels.length);
        expect(parse(csv, { bom: true })).toHaveLength(labels.length + 1);
      }),
    );
  });

  test('a file saved by a spreadsheet with semicolons is read as well', () => {
    const labels = [label('1')];
    const [, text] = [...printedNow(labels, labels, new Map())][0] ?? [];
    const read = readPrinted(bytes(`label;text\r\nfolder 1;${text}\r\n`));
    expect(newLabels(labels, read).before).toHaveLength(1);
  });

  test.each([
    ['an empty file', ''],
    ['another table', 'number,title\r\n1,Bell\r\n'],
    ['a quotation mark that nothing closes', 'label,text\r\n"folder 1,Letters\r\n'],
    ['no text', '\u0000\u0001\u0002'],
  ])('%s is refused', (_, text) => {
    expect(() => readPrinted(bytes(text))).toThrow(/delete it: then every label counts as not yet printed/);
  });
});
