import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { expect, test, vi } from 'vitest';
import { CatalogueError, type Finding } from '../../src/catalogue/finding.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { validateInside, verifyBag } from '../../src/handover/bag/index.ts';
import { type HandedOver, type HandOverOptions, handOver } from '../../src/handover/index.ts';
import { foreignEad2002 } from '../support/foreign-ead.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { filesIn, TODAY } from './on-disk.ts';
import { dscOf, type TheirUnit, takenIn } from './taken-in-folder.ts';

// What a package is to hold was worked out by hand from the finding aids below, of the invented Heron and Quill families.

const box = (number: string, folder?: string) =>
  `<container type="Box">${number}</container>${folder === undefined ? '' : `<container type="Folder">${folder}</container>`}`;

const FERRY: TheirUnit = {
  level: 'series',
  id: 's1',
  code: 'MS 7/1',
  title: 'Ferry at Millrace',
  beside: '<odd><head>How it was found</head><p>In a <emph render="italic">sea chest</emph>.</p></odd>',
  children: [
    { id: 'f1', code: 'MS 7/1/1', title: 'Tolls taken at the Millrace landing', did: box('1', '3a') },
    {
      id: 'f2',
      code: 'MS 7/1/2',
      title: 'Photographs of the new cable',
      did: `${box('1', '4-6')}<dao xlink:href="scans/cable.txt"/><dao xlink:href="https://example.org/cable"/>`,
    },
  ],
};
const PRIVATE: TheirUnit = {
  level: 'series',
  id: 's2',
  code: 'MS 7/2',
  title: 'Letters to Lois Heron from the sanatorium',
  did: '<origination><persname>Barrow, Edith</persname></origination>',
  beside: '<controlaccess><subject>Tuberculosis</subject></controlaccess>',
  children: [{ id: 'f3', code: 'MS 7/2/1', title: 'First winter', did: box('2') }],
};

