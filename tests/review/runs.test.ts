import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { RUN_KINDS } from '../../src/review/run-kinds.ts';
import { reviewRuns } from '../../src/review/runs.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

type Row = [title: string, date: string | undefined, over?: Partial<Thing>];

function runsOf(kind: string | undefined, rows: readonly Row[], settings: Record<string, unknown> = {}) {
  const things = rows.map(([title, date, over = {}], index) =>
    someThing({
      ...{ row: index + 2, title },
      ...(kind !== undefined && { kind }),
      ...(date !== undefined && { date: dated(date) }),
      ...over,
    }),
  );
  const catalogue = someCatalogue(settings, things);
  return reviewRuns(catalogue, arrange(catalogue, '2026-01-01'));
}

const said = (findings: readonly { found: string }[]) => findings.map(({ found }) => found);
const years = (...all: number[]) => all.map(String);
const by = (name: string): Partial<Thing> => ({ creators: [name] });

describe('runs by the year', () => {
  test('diaries of one person, whatever their titles, with bundles that fill the years', () => {
    const rows: Row[] = [
      ['Diary', '1908', by('Ada Quill')],
      ["Ada's diary", '1909', by('Ada')],
      ['Diary, the year of the new barn', '1910', by('Ada Quill')],
      ['Diaries', '1912-1913', by('Ada Quill')],
      ['Diary', '1915', by('Ada Quill')],
      ['Diary', '1916', by('Ada Quill')],
      // Somebody else's fill no gap of hers.
      ['Diary', '1911', by('Hester Quill')],
    ];
    const findings = runsOf('diary', rows, { people: [{ name: 'Ada Quill', also: ['Ada'] }] });
    expect(findings).toMatchObject([
      { rule: 'runs.incomplete', weight: 'consider', place: { file: 'list.csv', row: 2, column: 'date' } },
    ]);
    expect(said(findings)).toEqual([
      'The diaries of Ada Quill seem to come one a year, from 1908 to 1916. Missing: 1911, 1914.',
    ]);
  });

  test('books of one title, one of them twice, the other by another hand', () => {
    const rows = years(1919, 1920, 1921, 1923, 1924).map(
      (year): Row => [`Ferry account book, ${year}`, year, by('Sam')],
    );
    const copy: Row = ['Ferry account book, 1921, fair copy', '1921', by('Mabel')];
    const bundle: Row = ['Ferry account books, the thin ones', '1925-1930', by('Sam')];
    expect(said(runsOf('account book', [...rows, copy, bundle]))).toEqual([
      'The things called “Ferry account book” seem to come one a year, from 1919 to 1930. Missing: 1922. ' +
        'There more than once: 1921 (rows 4, 7).',
    ]);
  });

  test('a kind that the program does not know, with the year in the title alone', () => {
    const rows = years(1931, 1932, 1934, 1935).map((year): Row => [`Farm almanac for ${year}`, undefined]);
    expect(said(runsOf('almanac', rows))[0]).toContain('Missing: 1933.');
    expect(said(runsOf(undefined, rows))[0]).toContain('“Farm almanac”');
  });

  test('every second year', () => {
    const rows = years(1900, 1902, 1906, 1908, 1910).map((year): Row => ['Programme of the regatta', year]);
    expect(said(runsOf('programme', rows))).toEqual([
      'The things called “Programme of the regatta” seem to come one every 2 years, from 1900 to 1910. Missing: 1904.',
    ]);
  });

  test('school reports of one child, by school years and by months', () => {
    const of = { people: ['Ruth Quill'] };
    const split = years(1928, 1929, 1931, 1932).map(
      (year): Row => ['Report', `${year}-${Number(year) + 1}`, of],
    );
    expect(said(runsOf('school report', split))).toEqual([
      'The school reports that name Ruth Quill first seem to come one a year, from 1928-1929 to 1932-1933. Missing: 1930-1931.',
    ]);
    const june = years(1928, 1929, 1931, 1932).map((year): Row => ['Report', `${year}-06`, of]);
    expect(said(runsOf('school report', june))[0]).toContain('Missing: 1930.');
    // Two reports in one year are two terms.
    expect(runsOf('school report', [...june, ['Report', '1930-06', of], ['Report', '1931-12', of]])).toEqual(
      [],
    );
  });

  test('a travel diary in the missing year speaks against a gap', () => {
    const rows = years(1908, 1909, 1911, 1912).map((year): Row => ['Diary', year, by('Ada Quill')]);
    expect(runsOf('diary', rows)).toHaveLength(1);
    expect(runsOf('diary', [...rows, ['Diary of the journey', 'summer 1910', by('Ada Quill')]])).toEqual([]);
  });
});

