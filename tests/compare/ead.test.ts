import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import {
  compareFindingAids,
  inOneForm,
  isEmpty,
  type ReadFindingAid,
  readFindingAid,
  sayAs,
  sayComparison,
} from '../../src/compare/index.ts';
import { FORMATS } from '../../src/export/formats.ts';
import type { EadVersion } from '../../src/intake/ead/found.ts';
import { foreignEad3, foreignEad2002 } from '../support/foreign-ead.ts';
import { describeWithSamples } from '../support/outside.ts';
import { aid, day, unit } from './finding-aids.ts';

const TODAY = '2026-03-01';
const read = (xml: string | Uint8Array) => readFindingAid(Buffer.from(xml), 'their.xml');
const written = (one: FindingAid, version: EadVersion) =>
  [...FORMATS[version](one)].flatMap(({ content }) => [...content]).join('');

async function compared(a: ReadFindingAid, b: ReadFindingAid) {
  const { aids, inFormOf } = await inOneForm(a, b, TODAY);
  return compareFindingAids(...aids, { inFormOf });
}

const QUILL = aid([
  unit('s', 'Letters', { level: 'series', referenceCode: 'QF/1' }, [
    unit('a', 'Ada to Nils on the flood', { ...day('1962-05-14'), referenceCode: 'QF/1/1' }),
    unit('b', 'Bea to Tom on the thaw', { ...day('1963-03'), scopeAndContent: 'Two sheets.' }),
  ]),
]);

describe.each(['ead3', 'ead2002'] as const)('%s', (version) => {
  test('what EAD has no place for is no difference; what was changed in the file is one', async () => {
    const rich: FindingAid = {
      ...QUILL,
      people: [{ id: 'ada', type: 'person', name: 'Ada Quill', history: 'Kept the ferry.' }],
      recipient: { name: 'Applegarth', languageCodes: 'iso639-2b', separator: ' | ' },
    };
    const xml = written(rich, version);
    expect(isEmpty(await compared({ aid: rich }, await read(xml)))).toBe(true);
    expect(isEmpty(await compared(await read(xml), { aid: rich }))).toBe(true);

    const changed = await compared({ aid: rich }, await read(xml.replace('Two sheets.', 'Three sheets.')));
    expect([...sayComparison(changed)]).toEqual([
      '1 unit changed.',
      '',
      'Changed (1)',
      '  Bea to Tom on the thaw, 1963-03',
      '    Scope and content: Two sheets. → Three sheets.',
    ]);
  });

  test('two files: what came, went, and what only markup tells', async () => {
    const own = version === 'ead3' ? foreignEad3 : foreignEad2002;
    const xml = own({ dsc: '<dsc><c level="file"><did><unittitle>Tolls</unittitle></did></c></dsc>' });
    expect(isEmpty(await compared(await read(xml), await read(xml)))).toBe(true);
    const more = '<c level="file"><did><unittitle>Cable</unittitle></did></c></dsc>';
    const { added, removed } = await compared(await read(xml), await read(xml.replace('</dsc>', more)));
    expect([added.map(({ unit: { title } }) => title), removed]).toEqual([['Cable'], []]);
    const italic = xml.replace('>Tolls<', '><emph render="italic">Tolls</emph><');
    const { changed } = await compared(await read(xml), await read(italic));
    expect(changed.map(({ fields }) => fields.map(({ field }) => field))).toEqual([['kept']]);
  });
});

test('a copy seen from another folder is the same copy; one of another name, or in another folder, is not', async () => {
  const withCopy = (file: string) => ({ aid: aid([unit('a', 'Ferry bell', { digitalCopies: [{ file }] })]) });
  const xml = await read(written(withCopy('../copies/ferry bell.jpg').aid, 'ead3'));
  expect(isEmpty(await compared(withCopy('copies/ferry bell.jpg'), xml))).toBe(true);
  for (const other of [
    'copies/bell.jpg',
    'scans/ferry bell.jpg',
    'https://example.org/copies/ferry bell.jpg',
  ])
    expect([other, isEmpty(await compared(withCopy(other), xml))]).toEqual([other, false]);
  // A package has them as its own finding aid sees them, in EAD and in JSON.
  expect(isEmpty(await compared(withCopy('copies/bell.jpg'), withCopy('../copies/bell.jpg')))).toBe(true);
});

test('how the markup is laid out is no difference, and what it says is one', async () => {
  const file = (name: string) =>
    foreignEad3({ did: `<origination><corpname rules="dacs">${name}</corpname></origination>` });
  const [one, laidOut] = [
    file('<part localtype="name">Heron</part>'),
    file('\n  <part localtype="name">Heron</part>\n'),
  ];
  expect(isEmpty(await compared(await read(one), await read(laidOut)))).toBe(true);
  const other = await read(one.replace('localtype="name"', 'localtype="primary"'));
  expect(isEmpty(await compared(await read(one), other))).toBe(false);
});

