import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { CatalogueError, type Finding } from '../../src/catalogue/finding.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { validateInside, verifyBag } from '../../src/handover/bag/index.ts';
import { type HandOverOptions, handOver } from '../../src/handover/index.ts';
import { readList } from '../../src/intake/list.ts';
import { GPS, picture } from '../copies/small-files.ts';
import { filesIn, folderOf, settleIn, TODAY } from './on-disk.ts';

const outOf = (folder: string, name = 'package') => join(dirname(folder), name);
const pack = async (folder: string, options: HandOverOptions = {}, name = 'package', today = TODAY) =>
  handOver(await loadCatalogue(folder, today), outOf(folder, name), today, options);
const text = (files: ReadonlyMap<string, Buffer>, path: string) =>
  files.get(`data/${path}`)?.toString() ?? '';
const table = (files: ReadonlyMap<string, Buffer>, path: string): Record<string, string>[] =>
  parse(text(files, path), { bom: true, columns: true });
const refusal = async (work: Promise<unknown>): Promise<readonly Finding[]> => {
  const error = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (error instanceof CatalogueError) return error.findings;
  throw new Error(`no clear word, but ${error}`);
};
const besides = (folder: string) => readdirSync(dirname(folder)).filter((name) => name !== basename(folder));

const LETTER = { title: 'Bea to Tom on the thaw', date: '14 May 1962', kind: 'letter' };
const RING = { title: 'Ring of Grandmother Quill', stays: 'yes' };