describe('runs by the month and by the number', () => {
  test('a magazine by the month', () => {
    const months = ['1931-11', '1931-12', '1932-01', '1932-03', '1932-04'];
    expect(
      said(
        runsOf(
          'magazine',
          months.map((month): Row => ['Orchard Monthly', month]),
        ),
      ),
    ).toEqual([
      'The things called “Orchard Monthly” seem to come one a month, from 1931 November to 1932 April. Missing: 1932 February.',
    ]);
  });

  test.each([
    ['magazine', (n: number) => `The Ferryman, no. ${n}`],
    ['magazine', (n: number) => `The Ferryman no ${n}, with a picture`],
    ['book', (n: number) => `History of the river, vol. ${['', 'I', 'II', 'III', 'IV', 'V', 'VI'][n]}`],
    ['tape', (n: number) => `Tape ${n}`],
    ['letter', (n: number) => `Letter no. ${n} from Samuel`],
    [undefined, (n: number) => `Sheet music #${n}`],
  ])('%s by the number', (kind, title) => {
    const findings = runsOf(
      kind,
      [1, 2, 3, 5, 6].map((n): Row => [title(n), undefined]),
    );
    expect(said(findings)).toEqual([
      expect.stringMatching(/be numbered, from no\. 1 to no\. 6\. Missing: no\. 4\.$/),
    ]);
    expect(findings).toMatchObject([{ place: { column: 'title' } }]);
  });

  test('whoever numbers begins with 1', () => {
    const rows = [2, 3, 4, 5].map((n): Row => [`Notebook ${n}`, undefined]);
    expect(said(runsOf('notebook', rows))[0]).toContain('Missing: no. 1.');
    expect(runsOf('notebook', [...rows, ['Notebook 1', undefined]])).toEqual([]);
  });

  test('numbers within a volume are a run of that volume', () => {
    const numbers = [1, 2, 4, 5];
    const rows = [3, 4].flatMap((volume) =>
      numbers.map((n): Row => [`Ferryman, vol. ${volume}, no. ${n}`, undefined]),
    );
    expect(said(runsOf('magazine', rows))).toHaveLength(2);
  });

  test('what is numbered is not missed by its year as well', () => {
    const rows = years(1908, 1909, 1911, 1912).map((year, n): Row => [`Minute book no. ${n + 1}`, year]);
    expect(runsOf('minutes', rows)).toEqual([]);
  });
});

