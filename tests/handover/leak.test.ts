import { createHash } from 'node:crypto';
import { readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ExifReader from 'exifreader';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { handOver } from '../../src/handover/index.ts';
import { times } from '../support/times.ts';
import { type Cells, filesIn, folderOf, settleIn, TODAY } from './on-disk.ts';

/** What is generated of one thing: which cells it has, and how it is marked as staying. */
const aThing = fc.record({
  kind: fc.constantFrom('letter', 'letters', 'photograph', 'diary', 'tape', 'email', 'map', ''),
  date: fc.constantFrom('1911', '14 May 1952', '1950s', '1899-1903', 'undated', 'spring 1936', ''),
  size: fc.constantFrom('20 x 25 cm', '60 x 90 cm', ''),
  quantity: fc.constantFrom('', '3', 'about 40', 'a trunk full'),
  cells: fc.uniqueArray(
    fc.constantFrom(
      'people',
      'place',
      'occasion',
      'description',
      'condition',
      'note',
      'series',
      'folder',
      'box',
      'creator',
      'Found in',
      'family note',
    ),
    { maxLength: 8 },
  ),
  copies: fc.integer({ min: 0, max: 2 }),
  known: fc.boolean(),
  why: fc.constantFrom('stays', 'title', 'number', 'access', 'restricted'),
});
type Plan = typeof aThing extends fc.Arbitrary<infer T> ? T : never;

const aCatalogue = fc.record({
  given: fc.array(aThing, { minLength: 1, maxLength: 4 }),
  held: fc.array(aThing, { minLength: 1, maxLength: 3 }),
  sort: fc.constantFrom('kind', 'series', 'person', 'place', 'decade'),
  folders: fc.constantFrom('year', 'occasion', 'person', 'folder', 'group'),
  settled: fc.boolean(),
  zip: fc.boolean(),
  despite: fc.boolean(),
  heldFirst: fc.boolean(),
});
type Whole = typeof aCatalogue extends fc.Arbitrary<infer T> ? T : never;

/** Words that occur nowhere else, of letters and figures alone, so that no form of writing changes them but in case. */
const mark = (side: string, at: number, field: string) =>
  `${side}${at}${field.replace(/\s/g, '').toLowerCase()}zqx`;

/** A picture with a description: Exif 2.32, 4.6.4, ImageDescription. */
const pictureWith = (description: string): Promise<Buffer> =>
  sharp({ create: { width: 24, height: 16, channels: 3, background: '#567' } })
    .withExif({ IFD0: { ImageDescription: description } })
    .jpeg()
    .toBuffer();

interface Made {
  row: Cells;
  marks: string[];
  private: string[];
  files: Record<string, Buffer>;
  people: { name: string; also: string[]; history: string; relations: { to: string; as: string }[] }[];
}

async function made(plan: Plan, side: 'gvn' | 'hld', at: number): Promise<Made> {
  const marks: string[] = [];
  const own: string[] = [];
  const word = (field: string) => {
    const one = mark(side, at, field);
    (field === 'family note' ? own : marks).push(one);
    return one;
  };
  const row: Record<string, string> = {
    number: `${side === 'gvn' ? 'g' : 'h'}${at + 1}`,
    title: `The ${word('title')} of the ferry`,
  };
  for (const field of ['kind', 'date', 'size', 'quantity'] as const) row[field] = plan[field];
  for (const field of plan.cells) row[field] = word(field);
  const files: Made['files'] = {};
  for (let copy = 0; copy < plan.copies; copy++) {
    const name = `copies/${mark(side, at, `file${copy}`)}.jpg`;
    if (side === 'hld') marks.push(mark(side, at, `file${copy}`));
    files[name] = await pictureWith(word(`inside${copy}`));
  }
  if (plan.copies > 0) row.copy = Object.keys(files).join('; ');
  const { people } = row;
  const known = people !== undefined && plan.known;
  return {
    row,
    marks,
    private: own,
    files,
    people: known
      ? [
          {
            name: people,
            also: [word('also')],
            history: word('history'),
            relations: [{ to: 'Ada Quill', as: 'friend' }],
          },
        ]
      : [],
  };
}

/** Writes a generated catalogue into a folder. */
async function catalogueOf({ given, held, sort, folders, settled, heldFirst, despite }: Whole) {
  // A collection without any date is nothing to hand over.
  const goes = await Promise.all(
    given.map((plan, at) => made(at === 0 ? { ...plan, date: '1911' } : plan, 'gvn', at)),
  );
  const stays = await Promise.all(
    held.map(async (plan, at) => {
      const one = await made(plan, 'hld', at);
      const marked: Cells = {
        ...one.row,
        stays: plan.why === 'stays' ? mark('hld', at, 'why') : 'no',
        access:
          plan.why === 'access'
            ? `Family only: ${mark('hld', at, 'why')}`
            : plan.why === 'restricted'
              ? mark('hld', at, 'why')
              : '',
      };
      return { ...one, row: marked, marks: [...one.marks, mark('hld', at, 'why')] };
    }),
  );
  const keep = held.flatMap(({ why }, at) => {
    const { title = '', number = '' } = stays[at]?.row ?? {};
    return why === 'title' ? [title] : why === 'number' ? [number] : [];
  });
  const all = heldFirst ? [...stays, ...goes] : [...goes, ...stays];
  const names = all.flatMap(({ people }) => people.map(({ name }) => name));
  const groups = stays.flatMap(({ row: { series } }) => (series === undefined ? [] : [series]));
  const settings = {
    people: [
      ...all.flatMap(({ people }) => people),
      { name: 'Ada Quill', relations: names.map((to) => ({ to, as: 'friend' })) },
    ],
    sort: { groups: [sort], folders },
    handOver: { keep },
    ...(sort === 'series' && {
      groups: Object.fromEntries(groups.map((title) => [title, { scope: `${title}scope` }])),
    }),
    ...(despite && { rights: undefined }),
  };
  const files = Object.assign({}, ...all.map((one) => one.files)) as Record<string, Buffer>;
  const folder = folderOf(
    all.map(({ row }) => row),
    settings,
    files,
  );
  if (settled) await settleIn(folder);
  return { folder, goes, stays };
}

async function packageOf(whole: Whole, folder: string): Promise<Map<string, Buffer>> {
  const out = join(dirname(folder), 'package');
  const { written, findings } = await handOver(await loadCatalogue(folder, TODAY), out, TODAY, {
    withoutRestricted: true,
    zip: whole.zip,
    ...(whole.despite && { despite: 'Because reasonzqx.' }),
  });
  if (written === undefined) throw new Error(JSON.stringify(findings));
  if (!whole.zip) return filesIn(out);
  return new Map(
    Object.entries(unzipSync(readFileSync(written.path))).map(([name, bytes]) => [name, Buffer.from(bytes)]),
  );
}

const digests = (bytes: Buffer) =>
  ['md5', 'sha1', 'sha256', 'sha512'].map((name) => createHash(name).update(bytes).digest('hex'));

/** In CI there is time for many catalogues. */
const RUNS = times(200);

test('nothing that stays is anywhere in the package, and everything that goes is in it', {
  timeout: 1_200_000,
}, async () => {
  let [withCopies, mostMarks] = [0, 0];
  await fc.assert(
    fc.asyncProperty(aCatalogue, async (whole) => {
      const { folder, goes, stays } = await catalogueOf(whole);
      try {
        const files = await packageOf(whole, folder);
        const inside = [...files]
          .map(([name, bytes]) => `${name}\n${bytes.toString('latin1')}`)
          .join('\n')
          .toLowerCase();
        const metadata = [...files]
          .filter(([name]) => name.endsWith('.jpg'))
          .map(([, bytes]) => JSON.stringify(ExifReader.load(bytes)))
          .join('\n');

        const hidden = [
          ...stays.flatMap((one) => [
            ...one.marks,
            ...one.private,
            ...Object.values(one.files).flatMap(digests),
          ]),
          ...goes.flatMap((one) => one.private),
        ];
        expect(hidden.filter((word) => inside.includes(word) || metadata.includes(word))).toEqual([]);
        // Whatever the words, none of this kind.
        expect(/hld\d/.exec(inside)).toBeNull();

        const shown = goes.flatMap((one) => one.marks);
        expect(shown.filter((word) => !inside.includes(word))).toEqual([]);
        const pictures = goes.flatMap((one) => Object.values(one.files));
        expect(pictures.filter((bytes) => ![...files.values()].some((file) => file.equals(bytes)))).toEqual(
          [],
        );
        for (const word of shown.filter((one) => one.includes('inside'))) expect(metadata).toContain(word);

        // Counts: the pieces of the whole are those of the given rows. A number that cannot be read counts for nothing,
        // and so does a word for several without a number.
        const counted = new Map([
          ['3', 3],
          ['about 40', 40],
        ]);
        const countOf = ({ kind, quantity }: (typeof whole.given)[number]) =>
          quantity === '' ? Number(kind !== 'letters') : (counted.get(quantity) ?? 0);
        const pieces = whole.given.reduce((sum, one) => sum + countOf(one), 0);
        const json = [...files].find(([name]) => name.endsWith('finding-aid.json'))?.[1].toString() ?? '{}';
        const extents: { unit: string; quantity: number }[] = JSON.parse(json).collection.extents;
        // Where nothing is counted and nothing lies in a box, the rows of the list stand in.
        const stated = extents.find(({ unit }) => /^items?$/.test(unit))?.quantity ?? 0;
        expect(pieces === 0 ? [0, whole.given.length] : [pieces]).toContain(stated);
        expect(inside.includes('reasonzqx')).toBe(whole.despite);

        if (stays.some((one) => Object.keys(one.files).length > 0)) withCopies += 1;
        mostMarks = Math.max(mostMarks, hidden.length);
      } finally {
        rmSync(dirname(folder), { recursive: true });
      }
    }),
    { numRuns: RUNS },
  );
  // The catalogues were not empty of what is looked for.
  expect(withCopies).toBeGreaterThan(RUNS / 4);
  expect(mostMarks).toBeGreaterThan(20);
});

test('two families who give the same, and keep other things, give the same bytes', {
  timeout: 600_000,
}, async () => {
  const others = fc.array(aThing, { minLength: 1, maxLength: 3 });
  await fc.assert(
    fc.asyncProperty(aCatalogue, others, async (one, held) => {
      // Settled numbers are in pencil on folders, so that a gap cannot be closed.
      const unsettled = { ...one, settled: false, zip: false };
      const [mine, theirs] = [
        await catalogueOf(unsettled),
        await catalogueOf({ ...unsettled, held, heldFirst: !one.heldFirst }),
      ];
      try {
        const [first, second] = [
          await packageOf(unsettled, mine.folder),
          await packageOf(unsettled, theirs.folder),
        ];
        expect([...second.keys()]).toEqual([...first.keys()]);
        for (const [name, bytes] of first)
          expect([name, second.get(name)?.toString()]).toEqual([name, bytes.toString()]);
      } finally {
        rmSync(dirname(mine.folder), { recursive: true });
        rmSync(dirname(theirs.folder), { recursive: true });
      }
    }),
    { numRuns: RUNS / 5 },
  );
});
