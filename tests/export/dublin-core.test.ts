import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Component } from '../../src/catalogue/component.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { dublinCore } from '../../src/export/dublin-core/index.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { aidWith, recordsOf, tableOf, termsOf } from '../support/dublin-core-records.ts';

const copy = [{ file: 'copies/ferry 1.jpg', origin: 'derived' as const }];
const levels = aidWith({
  id: 'QF',
  children: [
    {
      ...{ id: 'QF-1', level: 'series' },
      children: [
        {
          id: 'QF-1-1',
          level: 'file',
          children: [{ id: 'QF-1-1-1' }, { id: 'QF-1-1-2', digitalCopies: copy }],
        },
        { id: 'QF-1-2', level: 'otherlevel', otherLevel: 'bundle' },
      ],
    },
    { id: 'QF-2', level: 'series', digitalCopies: copy },
  ],
});

describe('which units get a record', () => {
  test.each([
    [undefined, ['QF', 'QF-1-1', 'QF-1-1-2', 'QF-2']],
    ['collection' as const, ['QF', 'QF-1-2']],
    ['series' as const, ['QF', 'QF-1', 'QF-1-2', 'QF-2']],
    ['file' as const, ['QF', 'QF-1', 'QF-1-1', 'QF-1-2', 'QF-2']],
    ['item' as const, ['QF', 'QF-1', 'QF-1-1', 'QF-1-1-1', 'QF-1-1-2', 'QF-1-2', 'QF-2']],
  ])('down to %s', (downTo, ids) => {
    expect([...recordsOf(levels, downTo).keys()]).toEqual(ids.map((id) => `${id}.xml`));
    expect(tableOf(levels, downTo).length).toBe(ids.length);
    expect(termsOf(levels, downTo ?? 'item').length).toBe(downTo === undefined ? 7 : ids.length);
  });

  it('tells each by its identifier and its parent', () => {
    const aid = aidWith({
      id: 'a',
      referenceCode: 'QF',
      children: [{ id: 'b', children: [{ id: 'c', referenceCode: 'QF/1/1' }] }],
    });
    const records = [...recordsOf(aid, 'item').values()];
    expect(records.map(({ identifier, relation }) => [identifier, relation])).toEqual([
      [['QF'], undefined],
      [['b'], ['QF']],
      [['QF/1/1'], ['b']],
    ]);
    expect(termsOf(aid).map(({ isPartOf }) => isPartOf)).toEqual([undefined, ['QF'], ['b']]);
  });

  it('gives each a file name that is safe on any system, whatever the ids', () => {
    const ids = ['A', 'a', 'con', 'A-2', `x${'y'.repeat(300)}`, 'nul.txt', '_'];
    const aid = aidWith({ id: 'QF', children: ids.map((id) => ({ id })) });
    const names = [...recordsOf(aid, 'item').keys()];
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(ids.length + 1);
    for (const name of names) expect(name).toMatch(/^[A-Za-z0-9._-]{1,120}\.xml$/);
    // Names that Windows keeps for devices, whatever comes behind a dot (common knowledge of that system).
    expect(names.filter((name) => /^(?:con|nul)\./i.test(name))).toEqual([]);
  });

  it('takes for a record what only a unit above says, where that holds for all in it', () => {
    const aid = aidWith({
      ...{ id: 'QF', repository: { name: 'Quill family' }, useConditions: 'Ask.', abstract: 'All of it.' },
      ...{
        accessConditions: { statement: 'Closed.', restricted: true, until: '2040' },
        creators: [{ agent: 'ada' }],
      },
      children: [
        {
          ...{ id: 'b', accessConditions: { statement: 'Open.', restricted: false } },
          children: [{ id: 'c' }],
        },
      ],
    });
    const [, , last] = recordsOf(aid, 'item').values();
    expect(last).toMatchObject({ publisher: ['Quill family'], rights: ['Open.', 'Ask.'] });
    expect(last).not.toHaveProperty('description');
    expect(last).not.toHaveProperty('creator');
    expect(recordsOf(aid).get('QF.xml')?.rights).toEqual(['Closed. End of the restriction: 2040.', 'Ask.']);
  });
});

it('names no copy of what is restricted, nor of what lies in it', () => {
  const closed = { accessConditions: { statement: 'Closed.', restricted: true } };
  const aid = aidWith({
    id: 'QF',
    children: [
      { id: 'a', digitalCopies: copy },
      { id: 'b', digitalCopies: copy, ...closed },
      { id: 'c', level: 'series', ...closed, children: [{ id: 'd', digitalCopies: copy }] },
    ],
  });
  const naming = [...recordsOf(aid)].filter(([, record]) => JSON.stringify(record).includes('ferry'));
  expect(naming.map(([name]) => name)).toEqual(['a.xml']);
  expect(JSON.stringify(termsOf(aid)).match(/ferry/g)).toHaveLength(1);
});