describe('what is no run', () => {
  const regular = years(1908, 1909, 1911, 1912, 1913);

  test.each(['letter', 'photograph', 'postcard', 'receipt', 'press cutting', 'recipe', 'certificate'])(
    '%s by the year',
    (kind) => {
      expect(
        runsOf(
          kind,
          regular.map((year): Row => ['From Edmund', year, by('Edmund Quill')]),
        ),
      ).toEqual([]);
      expect(
        runsOf(
          'account book',
          regular.map((year): Row => ['From Edmund', year]),
        ),
      ).toHaveLength(1);
    },
  );

  test.each([
    ['numbers as they come', [76518, 81002, 90417, 12, 31417]],
    ['years of which hardly any follow each other', [1901, 1907, 1919, 1926, 1950]],
  ])('%s', (_, numbers) => {
    expect(
      runsOf(
        'newspaper',
        numbers.map((n): Row => [`Ticket no. ${n}`, undefined]),
      ),
    ).toEqual([]);
    expect(
      runsOf(
        'account book',
        numbers.map((n): Row => [`Book ${n}`, `${n}`]),
      ),
    ).toEqual([]);
  });

  test('what two people kept under one title is two runs', () => {
    const rows = [
      ...years(1908, 1909, 1911, 1912).map((year): Row => ['Pocket book', year, by('Ada Quill')]),
      ...years(1910, 1911, 1912, 1913).map((year): Row => ['Pocket book', year, by('Hester Quill')]),
    ];
    expect(said(runsOf('account book', rows))).toEqual([
      expect.stringContaining('from 1908 to 1912. Missing: 1910.'),
    ]);
  });

  test('a complete run', () => {
    expect(
      runsOf(
        'diary',
        years(1908, 1909, 1910, 1911).map((year): Row => ['Diary', year]),
      ),
    ).toEqual([]);
  });

  test.each(['Letters sent', 'Correspondence', 'Hollin Ferry Society', 'Leter from Edmund'])(
    'without a kind, or with one that is mistyped: %s',
    (title) => {
      const rows = regular.map((year): Row => [title, year]);
      expect(runsOf(undefined, rows)).toEqual([]);
      expect(runsOf('leter', rows)).toEqual([]);
    },
  );

  test.each(['Minutes', 'Orchard Bulletin', 'Diary of Ada'])(
    'without a kind that says it, the title may: %s',
    (title) => {
      expect(
        runsOf(
          undefined,
          regular.map((year): Row => [title, year]),
        ),
      ).toHaveLength(1);
    },
  );

  test('numbers and volumes of nobody knows what', () => {
    const rows = [1, 2, 4, 5].map((n): Row => [`Volume 3, number ${n}`, undefined]);
    expect(runsOf(undefined, rows)).toEqual([]);
    expect(said(runsOf('magazine', rows))[0]).toContain('called “Volume 3” seem to be numbered');
  });

  test('a number that looks like a year is none', () => {
    const rows = [1908, 1909, 1911, 1912].map((n): Row => [`About the ferry, no. ${n}`, undefined]);
    expect(runsOf('yearbook', rows).map(({ found }) => found)).toEqual([
      expect.stringContaining('Missing: no. 1910.'),
    ]);
    // School reports are not counted by numbers.
    expect(
      runsOf(
        'school report',
        rows.map(([title]): Row => [title, undefined, { people: ['Ruth'] }]),
      ),
    ).toEqual([]);
  });
});

test('every row of the table is a kind', () => {
  const kinds = KINDS.map(({ one }) => one);
  expect(RUN_KINDS.filter(({ kind }) => !kinds.includes(kind))).toEqual([]);
});

describe('a work of few volumes', () => {
  test.each([
    ['vol. %', 'no. 3'],
    ['volume %', 'no. 3'],
  ])('three, with one missing (%s)', (written, missing) => {
    const rows = ['1', '2', '4'].map(
      (n): Row => [`History of the river, ${written.replace('%', n)}`, undefined],
    );
    for (const kind of ['book', undefined])
      expect(said(runsOf(kind, rows))).toEqual([expect.stringContaining(`Missing: ${missing}.`)]);
  });

  test('three reels or letters with their numbers are none yet', () => {
    const rows = ['1', '2', '4'].map((n): Row => [`The regatta, no. ${n}`, undefined]);
    expect(runsOf('film', rows)).toEqual([]);
  });

  test('volumes of two works are no run together', () => {
    const rows: Row[] = [
      ['History of the river, vol. 1', undefined],
      ['History of the river, vol. 2', undefined],
      ['History of the orchard, vol. 4', undefined],
    ];
    expect(runsOf('book', rows)).toEqual([]);
  });
});