describeWithSchemas('hand-over of a finding aid that was taken in', (schemas) => {
  const outOf = (folder: string) => join(dirname(folder), 'package');
  const pack = async (folder: string, options: HandOverOptions = {}): Promise<HandedOver> =>
    handOver(await loadCatalogue(folder, TODAY), outOf(folder), TODAY, {
      schemas: { folder: schemas },
      ...options,
    });
  const inside = (folder: string) =>
    [...filesIn(outOf(folder))].map(([name, bytes]) => `${name}\n${bytes}`).join('\n');
  const rules = ({ findings }: HandedOver) => findings.map(({ rule, weight }) => `${weight} ${rule}`);
  const text = (folder: string, path: string) => readFileSync(join(outOf(folder), 'data', path), 'utf8');
  const table = (folder: string, path: string): Record<string, string>[] =>
    parse(text(folder, path), { bom: true, columns: true });
  const refusal = (work: Promise<unknown>): Promise<readonly Finding[]> =>
    work.then(
      () => [],
      (error: unknown) => (error instanceof CatalogueError ? error.findings : []),
    );

  test('the package holds it in every form, with its copies and papers, and is valid', async () => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY, PRIVATE]) }), {
      files: { 'scans/cable.txt': 'The cable, seen from the landing' },
    });
    const before = filesIn(folder);
    const result = await pack(folder);
    expect(result.written).toMatchObject({ things: 0, units: 6, copies: 1 });
    expect([result.held, result.units, rules(result)]).toEqual([[], [], []]);
    expect((await verifyBag(outOf(folder))).valid).toBe(true);
    const looked = await validateInside(outOf(folder), { folder: schemas });
    expect(looked.length).toBeGreaterThan(2);
    expect(looked.filter(({ valid }) => !valid)).toEqual([]);
    expect(filesIn(folder)).toEqual(before);

    // Without a list of new things there is none in it.
    expect(existsSync(join(outOf(folder), 'data/list.csv'))).toBe(false);
    expect(text(folder, 'READ-ME-FIRST.txt')).not.toMatch(/ {2}- list\.csv/);
    expect(text(folder, 'READ-ME-FIRST.txt')).toContain('MS 7/1 Ferry at Millrace');
    // What the model has no place for is in the version in which it was found.
    expect(text(folder, 'finding-aid/ead2002.xml')).toContain('<emph render="italic">sea chest</emph>');
    expect(text(folder, 'finding-aid/ead3.xml')).toContain('sea chest');

    const name = 'MS-7-1-2_Photographs-of-the-new-cable_1.txt';
    expect(text(folder, `copies/${name}`)).toBe('The cable, seen from the landing');
    expect(table(folder, 'technical-facts.csv')).toMatchObject([
      { file: `copies/${name}`, 'original name': 'scans/cable.txt', 'reference code': 'MS 7/1/2' },
    ]);
    for (const file of ['ead3.xml', 'ead2002.xml'])
      expect(text(folder, `finding-aid/${file}`)).toContain(`../copies/${name}`);
    expect(text(folder, 'finding-aid/ead2002.xml')).toContain('https://example.org/cable');

    expect(table(folder, 'inventory.csv').map(({ box: at, folder: in_, title }) => [at, in_, title])).toEqual(
      [
        ['1', '3a', 'Tolls taken at the Millrace landing'],
        ['1', '4-6', 'Photographs of the new cable'],
        ['2', '', 'First winter'],
      ],
    );
    // Folder 3a is one, 4 to 6 are three.
    expect(text(folder, 'receipt.md')).toContain(
      '3 units of the finding aid, 2 boxes, 4 folders, 1 digital copy',
    );
  });

  test('what a list adds goes with it, in boxes of its own, with its copies', async () => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY]) }), {
      rows: [
        { title: 'Letter found in the chest', date: '1931', series: 'Ferry at Millrace', copy: 'new.txt' },
      ],
      files: { 'scans/cable.txt': 'Cable', 'new.txt': 'Letter' },
    });
    expect((await pack(folder)).written).toMatchObject({ things: 1, units: 4, copies: 2 });
    expect(table(folder, 'list.csv')).toMatchObject([{ title: 'Letter found in the chest' }]);
    const rows = table(folder, 'inventory.csv');
    expect(rows.at(-1)).toMatchObject({ things: '1' });
    expect(['1', '']).not.toContain(rows.at(-1)?.box);
    const ead3 = text(folder, 'finding-aid/ead3.xml');
    expect(ead3.indexOf('Letter found in the chest')).toBeGreaterThan(ead3.indexOf('new cable'));
    const [, letter] = table(folder, 'technical-facts.csv');
    expect(letter).toMatchObject({ 'original name': 'new.txt' });
    expect(ead3).toContain(`../${letter?.file}`);
  });

  test.each([
    ['by its title', { handOver: { keep: ['letters to lois heron from the sanatorium'] } }, {}, ''],
    ['by its code', { handOver: { keep: ['MS 7/2'] } }, {}, ''],
    [
      'by what collection.yaml says of the group',
      { groups: { [PRIVATE.title]: { access: 'family only' } } },
      {},
      '',
    ],
    ['by its access', {}, {}, '<accessrestrict><p>Stays with the family.</p></accessrestrict>'],
    [
      'as restricted',
      {},
      { withoutRestricted: true },
      '<accessrestrict><p>Closed until 2050.</p></accessrestrict>',
    ],
  ])('a series that stays, %s, leaves nothing behind', async (_, settings, options, access) => {
    const held = { ...PRIVATE, beside: `${PRIVATE.beside}${access}` };
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY, held]) }), {
      settings,
      rows: [
        { title: 'A ferry ticket', date: '1911', series: 'Ferry at Millrace' },
        { title: 'Temperature chart', date: '1912', series: PRIVATE.title },
      ],
      files: { 'scans/cable.txt': 'Cable' },
    });
    const { written, held: things, units } = await pack(folder, options);
    expect(written).toMatchObject({ things: 1, units: 4 });
    expect(units.map(({ unit }) => unit.id)).toEqual(['s2']);
    expect(things.map(({ thing }) => thing.title)).toEqual(['Temperature chart']);
    const all = inside(folder);
    expect(all).not.toMatch(/sanatorium|Barrow|Tuberculosis|First winter|Temperature|\bs2\b|\bf3\b/i);
    for (const shown of ['A ferry ticket', 'Photographs of the new cable', 'sea chest'])
      expect(all).toContain(shown);
    expect((await verifyBag(outOf(folder))).valid).toBe(true);
  });

  test('restricted units go where nobody asked that they stay, and are told as restricted', async () => {
    const closed = { ...PRIVATE, beside: '<accessrestrict><p>Closed until 2050.</p></accessrestrict>' };
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY, closed]) }));
    expect((await pack(folder)).units).toEqual([]);
    expect(text(folder, 'READ-ME-FIRST.txt')).toContain('MS 7/2 Letters to Lois Heron');
    expect(text(folder, 'READ-ME-FIRST.txt')).toContain('Closed until 2050.');
  });

  test('what is restricted and goes beside something that stays is still told as restricted', async () => {
    const closed = '<accessrestrict><p>Closed until 2050.</p></accessrestrict>';
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([{ ...FERRY, beside: closed }, PRIVATE]) }), {
      settings: { handOver: { keep: ['MS 7/2'] } },
    });
    await pack(folder);
    const json = JSON.parse(text(folder, 'finding-aid/finding-aid.json'));
    expect(json.collection.children).toMatchObject([
      { title: 'Ferry at Millrace', accessConditions: { statement: 'Closed until 2050.', restricted: true } },
    ]);
    expect(json.collection.accessConditions).toBeUndefined();
  });

  test.each([
    ['in a text', '<scopecontent><p>See the letters to Lois Heron from the sanatorium.</p></scopecontent>'],
    [
      'in markup alone',
      '<index><indexentry><subject>Letters to <emph>Lois</emph> Heron from the sanatorium</subject></indexentry></index>',
    ],
    ['by its code', '<scopecontent><p>See also MS 7/2.</p></scopecontent>'],
  ])('a mention of what stays, %s, stops it', async (_, beside) => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([{ ...FERRY, beside }, PRIVATE]) }), {
      settings: { handOver: { keep: ['MS 7/2'] } },
    });
    const { written, findings } = await pack(folder);
    expect(written).toBeUndefined();
    expect(findings.filter(({ weight }) => weight === 'must')).toMatchObject([
      { rule: 'hand-over.mention', place: { file: 'finding-aid.json', column: 'Ferry at Millrace' } },
    ]);
    expect(existsSync(outOf(folder))).toBe(false);
  });

  test('markup that points to what stays is not used, and that is said', async () => {
    const beside = '<odd><p>Compare <ref target="f3">these</ref>.</p></odd>';
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([{ ...FERRY, beside }, PRIVATE]) }), {
      settings: { handOver: { keep: ['MS 7/2'] } },
      files: { 'scans/cable.txt': 'Cable' },
    });
    expect(rules(await pack(folder))).toEqual(['consider hand-over.kept-left-out']);
    expect(inside(folder)).not.toMatch(/\bf3\b/);
    expect(text(folder, 'finding-aid/ead2002.xml')).toContain('Compare these.');
  });

  test('a name to keep that means nothing, and a collection of which all stays', async () => {
    const xml = foreignEad2002({ dsc: dscOf([FERRY, PRIVATE]) });
    const unknown = await takenIn(xml, { settings: { handOver: { keep: ['Ferry at Millrise'] } } });
    expect(await refusal(pack(unknown))).toMatchObject([
      { rule: 'hand-over.keep-unknown', found: expect.stringContaining('Perhaps “Ferry at Millrace”') },
    ]);
    for (const keep of [['Heron papers'], ['MS 7/1', 'MS 7/2'], ['MS 7/1/1', 'MS 7/1/2', 'First winter']]) {
      const folder = await takenIn(xml, { settings: { handOver: { keep } } });
      expect(await refusal(pack(folder))).toMatchObject([{ rule: 'hand-over.nothing-left' }]);
      expect(existsSync(outOf(folder))).toBe(false);
    }
  });

  test('a copy that shows what goes and what stays', async () => {
    const held = { ...PRIVATE, did: '<dao xlink:href="scans/other.txt"/>' };
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY, held]) }), {
      settings: { handOver: { keep: ['MS 7/2'] } },
      files: { 'scans/cable.txt': 'Both', 'scans/other.txt': 'Both' },
    });
    expect(await refusal(pack(folder, { despite: 'No.' }))).toMatchObject([
      {
        rule: 'hand-over.shared-copy',
        place: { file: 'finding-aid.json', column: 'Photographs of the new cable' },
      },
    ]);
  });

  test('copies that are not in the folder keep their address, and are said', async () => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY]) }));
    expect(rules(await pack(folder))).toEqual(['should hand-over.copies-elsewhere']);
    expect(text(folder, 'finding-aid/ead2002.xml')).toContain('scans/cable.txt');
    expect(table(folder, 'technical-facts.csv')).toMatchObject([
      { file: '', remark: 'not in this package: there was no such file' },
    ]);
  });

  test('the recipient’s wishes are in the forms of the package', async () => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY]) }), {
      settings: { recipient: { name: 'Applegarth Historical Society', address: ['Applegarth'] } },
      files: { 'scans/cable.txt': 'Cable' },
    });
    await pack(folder);
    expect(JSON.parse(text(folder, 'finding-aid/finding-aid.json')).recipient).toMatchObject({
      name: 'Applegarth Historical Society',
    });
    expect(text(folder, 'letter-of-offer.md')).toContain('Applegarth Historical Society');
  });

  test('where only the profile of this project was asked, that is said', async () => {
    const folder = await takenIn(foreignEad2002({ dsc: dscOf([FERRY]) }));
    vi.stubEnv('KINFONDS_SCHEMAS', '/nonexistent');
    vi.stubEnv('XDG_CACHE_HOME', '/nonexistent');
    const [first] = await refusal(pack(folder, { schemas: {} })).finally(() => vi.unstubAllEnvs());
    expect(first?.rule).toBe('hand-over.invalid');
    expect(first?.advice).toContain('kinfonds schemas --get');
    expect(existsSync(outOf(folder))).toBe(false);
  });
});
