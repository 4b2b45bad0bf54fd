import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MergedLists, mergedCsv, mergeLists, sayMerge } from '../../src/compare/index.ts';
import { readList } from '../../src/intake/list.ts';
import { makeWorkbook } from '../intake/make-workbook.ts';
import { someSettings } from '../support/catalogue.ts';
import { times } from '../support/times.ts';
import { csvOf, listIn, listOf } from './lists.ts';

// What is to come out of each merging was worked out by hand.

const merge = (a: string, b: string) => mergeLists(listOf('nora', a), listOf('ellen', b));

const table = ({ headings, rows }: MergedLists) => [headings, ...rows].map((cells) => cells.join('|'));

describe('rows', () => {
  test('those of A in their order, then those only in B', () => {
    const a = 'title,date\nFerry bell,1898\nApple butter,1911\n';
    const b = 'title,date\nCable,1900\nFerry bell,1898\nAnchor,1901\n';
    const merged = merge(a, b);
    expect(table(merged)).toEqual([
      'title|date',
      'Ferry bell|1898',
      'Apple butter|1911',
      'Cable|1900',
      'Anchor|1901',
    ]);
    expect(merged).toMatchObject({ inBoth: 1, onlyInA: 1, onlyInB: 2, conflicts: [], withoutNumber: [] });
  });

  test('columns under whichever heading, in whichever order; those only in B behind', () => {
    const a = 'What,When,Found in\nFerry bell,1898,Trunk\n';
    const b = 'Colour;date;title\nbrown;1898;Ferry bell\ngreen;1900;Cable\n';
    expect(table(merge(a, b))).toEqual([
      'What|When|Found in|Colour',
      'Ferry bell|1898|Trunk|brown',
      'Cable|1900||green',
    ]);
  });

  test('a date written otherwise is the same date', () => {
    const merged = merge('title,date\nLetter,1911-05-02\n', 'title,date\nletter.,2 May 1911\n');
    expect(merged.inBoth).toBe(1);
    expect(table(merged)).toEqual([
      'title|date|Differs',
      'Letter|1911-05-02|title (ellen): letter.\ndate (ellen): 2 May 1911',
    ]);
  });

  test('of several with one title, date and kind, those that no cell speaks against', () => {
    const a = 'title,place\nPhotograph,Applegarth\nPhotograph,Hollin Ferry\n';
    const b = 'title,place\nPhotograph,Overbank\nPhotograph,Hollin Ferry\nPhotograph,\n';
    expect(table(merge(a, b))).toEqual([
      'title|place',
      'Photograph|Applegarth',
      'Photograph|Hollin Ferry',
      'Photograph|Overbank',
    ]);
  });

  test('rows that may be one are kept and named', () => {
    const a = 'title,date\nLetter from Ada on the flood,1913-04-06\nFerry bell,1898\n';
    const b = 'title,date\nLetter from Ada about the flood,1913-04-06\nFerry bell,1899\nCable,1913-04-06\n';
    const { perhapsOne, inBoth } = merge(a, b);
    expect(inBoth).toBe(0);
    expect(perhapsOne.map((pair) => [pair.a.row, pair.b.row])).toEqual([
      [2, 4],
      [3, 5],
    ]);
  });
});

describe('cells', () => {
  test('a blank is filled; where both speak, that of A stays and that of B is kept beside', () => {
    const merged = merge(
      'title,date,kind,size,condition\nLetter,1911,letter,,torn\n',
      'title,date,kind,size,condition\nLetter,1911,letter,20 × 25 cm,stained\n',
    );
    expect(table(merged)).toEqual([
      'title|date|kind|size|condition|Differs',
      'Letter|1911|letter|20 × 25 cm|torn|condition (ellen): stained',
    ]);
    expect(merged.conflicts).toEqual([
      { row: 2, title: 'Letter', cells: [{ column: 'condition', kept: 'torn', other: 'stained' }] },
    ]);
  });

  test('what an earlier merging found stays', () => {
    const merged = merge(
      'title,date,size,Differs\nLetter,1911,1 cm,size (tom): 2 cm\n',
      'title,date,size\nLetter,1911,3 cm\n',
    );
    expect(table(merged)).toEqual([
      'title|date|size|Differs',
      'Letter|1911|1 cm|size (tom): 2 cm\nsize (ellen): 3 cm',
    ]);
  });

  test('cells beyond the headings are kept, under a heading of their own', () => {
    expect(table(merge('title\nBell\n', 'title,date\nCable,1900,brown\n'))).toEqual([
      'title|date|Column C',
      'Bell||',
      'Cable|1900|brown',
    ]);
  });

  test('a merged list is read again, whatever is in its cells', () => {
    const a = csvOf([
      ['title', 'note'],
      ['=1+1', ' "a", b;\nc\td '],
    ]);
    const merged = merge(a, csvOf([['title'], ['Æbler; pærer']]));
    const { things } = readList(mergedCsv(merged, 'both.csv'), 'both.csv');
    expect(things.map(({ title }) => title)).toEqual(['=1+1', 'Æbler; pærer']);
    expect(things[0]?.note).toBe('"a", b;\nc\td');
  });
});