describe('dates', () => {
  const date = (expression: string, edtf?: string, type: 'inclusive' | 'bulk' = 'inclusive') => ({
    ...{ expression, type },
    ...(edtf !== undefined && { edtf }),
  });
  // W3C Note "Date and Time Formats"; DCMI Period Encoding Scheme (from memory); EAD 2002, unitdate/@normal.
  test.each([
    ['1962 May 14', '1962-05-14', ['1962-05-14'], ['W3CDTF: 1962-05-14']],
    ['Whitsun 1962', '1962-06-10', ['1962-06-10', 'Whitsun 1962'], ['W3CDTF: 1962-06-10', 'Whitsun 1962']],
    [
      '1958-1963',
      '1958/1963',
      ['1958/1963'],
      ['Period: name=1958-1963; start=1958; end=1963; scheme=W3C-DTF;'],
    ],
    [
      'circa 1950',
      '1950~',
      ['1950', 'circa 1950'],
      ['Period: name=circa 1950; start=1950; end=1950; scheme=W3C-DTF;'],
    ],
    ['1950s', '195X', ['1950/1959', '1950s'], ['Period: name=1950s; start=1950; end=1959; scheme=W3C-DTF;']],
    ['since 1962', '1962/..', ['since 1962'], ['Period: name=since 1962; start=1962-01-01; scheme=W3C-DTF;']],
    [
      'a; b=c\\d',
      '1950?',
      ['1950', 'a; b=c\\d'],
      ['Period: name=a\\; b\\=c\\\\d; start=1950; end=1950; scheme=W3C-DTF;'],
    ],
    ['the year of the flood', undefined, ['the year of the flood'], ['the year of the flood']],
    ['undated', undefined, undefined, undefined],
    [
      'the year nought',
      '0000',
      ['0000', 'the year nought'],
      ['Period: name=the year nought; start=0000; end=0000; scheme=W3C-DTF;'],
    ],
    ['long ago', '-0009', ['long ago'], ['long ago']],
  ])('%s, %s', (expression, edtf, simple, created) => {
    const aid = aidWith({ id: 'QF', children: [{ id: 'b', dates: [date(expression, edtf)] }] });
    expect(recordsOf(aid, 'item').get('b.xml')?.date).toEqual(simple);
    expect(termsOf(aid)[1]?.created).toEqual(created);
    expect(termsOf(aid)[1]?.temporal).toBeUndefined();
  });

  it('of the collection are its coverage as well; bulk dates are said to be such (DACS 2.4.10)', () => {
    const dates = [date('1785-1960', '1785/1960'), date('bulk 1916-1958', '1916/1958', 'bulk')];
    const aid = aidWith({ id: 'QF', dates });
    expect(recordsOf(aid).get('QF.xml')).toMatchObject({
      date: ['1785/1960', 'bulk 1916-1958'],
      coverage: ['1785-1960'],
    });
    expect(termsOf(aid)[0]?.temporal).toEqual([
      'Period: name=1785-1960; start=1785; end=1960; scheme=W3C-DTF;',
    ]);
  });
});

describe('agents', () => {
  const people = (role?: string) => [{ agent: 'ada', ...(role !== undefined && { role }) }];
  // DCMI terms: a contributor is responsible for making the resource; MARC relators depicted and copyright holder.
  test.each([
    [undefined, 'subject', 'subject'],
    ['depicted', 'subject', 'subject'],
    ['photographer', 'contributor', 'contributor'],
    ['copyright holder', 'rights', 'rightsHolder'],
  ])('named as %s', (role, simple, qualified) => {
    const aid = aidWith({ id: 'QF', people: people(role) });
    const name = 'Quill, Ada "Addie", 1902-1988';
    const value = simple === 'rights' ? `Rights holder: ${name}` : name;
    const told = (record: Record<string, string[]> | undefined) =>
      Object.entries(record ?? {}).filter(([key]) =>
        /^(?:subject|contributor|rights|rightsHolder|creator)$/.test(key),
      );
    expect(told(recordsOf(aid).get('QF.xml'))).toEqual([[simple, [value]]]);
    expect(told(termsOf(aid)[0])).toEqual([[qualified, [name]]]);
  });

  it('that are not known are passed over', () => {
    expect(
      recordsOf(aidWith({ id: 'QF', creators: [{ agent: 'nobody' }] })).get('QF.xml'),
    ).not.toHaveProperty('creator');
  });
});

it('tells a thing that was digital from the start by its file, and a copy as another form of the thing', () => {
  const born = { file: 'copies/a b.tif', origin: 'borndigital' as const, mediaType: 'image/tiff' };
  const aid = aidWith({ id: 'QF', digitalCopies: [...copy, born] });
  expect(recordsOf(aid).get('QF.xml')).toMatchObject({
    ...{ relation: ['copies/ferry%201.jpg'], identifier: ['QF', 'copies/a%20b.tif'], format: ['image/tiff'] },
  });
  expect(termsOf(aid)[0]).toMatchObject({
    ...{
      hasFormat: ['URI: copies/ferry%201.jpg'],
      identifier: ['QF', 'URI: copies/a%20b.tif'],
      format: ['IMT: image/tiff'],
    },
  });
});

it('names the vocabulary of a term where DCMI terms have a scheme for it', () => {
  const accessPoints = [
    { type: 'subject' as const, term: 'Ferries', source: 'lcsh' },
    { type: 'subject' as const, term: 'Floods', source: 'constructor' },
    { type: 'place' as const, term: 'Norway', source: 'tgn' },
  ];
  expect(termsOf(aidWith({ id: 'QF', accessPoints }))[0]).toMatchObject({
    ...{ subject: ['LCSH: Ferries', 'Floods'], spatial: ['TGN: Norway'] },
  });
});

describe('down to which level', () => {
  it('is for the recipient to say', () => {
    const count = (aid: FindingAid) => [...dublinCore(aid)].filter(({ xml }) => xml).length;
    const units = (unit: Component): number =>
      1 + unit.children.map(units).reduce((sum, part) => sum + part, 0);
    fc.assert(
      fc.property(arbitraryFindingAid({ largest: 6 }), ({ recipient: _, ...aid }) => {
        const wanting = {
          name: 'An archive',
          languageCodes: 'iso639-2b',
          separator: '|',
          recordsDownTo: 'otherlevel',
        } as const;
        expect(count({ ...aid, recipient: wanting })).toBe(units(aid.collection));
        expect(count(aid)).toBeLessThanOrEqual(units(aid.collection));
      }),
      { numRuns: 50 },
    );
  });
});