describe('a package', () => {
  test('is a valid bag with everything in it, and leaves the catalogue as it was', async () => {
    const photograph = await picture('jpeg', { exif: GPS });
    const folder = folderOf(
      [
        { ...LETTER, copy: 'copies/one.jpg; copies/two.png', number: '7' },
        {
          title: 'Report on the mill',
          date: '1990',
          access: 'health of the living',
          until: '2065',
          kind: 'letter',
        },
        RING,
      ],
      { recipient: { name: 'Osier County Historical Society', prefix: 'OC-17' } },
      { 'copies/one.jpg': photograph, 'copies/two.png': await picture('png') },
    );
    await settleIn(folder);
    const before = filesIn(folder);
    const { written, findings } = await pack(folder);
    expect(written).toMatchObject({ path: outOf(folder), things: 2, copies: 2 });
    expect(filesIn(folder)).toEqual(before);
    expect(besides(folder)).toEqual(['package']);
    expect(await verifyBag(outOf(folder))).toMatchObject({ valid: true, findings: [] });
    const inside = await validateInside(outOf(folder), {});
    expect(inside.length).toBeGreaterThan(4);
    expect(inside.filter(({ valid }) => !valid)).toEqual([]);

    const files = filesIn(outOf(folder));
    const paths = [...files.keys()];
    for (const name of [
      'READ-ME-FIRST.txt',
      'list.csv',
      'inventory.csv',
      'inventory.html',
      'technical-facts.csv',
    ])
      expect(paths).toContain(`data/${name}`);
    for (const name of ['letter-of-offer', 'deed-of-gift-checklist', 'receipt'])
      expect(paths).toEqual(expect.arrayContaining([`data/${name}.md`, `data/${name}.html`]));
    for (const name of ['ead3.xml', 'ead2002.xml', 'dublin-core.csv', 'finding-aid.json', 'finding-aid.csv'])
      expect(paths).toContain(`data/finding-aid/${name}`);
    expect(paths.filter((path) => /\.yaml$|numbers\.csv|despite|kinfonds/.test(path))).toEqual([]);

    // Names say what they are; what is in them is what was there, byte for byte.
    const code = 'OC-17-1-1-1';
    expect(files.get(`data/copies/${code}_Bea-to-Tom-on-the-thaw_1.jpg`)).toEqual(photograph);
    const facts = table(files, 'technical-facts.csv');
    expect(facts).toHaveLength(2);
    expect(facts[0]).toMatchObject({
      file: `copies/${code}_Bea-to-Tom-on-the-thaw_1.jpg`,
      'original name': 'copies/one.jpg',
      'reference code': 'OC-17/1/1/1',
      'media type': 'image/jpeg',
      bytes: String(photograph.length),
      'width (pixels)': '120',
      'height (pixels)': '80',
      'tells where it was made': 'yes',
      'SHA-256': createHash('sha256').update(photograph).digest('hex'),
    });
    // Copies are found from where each file lies.
    const hrefs = [...text(files, 'finding-aid/ead3.xml').matchAll(/ href="([^"]*)"/g)].map(
      ([, href = '']) => href,
    );
    expect(hrefs).toHaveLength(2);
    for (const href of hrefs)
      expect(existsSync(join(outOf(folder), 'data/finding-aid', decodeURIComponent(href)))).toBe(true);
    for (const path of (table(files, 'list.csv')[0]?.copy ?? '').split('; '))
      expect(paths).toContain(`data/${path}`);

    // Restricted: with its reason and its end.
    expect(text(files, 'finding-aid/ead3.xml')).toContain('health of the living');
    for (const paper of ['letter-of-offer.md', 'READ-ME-FIRST.txt']) {
      expect(text(files, paper)).toContain('health of the living');
      expect(text(files, paper)).toContain('2065');
      expect(text(files, paper)).toContain('One of them tells');
    }
    expect(findings.map(({ rule }) => rule)).toEqual(['copies.location']);

    const info = files.get('bag-info.txt')?.toString() ?? '';
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(info).toContain(`\nBag-Software-Agent: kinfonds ${version}\n`);
    expect(text(files, 'READ-ME-FIRST.txt').replace(/\s+/g, ' ')).toContain(
      `kinfonds ${version}, with which this was made, does so as well: kinfonds verify`,
    );
    expect(info).toContain('Source-Organization: Quill family\n');
    expect(info).toContain(`Bagging-Date: ${TODAY}\n`);
    expect(info).toContain('External-Identifier: OC-17\n');
    expect(info).toContain('Internal-Sender-Identifier: QF\n');
  });

  test('the same catalogue gives the same bytes but for the day', async () => {
    const folder = folderOf(
      [{ ...LETTER, copy: 'copies/a.txt' }],
      {},
      { 'copies/a.txt': 'The ice went out' },
    );
    await pack(folder, {}, 'first');
    await pack(folder, {}, 'second');
    await pack(folder, {}, 'later', '2031-08-09');
    await pack(folder, { zip: true }, 'one.zip');
    const [first, second, later] = ['first', 'second', 'later'].map((name) => filesIn(outOf(folder, name)));
    expect(second).toEqual(first);
    const differing = [...(first ?? [])].filter(([name, bytes]) => later?.get(name)?.equals(bytes) !== true);
    expect(differing.map(([name]) => name)).toEqual([
      'bag-info.txt',
      'tagmanifest-sha256.txt',
      'tagmanifest-sha512.txt',
    ]);
    const zipped = unzipSync(readFileSync(outOf(folder, 'one.zip')));
    expect(
      new Map(Object.entries(zipped).map(([name, bytes]) => [name.replace('one/', ''), Buffer.from(bytes)])),
    ).toEqual(new Map([...(first ?? [])].sort(([a], [b]) => Buffer.compare(Buffer.from(a), Buffer.from(b)))));
    expect(besides(folder).sort()).toEqual(['first', 'later', 'one.zip', 'second']);
  });

  test('its list reads as the things that were given', async () => {
    const folder = folderOf([
      {
        Thing: 'Diary, "the thaw"',
        When: 'c. 1950',
        Type: 'diary',
        Who: 'Ada Quill; Bea Quill',
        'How many': 'a shelf of',
        'Found in': 'Loft',
      },
      {
        Thing: 'Sums',
        When: '1950s',
        Type: 'letters',
        'How many': 'about 40',
        Notes: 'Line one\nline two',
        Until: '2040',
        Keep: 'no',
      },
      { Thing: 'Ring', Keep: 'x', 'For us only': 'Nobody is to know' },
    ]);
    await pack(folder);
    const files = filesIn(outOf(folder));
    const { things } = await loadCatalogue(folder, TODAY);
    const again = readList(files.get('data/list.csv') ?? new Uint8Array(), 'list.csv');
    expect(again.findings.filter(({ weight }) => weight === 'must')).toEqual([]);
    const plain = ({ row, extra, date, until, ...thing }: (typeof things)[number]) => ({
      ...thing,
      date: date?.written,
      until: until?.written,
      extra: extra.map(({ text: said }) => said),
    });
    expect(again.things.map(plain)).toEqual(things.slice(0, 2).map(plain));
    expect(text(files, 'list.csv')).not.toMatch(/keep|stays|us only|nobody/i);
  });

  test('the inventory counts what lies in each box, and every box once', async () => {
    const rows = [1, 2, 3].map((year) => ({ ...LETTER, title: `Letter ${year}`, date: `191${year}` }));
    const folder = folderOf([
      ...rows,
      { title: 'Map of the river', kind: 'map', size: '120 x 90 cm', date: '1898' },
      { title: 'Voice of Ada', kind: 'digital file', date: '2001' },
      { title: 'Receipts', kind: 'receipts', quantity: '2000', date: '1920' },
    ]);
    await settleIn(folder);
    await pack(folder);
    const files = filesIn(outOf(folder));
    const lots = table(files, 'inventory.csv');
    const things = lots.reduce((sum, { things: count = '' }) => sum + (Number.parseInt(count, 10) || 0), 0);
    // Three letters, a map, a file that takes no room, two thousand receipts.
    expect(things).toBe(2005);
    const settled = parse(readFileSync(join(folder, 'numbers.csv')), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    const boxes = new Set(settled.flatMap(({ box = '' }) => (box === '' ? [] : box.split(', '))));
    expect(
      new Set(lots.flatMap(({ box = '' }) => (box === '' ? [] : [box.replace('package ', '')]))),
    ).toEqual(boxes);
    expect(lots.filter(({ box }) => box === '').map(({ title }) => title)).toEqual(['Voice of Ada']);
    // The map is larger than any box.
    const words = text(files, 'READ-ME-FIRST.txt').replace(/\s+/g, ' ');
    expect(words).toContain(`without the packages: ${boxes.size - 1} boxes and 1 package, `);
    const aid = JSON.parse(text(files, 'finding-aid/finding-aid.json'));
    const carriers = aid.collection.extents.map(({ quantity, unit }: { quantity: number; unit: string }) => [
      unit,
      quantity,
    ]);
    expect(carriers).toContainEqual(['boxes', boxes.size - 1]);
    expect(carriers).toContainEqual(['package', 1]);
  });
});

