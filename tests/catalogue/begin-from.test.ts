import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { beginCatalogue } from '../../src/catalogue/begin.ts';
import { BY_THE_CAMERA, beginWithCopies } from '../../src/catalogue/begin-copies.ts';
import { beginFrom } from '../../src/catalogue/begin-from.ts';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { inList } from '../../src/catalogue/list-places.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { previewCatalogue } from '../../src/catalogue/preview.ts';
import { askStart } from '../../src/cli/ask.ts';
import { sayPreview } from '../../src/cli/preview.ts';
import { folderWith, picture } from '../copies/small-files.ts';
import { makeWorkbook } from '../intake/make-workbook.ts';

const YAML = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: The Ferry House\n';
const start = { title: 'Quill family papers', repository: 'The Ferry House' };
const workbook = (...rows: (string | number)[][]) => makeWorkbook([{ rows }]);

async function rulesOf(work: Promise<unknown>): Promise<string[]> {
  const error = await work.catch((thrown: unknown) => thrown);
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  return error.findings.map(({ rule }) => rule);
}

describe('the list of a folder', () => {
  it.each([
    ['list.csv', Buffer.from('title\nA letter\n')],
    ['list.tsv', Buffer.from('title\tdate\nA letter\t1950\n')],
    ['list.xlsx', workbook(['title'], ['A letter'])],
  ])('is %s', async (name, content) => {
    const folder = await folderWith({ 'collection.yaml': YAML, [name]: content });
    const { listFile, things, list } = await loadCatalogue(folder);
    expect([listFile, things.map(({ title }) => title)]).toEqual([name, ['A letter']]);
    expect(Buffer.compare(list, content)).toBe(0);
  });

  it('is whichever was filled in, where a new catalogue has two', async () => {
    const folder = await folderWith();
    await beginCatalogue(folder, start, ['xlsx', 'csv']);
    expect(readdirSync(folder).sort()).toEqual(['collection.yaml', 'list.csv', 'list.xlsx']);
    expect(await rulesOf(loadCatalogue(folder))).toContain('list.no-things');
    const error = await loadCatalogue(folder).catch((thrown: unknown) => thrown);
    expect(String(error)).toContain('list.xlsx instead');

    const empty = readFileSync(join(folder, 'list.csv'));
    writeFileSync(join(folder, 'list.csv'), `${empty}1,From the text\r\n`);
    expect((await loadCatalogue(folder)).listFile).toBe('list.csv');

    writeFileSync(join(folder, 'list.csv'), empty);
    writeFileSync(join(folder, 'list.xlsx'), workbook(['title'], ['From the workbook']));
    expect((await loadCatalogue(folder)).listFile).toBe('list.xlsx');
  });

  it('is never chosen in silence where two hold things', async () => {
    const lists = { 'list.csv': 'title\na\n', 'list.xlsx': workbook(['title'], ['b']) };
    const folder = await folderWith({ 'collection.yaml': YAML, ...lists });
    expect(await rulesOf(loadCatalogue(folder))).toEqual(['catalogue.several-lists']);
    const said = await folderWith({ 'collection.yaml': `${YAML}list:\n  file: list.xlsx\n`, ...lists });
    expect((await loadCatalogue(said)).things.map(({ title }) => title)).toEqual(['b']);
  });

  it('may have another name, which collection.yaml says; one that is not there is an error', async () => {
    const yaml = `${YAML}list:\n  file: papers.xlsx\n  columns:\n    On the back: description\n`;
    const list = workbook(['title', 'On the back'], ['a', 'in ink']);
    const folder = await folderWith({ 'collection.yaml': yaml, 'papers.xlsx': list });
    expect((await loadCatalogue(folder)).things[0]).toMatchObject({ description: 'in ink' });
    const none = await folderWith({ 'collection.yaml': yaml });
    expect(await rulesOf(loadCatalogue(none))).toEqual(['catalogue.no-list']);
  });

  it('in several sheets: findings name the sheet where it is certain', async () => {
    const list = makeWorkbook([
      { name: 'Letters', rows: [['title'], ['a'], ['b']] },
      { name: 'Maps', rows: [['title'], ['c']] },
    ]);
    const folder = await folderWith({ 'collection.yaml': YAML, 'list.xlsx': list });
    const catalogue = await loadCatalogue(folder);
    const finding = (row: number) =>
      ({ rule: 'r', weight: 'should', place: { file: 'list.csv', row }, found: '' }) as const;
    const files = inList([finding(2), finding(3)], catalogue).map(({ place }) => place.file);
    expect(files).toEqual(['list.xlsx, sheet Letters or list.xlsx, sheet Maps', 'list.xlsx, sheet Letters']);
  });
});