describe('numbers', () => {
  test('the same number is the same thing, though its title is mended', () => {
    const merged = merge(
      'number,title,date\n7,Lettre from Ada Quill,1911-05-02\n',
      'number,title,date\n7,Letter from Ada Quill,1911-05-02\n',
    );
    expect(merged.inBoth).toBe(1);
    expect(merged.rows[0]?.at(-1)).toBe('title (ellen): Letter from Ada Quill');
  });

  test('a number given to two things: both rows stay, and that of B loses it', () => {
    const merged = merge(
      'number,title\n1,Letter from Ada\n2,Ferry bell\n',
      'number,title\n1,Letter from Ada\n2,Account book of the orchard\n',
    );
    expect(table(merged)).toEqual([
      'number|title|Differs',
      '1|Letter from Ada|',
      '2|Ferry bell|',
      '|Account book of the orchard|number (ellen): 2',
    ]);
    expect(merged.withoutNumber).toEqual([{ row: 4, title: 'Account book of the orchard', number: '2' }]);
    expect(merged.conflicts).toEqual([]);
  });

  test('two who count together mean two things by two numbers', () => {
    const a = 'number,title,date\n1,Ferry bell,1898\n2,Postcard,1911\n';
    const b = 'number,title,date\n1,Ferry bell,1898\n3,Postcard,1911\n';
    expect(merge(a, b)).toMatchObject({ inBoth: 1, onlyInA: 1, onlyInB: 1 });
  });
});

test('what is said of it', () => {
  const a = 'number,title,date,size,copy\n1,Letter,1911,1 cm,\n2,Bell,1898,,\n';
  const b = 'number,title,date,size,copy\n1,Letter,1911,2 cm,\n2,Orchard map,1900,,copies/map.jpg\n';
  expect([...sayMerge(merge(a, b), 'both.csv', ['nora', 'ellen'])]).toEqual([
    'both.csv: 3 rows, 1 in both lists, 1 only in nora, 1 only in ellen.',
    '1 row on which they do not agree: what nora says was kept, and what ellen says stands in the column “Differs”. Decide on each, then empty that cell.',
    '  row 2  “Letter”',
    '    size: “1 cm” in nora, “2 cm” in ellen',
    '1 row only in ellen with a number that another thing has in nora: they have no number now, and the old one stands in the column “Differs”. If it is written on the thing, correct it there too.',
    '  row 4  “Orchard map” (was 2)',
    '1 row names digital copies that only ellen has: bring those files over from there, and see that none takes the place of another of the same name.',
  ]);
});