describe('names of copies', () => {
  test('two that differ in case alone, a device, one far too long, other scripts', async () => {
    const rows = ['Nils', 'NILS', 'Kåre Nygård på isen — “½ mile”', '渡し船の写真', 'Ferry '.repeat(60)].map(
      (title, at) => ({
        title,
        date: '1950',
        copy: `copies/${at}.JPG`,
      }),
    );
    const files = Object.fromEntries(rows.map((_, at) => [`copies/${at}.JPG`, `text ${at}`]));
    const folder = folderOf(rows, { sort: { folders: 'group', order: ['list'] } }, files);
    await pack(folder);
    const names = readdirSync(join(outOf(folder), 'data/copies'))
      .map((name) => name.replace(/^QF-1-1-\d_/, ''))
      .sort();
    expect(names.filter((name) => /nils/i.test(name))).toHaveLength(2);
    expect(names).toContain('Kare-Nygard-pa-isen-1-2-mile_1.txt');
    expect(names.some((name) => name.startsWith('渡し船の写真'))).toBe(true);
    for (const name of names) expect(Buffer.byteLength(name)).toBeLessThan(110);
  });

  test('a link out of the catalogue is never followed, and stops the work', async () => {
    const folder = folderOf([{ ...LETTER, copy: 'copies/out.txt' }], {}, { 'copies/in.txt': 'in' });
    writeFileSync(outOf(folder, 'secret.txt'), 'The key is under the mat');
    symlinkSync('../../secret.txt', join(folder, 'copies/out.txt'));
    const stopped = await pack(folder);
    expect(stopped.written).toBeUndefined();
    expect(stopped.findings.map(({ rule }) => rule)).toContain('copies.leads-out');
    await pack(folder, { despite: 'It is only a link.' });
    const all = [...filesIn(outOf(folder)).values()].join('\n');
    expect(all).not.toContain('under the mat');
    expect(all).toContain('a link to another place');
  });
});