test('events without a date are not dated by the day of reading', async () => {
  const xml = foreignEad2002();
  const { aids } = await inOneForm(await read(xml), { aid: QUILL }, TODAY);
  expect(aids[0].control.history.map(({ date }) => date)).toEqual(['2026']);
  const both = await inOneForm(await read(xml), await read(xml), TODAY);
  expect(both.aids[0].control.history.map(({ date }) => date)).toEqual([TODAY]);
});

describe('one finding aid in both versions', () => {
  const dated = (id: string, expression: string, edtf: string, over: Record<string, unknown> = {}) =>
    unit(id, `Recipes of ${id}`, {
      dates: [{ expression, edtf, ...over }],
      number: `2${id.length}`,
      referenceCode: `QF/${id.length}`,
    });
  // How the dates are shown is the form of `displayDate`; EAD3 tells the two ends of a range one by one.
  const one = aid([
    dated('Ada', '[circa 1905]-2010', '1905~/2010'),
    dated('Bea_R', 'circa 1910-1917', '1910~/1917~'),
    dated('Tom_Qu', 'before 1900, [circa 1915]-probably 1961', '{..1899,1915~..1961?}'),
    // A note on the date stands as a note; then the number is told again in one word.
    dated('Solveig', '1951 December 25', '1951-12-25', { written: 'Christmas 1951' }),
  ]);
  const [ead3, ead2002] = [written(one, 'ead3'), written(one, 'ead2002')];

  test('differs in form only, which is not told, whichever comes first', async () => {
    const versions = [await read(ead3), await read(ead2002)] as const;
    expect([...sayComparison(await compared(...versions))]).toEqual(['No difference.']);
    expect([...sayComparison(await compared(versions[1], versions[0]))]).toEqual(['No difference.']);
  });

  const fieldsOf = async (a: string, b: string) =>
    (await compared(await read(a), await read(b))).changed.map(({ fields }) =>
      fields.map(({ field }) => field),
    );

  test.each([
    ['ead2002', '[circa 1905]-2010', '[circa 1906]-2010', ['dates']],
    ['ead2002', '[circa 1905]-2010', '1905-[circa 2010]', ['dates']],
    ['ead2002', 'normal="1910/1917"', 'normal="1910/1918"', ['dates']],
    ['ead2002', 'type="number in the list">27<', 'type="number in the list">29<', ['otherIdentifiers']],
    ['ead2002', 'type="number in the list">27<', 'type="former number">27<', ['otherIdentifiers']],
    ['ead3', '>circa 1905<', '>circa 1906<', ['dates']],
    ['ead3', '>circa 1917<', '>circa 1918<', ['dates']],
    [
      'ead3',
      'localtype="number in the list">27<',
      'localtype="number in the list">29<',
      ['otherIdentifiers'],
    ],
  ] as const)('and a change in it is told: %s, %s', async (version, was, now, fields) => {
    const file = version === 'ead3' ? ead3 : ead2002;
    expect(file).toContain(was);
    const edited = file.replace(was, now);
    const [a, b] = version === 'ead3' ? [edited, ead2002] : [ead3, edited];
    expect(await fieldsOf(a, b)).toEqual([fields]);
    expect(await fieldsOf(b, a)).toEqual([fields]);
  });
});

test('in which form two were compared is said', () => {
  expect(sayAs('ead3', ['ead3', 'ead3'])).toBeUndefined();
  expect(sayAs('ead3', [undefined, 'ead3'])).toMatch(/One of the two is in EAD3: .*was not compared/);
  expect(sayAs('ead2002', ['ead2002', 'ead3'])).toMatch(/both were compared as EAD 2002 tells them/);
});

describeWithSamples('the same finding aid in both versions', (samples) => {
  const files = (['ead3', 'ead2002'] as const).flatMap((version) =>
    readdirSync(join(samples, version)).flatMap((name) =>
      name.endsWith('.xml') ? [[version, name] as const] : [],
    ),
  );
  test.each(files)('%s/%s', async (version, name) => {
    const bytes = readFileSync(join(samples, version, name));
    const [found, again] = [await read(bytes), await read(bytes)];
    expect(isEmpty(await compared(found, again))).toBe(true);
    const other = await read(written(found.aid, version === 'ead3' ? 'ead2002' : 'ead3'));
    const { added, removed, moved, changed, people, description } = await compared(found, other);
    expect([added, removed, moved, changed]).toEqual([[], [], [], []]);
    expect([people.added, people.removed, people.changed]).toEqual([[], [], []]);
    expect(description).toEqual([]);
  });
});