describe('workbooks', () => {
  // Days as Excel counts them: 1 January 1900 is 1 (ECMA-376 Part 1, 18.17.4.1), so that 2 May 1911 is 4140.
  const MAY = { date: 4140, as: 'day' } as const;
  const nora = makeWorkbook([
    {
      name: 'Letters',
      rows: [
        ['The papers of the ferry'],
        ['number', 'title', 'date', 'for us only'],
        [1, 'Letter from Ada', MAY, 'Not to Tom'],
        [2, 'Letter from Bea', 'undated'],
        [null, 'Total', null],
      ],
      comments: { B3: 'Torn at the fold', D4: 'Ask Nils' },
    },
    {
      name: 'Maps',
      rows: [
        ['What', 'Scale'],
        ['Map of Tollbridge', '1:500'],
      ],
    },
    { name: 'Shopping', rows: [['Twine'], ['Boxes']] },
  ]);
  const ellen = csvOf([
    ['number', 'title', 'date', 'size'],
    ['1', 'Letter from Ada', '2 May 1911', 'A5'],
    ['3', 'Map of Nordvik', '1920', ''],
  ]);

  test('every sheet, row and column of it, with comments and the series that a sheet is', () => {
    const merged = mergeLists(listIn('nora', 'list.xlsx', nora), listOf('ellen', ellen));
    expect(table(merged)).toEqual([
      'number|title|date|for us only|Comment on title|series|Scale|size|Differs',
      '1|Letter from Ada|1911-05-02|Not to Tom|Torn at the fold|Letters||A5|date (ellen): 2 May 1911',
      '2|Letter from Bea|undated|Ask Nils||Letters|||',
      '|Map of Tollbridge||||Maps|1:500||',
      '3|Map of Nordvik|1920||||||',
    ]);
    expect(merged).toMatchObject({ inBoth: 1, onlyInA: 2, onlyInB: 1 });
    expect(merged.leftOut).toEqual([
      'nora, list.xlsx: The sheet “Shopping” has no heading for the title, so its 2 rows were not read.',
      'nora, list.xlsx, sheet Letters, row 1, above the headings: “The papers of the ferry”',
      'nora, list.xlsx, sheet Letters, row 5, a sum: “Total”',
    ]);
    expect([...sayMerge(merged, 'both.csv', ['nora', 'ellen'])]).toContain(
      'Not taken over, being no row of a list:',
    );
  });

  test('the merged list says of each thing what the workbook said, to the family alone what was for it', () => {
    const settings = someSettings({}).list;
    const merged = mergeLists(listIn('nora', 'list.xlsx', nora), listOf('ellen', csvOf([['title']])));
    const { things } = readList(mergedCsv(merged, 'both.csv'), 'both.csv', {}, settings);
    const plain = ({ row: _, date, ...thing }: (typeof things)[number]) => ({
      ...thing,
      date: date?.reading,
    });
    const own = readList(nora, 'list.xlsx', {}, settings).things;
    expect(own).toHaveLength(3);
    expect(things.map(plain)).toEqual(own.map(plain));
  });

  test.each(['ferry-house', 'orchard-1904'])('%s in XLSX and in ODS is one list', (name) => {
    // The two were saved by another program from one file (tests/intake/zoo/README.md).
    const [xlsx, ods] = ['xlsx', 'ods'].map((form) =>
      listIn(form, `${name}.${form}`, readFileSync(`tests/intake/zoo/${name}.${form}`)),
    );
    if (xlsx === undefined || ods === undefined) throw new Error('Two lists were read.');
    expect(xlsx.rows.length).toBeGreaterThan(1);
    const merged = mergeLists(xlsx, ods);
    expect(merged).toMatchObject({ inBoth: xlsx.rows.length, onlyInA: 0, onlyInB: 0, conflicts: [] });
  });

  test('what collection.yaml says of a heading holds in the merged list by its own words', () => {
    const b = csvOf([
      ['title', 'Wer', 'Kind'],
      ['Bell', 'Ada Quill', 'brass'],
    ]);
    const columns = { Wer: 'creator', Kind: 'kept' };
    const named = listIn('ellen', 'list.csv', Buffer.from(b), { columns });
    const merged = mergeLists(listOf('nora', csvOf([['title'], ['Cable']])), named);
    expect(merged.headings).toEqual(['title', 'creator', 'Also in the list: Kind']);
    const [, bell] = readList(mergedCsv(merged, 'x.csv'), 'x.csv').things;
    expect(bell).toMatchObject({ creators: ['Ada Quill'], extra: [{ text: 'brass' }] });
    expect(bell?.kind).toBeUndefined();
  });

  test('no heading stands twice, and what is for the family stays so', () => {
    // One for the family in each list, and a second in B under a heading that A has too.
    const a = csvOf([
      ['title', 'When', 'For us only'],
      ['Bell', '1911', 'Psst'],
    ]);
    const b = csvOf([
      ['title', 'date', 'When', 'family note', 'For us only'],
      ['Cable', '1900', 'spring', 'Hush', 'Hush again'],
    ]);
    const merged = mergeLists(listOf('nora', a), listOf('ellen', b));
    expect(new Set(merged.headings).size).toBe(merged.headings.length);
    const { things, findings } = readList(mergedCsv(merged, 'x.csv'), 'x.csv');
    expect(findings.filter(({ weight }) => weight === 'must')).toEqual([]);
    expect(things[1]).toMatchObject({ date: { written: '1900' }, familyNote: 'Hush\nHush again' });
    expect(things[0]?.familyNote).toBe('Psst');
    expect(things[1]?.extra.map(({ text }) => text)).toEqual(['spring']);
  });
});