describe('refusals', () => {
  test('what must be mended stops it, and nothing is written', async () => {
    const folder = folderOf([LETTER, { title: 'Map of the river', copy: 'copies/lost.jpg' }], {
      rights: undefined,
    });
    const { written, findings } = await pack(folder);
    expect(written).toBeUndefined();
    const musts = findings.filter(({ weight }) => weight === 'must').map(({ rule }) => rule);
    expect(musts.sort()).toEqual(['copies.missing', 'description.rights']);
    expect(besides(folder)).toEqual([]);
  });

  test('despite: the reason and the findings go into the package, with the rows of its own list', async () => {
    const folder = folderOf([RING, LETTER, { title: 'Map of the river', copy: 'copies/lost.jpg' }]);
    const { written, findings } = await pack(folder, { despite: 'The scan is being made again.' });
    expect(written?.copies).toBe(0);
    // For the family, its own list counts.
    expect(findings.find(({ rule }) => rule === 'copies.missing')?.place.row).toBe(4);
    const files = filesIn(outOf(folder));
    expect(text(files, 'despite.txt')).toContain('    The scan is being made again.\n');
    expect(text(files, 'despite.txt')).toContain('list.csv, row 3');
    expect(text(files, 'READ-ME-FIRST.txt')).toContain('despite.txt');
    expect(table(files, 'technical-facts.csv')[0]).toMatchObject({
      file: '',
      remark: 'not in this package: there was no such file',
    });
    expect(text(files, 'finding-aid/ead3.xml')).not.toContain('lost.jpg');
    expect((await verifyBag(outOf(folder))).valid).toBe(true);
  });

  test('what is wrong only with what stays stops nothing', async () => {
    const folder = folderOf([LETTER, { ...RING, copy: 'copies/lost.jpg' }]);
    expect((await pack(folder, { despite: 'Never mind.' })).written).toBeDefined();
    expect(filesIn(outOf(folder)).has('data/despite.txt')).toBe(false);
  });

  test.each([
    ['the same name', 'copies/a.jpg', () => {}],
    [
      'the same file by a link',
      'copies/b.jpg',
      (folder: string) => symlinkSync('a.jpg', join(folder, 'copies/b.jpg')),
    ],
    [
      'the same bytes',
      'copies/b.jpg',
      (folder: string) => writeFileSync(join(folder, 'copies/b.jpg'), 'both'),
    ],
    ['the same address', 'https://example.org/a.jpg', () => {}],
  ])('a copy that belongs to what goes and to what stays: %s', async (_, other, prepare) => {
    const own = other.startsWith('https') ? other : 'copies/a.jpg';
    const folder = folderOf(
      [
        { ...LETTER, copy: own },
        { ...RING, copy: other },
      ],
      {},
      { 'copies/a.jpg': 'both' },
    );
    prepare(folder);
    for (const options of [{}, { despite: 'No.' }]) {
      expect(await refusal(pack(folder, options))).toMatchObject([
        { rule: 'hand-over.shared-copy', place: { row: 2 } },
      ]);
    }
    expect(besides(folder)).toEqual([]);
  });

  test('a text that names what stays', async () => {
    const folder = folderOf(
      [
        { ...LETTER, description: 'She wears the ring of Grandmother Quill.' },
        { ...RING, people: 'Lois Barrow', copy: 'copies/ring-box.jpg' },
        { title: 'Diary', note: 'See Ring-Box.jpg' },
      ],
      { scope: 'Kept by Lois Barrow.' },
    );
    const { written, findings } = await pack(folder);
    expect(written).toBeUndefined();
    const found = findings.filter(({ rule }) => rule.startsWith('hand-over.'));
    expect(
      found.map(({ rule, weight, place }) => [rule, weight, place.file, place.row, place.column]),
    ).toEqual([
      ['hand-over.mention', 'must', 'list.csv', 2, 'description'],
      ['hand-over.mention', 'must', 'list.csv', 4, 'note'],
      ['hand-over.unsettled', 'should', undefined, undefined, undefined],
      ['hand-over.name', 'consider', 'collection.yaml', undefined, 'scope'],
    ]);
    // Overruled, it is not spoken of in the package: that would be the worse mention.
    const overruled = await pack(folder, { despite: 'It is another ring.' });
    expect(overruled.written).toBeDefined();
    const files = filesIn(outOf(folder));
    expect(files.has('data/despite.txt')).toBe(false);
    expect([...files.values()].join('')).not.toContain('another ring');
  });

  test('a reason that names what stays is looked at as well', async () => {
    const folder = folderOf([LETTER, RING], { rights: undefined });
    const { findings } = await pack(folder, { despite: 'Without the ring of Grandmother Quill.' });
    expect(findings.find(({ rule }) => rule === 'hand-over.mention')?.place.file).toBe('--despite');
  });

  test('a place that is taken, or within the catalogue', async () => {
    const folder = folderOf([LETTER]);
    mkdirSync(outOf(folder));
    writeFileSync(outOf(folder, 'old.zip'), 'mine');
    expect((await refusal(pack(folder)))[0]?.rule).toBe('bag.target-there');
    expect((await refusal(pack(folder, { zip: true }, 'old')))[0]?.rule).toBe('bag.target-there');
    expect(readFileSync(outOf(folder, 'old.zip'), 'utf8')).toBe('mine');
    for (const name of ['papers/bag', 'papers/copies', 'papers'])
      expect((await refusal(pack(folder, {}, name)))[0]?.rule).toMatch(/hand-over\.inside|bag\.target-there/);
  });

  test('numbers that are not settled are said', async () => {
    const folder = folderOf([LETTER, { title: 'Diary' }]);
    const rules = async (name: string) => (await pack(folder, {}, name)).findings.map(({ rule }) => rule);
    expect(await rules('a')).toEqual(['hand-over.unsettled']);
    await settleIn(folder);
    expect(await rules('b')).toEqual([]);
  });
});