describe('a catalogue around a list', () => {
  it('has the list as it was, byte for byte, and says how it is understood', async () => {
    const content = workbook(
      ['Papers of the ferry house'],
      ['Was', 'Wann', 'Regal'],
      ['Brief', '14. Mai 1962', 'oben'],
    );
    const from = await folderWith({ 'My list.XLSX': content });
    const folder = join(await folderWith(), 'quill');
    const { files, tables, findings } = await beginFrom(folder, join(from, 'My list.XLSX'), start);
    expect(files).toEqual([join(folder, 'collection.yaml'), join(folder, 'list.xlsx')]);
    expect(Buffer.compare(readFileSync(join(folder, 'list.xlsx')), content)).toBe(0);
    expect(parse(readFileSync(join(folder, 'collection.yaml'), 'utf8')).title).toBe('Quill family papers');
    expect(tables).toEqual([
      {
        file: 'list.xlsx',
        headingRow: 2,
        headings: [
          { heading: 'Was', column: 'title' },
          { heading: 'Wann', column: 'date' },
          { heading: 'Regal' },
        ],
        things: 1,
        first: [
          {
            row: 3,
            cells: [
              ['title', 'Brief'],
              ['date', '1962 May 14 (written 14. Mai 1962)'],
              ['notes: Regal', 'oben'],
            ],
            changed: ['date'],
          },
        ],
      },
    ]);
    expect(findings.map(({ rule }) => rule)).toEqual(['list.above-headings', 'list.column-unknown']);
    expect([...sayPreview(tables)]).toEqual([
      'list.xlsx, headings in row 2, 1 thing',
      '  Was    title',
      '  Wann   date',
      '  Regal  (kept in the notes)',
      '',
      'row 3  Brief | oben',
      '  date: 1962 May 14 (written 14. Mai 1962)',
      '',
    ]);
    // The preview of the new folder is the same.
    expect(await previewCatalogue(folder)).toEqual({ tables, findings });
  });

  it.each([
    [50, 50, []],
    [51, 5, ['and 46 more rows']],
  ])('of %i things shows %i', async (count, shown, more) => {
    const rows = Array.from({ length: count }, (_, at) => `Letter ${at + 1},1913,\n`).join('');
    const { tables } = await previewCatalogue(await folderWith({ 'list.csv': `Title,date,people\n${rows}` }));
    const lines = [...sayPreview(tables)];
    expect(lines[1]).toBe('  The headings mean what they say.');
    expect(lines.filter((line) => /^row \d+ {2}Letter \d+ \| 1913$/.test(line))).toHaveLength(shown);
    expect(lines.filter((line) => line.includes('more'))).toEqual(more);
  });

  it('tells what is understood otherwise than it is written, and nothing else, below its row', async () => {
    const list =
      'title,quantity,people,Shelf\nLetters,lots,Ada Quill;Nils Heron,top\nMaps,12,Ada Quill,low\n';
    const { tables } = await previewCatalogue(await folderWith({ 'list.csv': list }));
    expect([...sayPreview(tables)].slice(4)).toEqual([
      'row 2  Letters | top',
      '  people: Ada Quill; Nils Heron',
      '  notes: quantity: lots',
      'row 3  Maps | Ada Quill | 12 | low',
      '',
    ]);
  });

  it('is made although something in the list must be put right first', async () => {
    const from = await folderWith({ 'list.csv': 'Shelf;when\ntop;1950\n' });
    const folder = join(await folderWith(), 'quill');
    const { findings } = await beginFrom(folder, join(from, 'list.csv'), start);
    expect(findings.map(({ rule }) => rule)).toContain('list.no-title-column');
    expect(readdirSync(folder).sort()).toEqual(['collection.yaml', 'list.csv']);
  });

  it('is made in place where the list lies there under its name', async () => {
    const folder = await folderWith({ 'list.csv': 'title\na\n' });
    expect((await beginFrom(folder, join(folder, 'list.csv'), start)).files).toEqual([
      join(folder, 'collection.yaml'),
    ]);
  });

  it.each([
    ['a file that is no list', 'list.pdf', '%PDF-1.4', 'begin.no-list'],
    ['a workbook that is none', 'list.xlsx', 'PK\u0003\u0004', 'workbook.broken'],
    ['an empty list', 'list.csv', '', 'list.empty'],
  ])('is not made around %s', async (_, name, content, rule) => {
    const from = await folderWith({ [name]: content });
    const above = await folderWith();
    expect(await rulesOf(beginFrom(join(above, 'quill'), join(from, name), start))).toEqual([rule]);
    expect(readdirSync(above)).toEqual([]);
  });

  it('is not made where there is a list, or none to begin with', async () => {
    const from = await folderWith({ 'mine.csv': 'title\na\n' });
    const folder = await folderWith({ 'list.csv': 'title\nb\n' });
    expect(await rulesOf(beginFrom(folder, join(from, 'mine.csv'), start))).toEqual(['begin.list-there']);
    expect(await rulesOf(beginFrom(folder, join(from, 'none.csv'), start))).toEqual(['catalogue.unreadable']);
    expect(readdirSync(folder)).toEqual(['list.csv']);
  });
});