describe('nothing is lost', () => {
  // Few words, so that rows of the two lists often are of one thing.
  const cell = fc.oneof(
    {
      weight: 4,
      arbitrary: fc.constantFrom('', 'Ferry bell', 'Letter', '1911', '1911-05-02', 'Ada Quill', '7', '8'),
    },
    { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom(...' ,;"\n\tæ=x\''), maxLength: 5 }) },
  );
  const TITLES = ['Ferry bell', 'Letter', 'Letter from Ada', 'Anchor'];
  const heads = ['number', 'date', 'kind', 'people', 'Found in', 'Colour', 'Differs', 'note'];
  const list = fc
    .tuple(
      fc.shuffledSubarray(heads),
      fc.array(fc.array(cell, { minLength: 9, maxLength: 9 }), { maxLength: 8 }),
    )
    .map(([some, rows]) => {
      const headings = ['title', ...some];
      const seen = new Set<string>();
      const at = headings.indexOf('number');
      return [
        headings,
        ...rows.map((cells) => {
          const row = headings.map((_, index) => cells[index] ?? '');
          row[0] = TITLES[(row[0]?.length ?? 0) % TITLES.length] ?? '';
          // A list in which a number stands twice is refused before it is merged.
          if (at > 0 && seen.has(row[at]?.trim() ?? '')) row[at] = '';
          if (at > 0) seen.add(row[at]?.trim() ?? '');
          return row;
        }),
      ];
    });

  test('every cell of both lists is in a row of the merged one, and no row is there twice', () => {
    let joined = 0;
    fc.assert(
      fc.property(list, list, (a, b) => {
        const merged = merge(csvOf(a), csvOf(b));
        joined += merged.inBoth;
        // Read by another program's reader, so that this one does not vouch for itself.
        const records: string[][] = parse(Buffer.from(mergedCsv(merged, 'x')), { bom: true });
        const [headings = [], ...rows] = records;
        expect(rows).toHaveLength(a.length - 1 + b.length - 1 - merged.inBoth);
        const differs = headings.indexOf('Differs');
        // A cell of B stands below its heading, or beside, with the heading before it; a cell of A stays in its place.
        const holds = (row: readonly string[], list: readonly string[][], cells: readonly string[]) =>
          cells.every((cell, at) => {
            const heading = list[0]?.[at] ?? '';
            const text = cell.trim();
            const there = row[headings.indexOf(heading)]?.trim() ?? '';
            if (text === '' || there === text) return true;
            const beside = row[differs] ?? '';
            if (heading === 'Differs') return beside.includes(text);
            return list === b && beside.includes(`${heading} (ellen): ${text}`);
          });
        for (const list of [a, b])
          for (const cells of list.slice(1))
            expect([cells, rows.some((row) => holds(row, list, cells))]).toEqual([cells, true]);
        // Those of A stay where they were, word for word but for blanks that were filled.
        a.slice(1).forEach((cells, row) => {
          expect(holds(rows[row] ?? [], a, cells)).toBe(true);
        });
      }),
      { numRuns: times(400) },
    );
    expect(joined).toBeGreaterThan(times(50));
  });

  test('a list merged with itself is that list', () => {
    fc.assert(
      fc.property(list, (a) => {
        const merged = merge(csvOf(a), csvOf(a));
        expect([merged.headings, ...merged.rows]).toEqual(a);
      }),
      { numRuns: times(100) },
    );
  });
});