describe('a catalogue of copies', () => {
  it('has a row for each file, with the date of its camera, marked as such', async () => {
    const exif = { IFD2: { DateTimeOriginal: '2019:07:14 12:00:00' } };
    const folder = await folderWith({
      'copies/ferry_1931.jpg': await picture('jpeg', { exif }),
      'copies/box 2/album, page 3.png': await picture('png'),
      'copies/.hidden': 'x',
    });
    const { files, rows, dated } = await beginWithCopies(folder, join(folder, 'copies'), start);
    expect([files.length, rows, dated]).toEqual([2, 2, 1]);
    const { things, findings } = await loadCatalogue(folder);
    expect(findings).toEqual([]);
    expect(things).toMatchObject([
      { title: 'album, page 3', copies: ['copies/box 2/album, page 3.png'] },
      {
        title: 'ferry 1931',
        copies: ['copies/ferry_1931.jpg'],
        date: { reading: { edtf: '2019-07-14' } },
        note: BY_THE_CAMERA,
      },
    ]);
    expect([things[0]?.date, things[0]?.note]).toEqual([undefined, undefined]);
  });

  it('is refused for copies that lie elsewhere, for none, and where there is a list', async () => {
    const folder = await folderWith({ 'copies/a.txt': 'a', 'empty/.x': '' });
    const other = await folderWith({ 'copies/a.txt': 'a' });
    const rule = (copies: string) => rulesOf(beginWithCopies(folder, copies, start));
    expect(await rule(join(other, 'copies'))).toEqual(['begin.copies-elsewhere']);
    expect(await rule(folder)).toEqual(['begin.copies-elsewhere']);
    expect(await rule(join(folder, 'empty'))).toEqual(['begin.no-copies']);
    expect(await rule(join(folder, 'none'))).toEqual(['begin.no-copies']);
    writeFileSync(join(folder, 'list.csv'), 'title\na\n');
    expect(await rule(join(folder, 'copies'))).toEqual(['begin.list-there']);
    expect(readdirSync(folder).sort()).toEqual(['copies', 'empty', 'list.csv']);
  });
});

describe('the questions of begin', () => {
  const asking = (answers: string[]) => {
    const asked: string[] = [];
    const ask = async (question: string) => {
      asked.push(question);
      return answers.shift() ?? '';
    };
    return { asked, ask };
  };

  it('offer a prefix made from the title, and take an empty answer for it', async () => {
    const { asked, ask } = asking(['Quill family papers', '', 'The Ferry House']);
    const given = await askStart({}, ask, () => 'QFP');
    expect(given).toEqual({ title: 'Quill family papers', prefix: 'QFP', repository: 'The Ferry House' });
    expect(asked[1]).toContain('[QFP]');
  });

  it('are not put where an option has answered, and may be left open', async () => {
    const { asked, ask } = asking([]);
    expect(await askStart({ title: 'T' }, ask, () => undefined)).toEqual({ title: 'T' });
    expect(asked).toHaveLength(2);
  });
});
