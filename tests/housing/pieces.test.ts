import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KINDS, readKind } from '../../src/arrange/index.ts';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { FORMS_BY_KIND } from '../../src/housing/forms.ts';
import { FORMS, SHELVES } from '../../src/housing/model.ts';
import { partFolder } from '../../src/housing/part-folder.ts';
import { pieceOf } from '../../src/housing/piece.ts';
import { sizeFindings } from '../../src/housing/size-findings.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import type { BroadGroup, Kind } from '../../src/kinds/kinds.ts';
import { someThing } from '../support/catalogue.ts';

const US = stockFrom(housingSettings.parse({}), 'US');
const piece = (over: Partial<Thing>) => pieceOf(someThing({ row: 2, ...over }));
const formOf = (over: Partial<Thing>) => piece(over).form;

/** The broad groups of what is not paper, or not a plain sheet of it. */
const NO_PAPERS: ReadonlySet<BroadGroup> = new Set([
  'Photographs',
  'Film and sound',
  'Digital files',
  'Textiles and objects',
]);
const hasRow = ({ one }: Kind) => FORMS_BY_KIND.has(one.toLowerCase());

describe('forms of kinds', () => {
  it.each(KINDS.filter(hasRow))('$one has one', ({ one, many }) => {
    const usual = FORMS_BY_KIND.get(one.toLowerCase());
    if (usual === undefined) throw new Error(`“${one}” has no form.`);
    expect(FORMS).toContain(usual.form);
    expect(SHELVES).toContain(usual.shelf);
    expect(usual.source).not.toBe('');
    expect(usual.size.long).toBeGreaterThanOrEqual(usual.size.short);
    // Only a file takes no place.
    expect(usual.each > 0 && usual.size.short > 0).toBe(one !== 'digital file');
    expect(formOf({ kind: many, quantity: 2 })).toBe(usual.form);
  });

  it('may be left out for kinds of paper, which lie as a sheet does', () => {
    const others = KINDS.filter((kind) => !hasRow(kind) && NO_PAPERS.has(kind.group));
    expect(
      others.map(({ one }) => one),
      'These kinds are no papers, and need a row in src/housing/forms.ts, which says how they lie',
    ).toEqual([]);
    // Such as "recital book", which ends in the name of something else.
    const astray = KINDS.filter((kind) => !hasRow(kind) && !NO_PAPERS.has(kind.group)).filter(
      ({ one, many }) => [one, many].some((word) => formOf({ kind: word }) !== 'sheet'),
    );
    expect(
      astray.map(({ one }) => one),
      'Without a row in src/housing/forms.ts these lie as what their last word names, not as a sheet: give them one',
    ).toEqual([]);
  });

  it('are given only for kinds and for words of kinds', () => {
    const strange = [...FORMS_BY_KIND.keys()].filter((word) => readKind(word) === undefined);
    expect(strange).toEqual([]);
  });

  // Common practice: nothing of these lies in a paper folder.
  it.each([
    ['film reel', 'film', 'film'],
    ['glass plate', 'glass', 'glass'],
    ['gramophone record', 'disc', 'discs'],
    ['sound tape', 'tape', 'tapes'],
    ['quilt', 'textile', 'textiles'],
    ['medal', 'object', 'objects'],
    ['diary', 'bound', 'volumes'],
    ['letter', 'sheet', 'papers'],
    ['photograph', 'photograph', 'photographs'],
    ['ambrotypes', 'glass', 'glass'],
    ['daguerreotype (cased)', 'glass', 'glass'],
    ['lantern slides', 'glass', 'glass'],
    ['old brown ledger', 'bound', 'volumes'],
    ['bundle of letters', 'sheet', 'papers'],
    ['stereograph', 'mounted', 'photographs'],
    ['framed wedding certificate', 'framed', 'oversize'],
  ])('a %s is %s, on the shelf for %s', (kind, form, shelf) => {
    expect(piece({ kind })).toMatchObject({ form, shelf });
  });

  it('is a paper where the kind is blank or not known, unless the size is that of an object', () => {
    expect(piece({})).toMatchObject({ form: 'sheet', shelf: 'papers' });
    expect(piece({ kind: 'gewgaw' })).toMatchObject({ form: 'sheet', shelf: 'papers' });
    expect(formOf({ size: '6 x 4 x 4 in' })).toBe('object');
  });
});

describe('words that change the form', () => {
  it.each<[string, Partial<Thing>]>([
    ['framed', { kind: 'photograph', size: '14 x 14 in, framed' }],
    ['framed', { kind: 'photograph', condition: 'framed, the glass broken' }],
    ['framed', { kind: 'certificate', condition: 'in its old frame' }],
    ['framed', { kind: 'account book', size: 'frame 16 x 12 in' }],
    ['framed', { kind: 'mounted photograph', condition: 'framed' }],
    ['framed', { kind: 'photograph', title: 'Thomas Quill at the ferry, framed' }],
    ['framed', { kind: 'photograph', title: 'Framed portrait of Hester' }],
    ['framed', { kind: 'certificate', size: 'A3, in a black frame' }],
    ['framed', { kind: 'certificate', condition: 'gilt frame, chipped' }],
    ['framed', { kind: 'painting', title: 'Gilt-framed painting of the ferry' }],
    ['framed', { kind: 'painting', title: 'The ferry at Hollin, in a heavy gilt frame' }],
    ['framed', { kind: 'painting', title: 'Oil painting of the orchard' }],
    ['framed', { kind: 'oil painting' }],
    ['framed', { kind: 'sampler', title: 'Framed sampler by Hester Quill' }],
    ['framed', { kind: 'sampler', title: 'Sampler in frame, 1852' }],
    ['framed', { title: 'Framed map of the river' }],
    ['glass', { kind: 'photograph', condition: 'cased, hinge broken' }],
    ['glass', { kind: 'tintype', title: 'Abel Stroud, in a leather case' }],
    ['mounted', { kind: 'photograph', condition: 'mounted on card' }],
    ['mounted', { kind: 'photograph', size: 'cabinet card' }],
    ['mounted', { kind: 'photograph', title: 'Portrait of Hester in an oval mount' }],
    ['rolled', { kind: 'map', size: '20 in by 7 ft, rolled' }],
    ['rolled', { kind: 'map', condition: 'rolled now, but it was folded for years' }],
    ['rolled', { kind: 'map', condition: 'on rollers, varnish flaking' }],
    ['glass', { kind: 'negative', size: 'glass, 4 x 5 in' }],
    ['glass', { kind: 'photograph', title: 'Daguerreotype of Abel Stroud' }],
    ['negative', { kind: 'photograph', size: '4x5 negative' }],
    ['slide', { kind: 'photograph', size: '35 mm slide' }],
    ['negative', { kind: 'negatives', size: '35 mm' }],
    ['slide', { kind: 'slides', size: '35 mm' }],
    ['film', { kind: 'film', size: '35 mm' }],
    ['object', { kind: 'coin', size: '35 mm' }],
    ['disc', { kind: 'recording', size: '78' }],
    ['bound', { kind: 'photographs', size: 'album, 30 x 25 cm' }],
  ])('%s: %o', (form, over) => expect(formOf(over)).toBe(form));

  // What is denied, over, planned, or said of something else changes nothing.
  it.each<[string, Partial<Thing>]>([
    ['photograph', { kind: 'photograph', size: '8 x 10 in, unframed' }],
    ['photograph', { kind: 'photograph', condition: 'un-framed' }],
    ['photograph', { kind: 'photograph', condition: 'formerly framed' }],
    ['photograph', { kind: 'photograph', condition: 'was framed once' }],
    ['photograph', { kind: 'photograph', condition: 'not framed' }],
    ['photograph', { kind: 'photograph', condition: 'no longer framed' }],
    ['photograph', { kind: 'photograph', condition: 'to be framed' }],
    ['photograph', { kind: 'photograph', condition: 'removed from its frame' }],
    ['photograph', { kind: 'photograph', condition: 'faded, frame removed' }],
    ['photograph', { kind: 'photograph', title: 'Ada in front of a frame house' }],
    ['photograph', { kind: 'photograph', title: 'Portrait of Ada (gilt frame removed)' }],
    ['photograph', { kind: 'photograph', condition: 'removed from gilt frame' }],
    ['photograph', { kind: 'photograph', title: 'The bookcase at Applegarth' }],
    ['sheet', { kind: 'letter', title: 'Letter about the picture in the gilt frame' }],
    ['sheet', { kind: 'receipt', title: 'Receipt for a map in a frame' }],
    ['sheet', { title: 'Timber-framed barn, sale particulars' }],
    ['photograph', { kind: 'photograph', condition: 'unmounted' }],
    ['photograph', { kind: 'photograph', condition: 'removed from mount' }],
    ['photograph', { kind: 'photograph', title: 'Mounted police at Applegarth' }],
    ['photograph', { kind: 'photograph', title: 'Ada framed by apple boughs' }],
    ['photograph', { kind: 'photograph', title: 'The timber framed barn' }],
    ['photograph', { kind: 'photograph', title: 'Peter with a glass of cider' }],
    ['photograph', { kind: 'photograph', title: 'A picnic, from the album' }],
    ['photograph', { kind: 'photograph', condition: 'from an album' }],
    ['photograph', { kind: 'photograph', condition: 'negative lost' }],
    ['sheet', { kind: 'map', condition: 'formerly rolled' }],
    ['sheet', { kind: 'map', condition: 'was rolled, now flat' }],
    ['sheet', { kind: 'map', condition: 'unrolled' }],
    ['sheet', { kind: 'map', condition: 'mounted on linen' }],
    ['sheet', { kind: 'letter', condition: 'rolled edges' }],
    ['sheet', { kind: 'letter', title: 'Letter about the album, framed by Ada' }],
    ['negative', { kind: 'negative', title: 'The old sign, framed' }],
    ['slide', { kind: 'slides', size: 'glass mounts' }],
  ])('not so, %s: %o', (form, over) => expect(formOf(over)).toBe(form));
});

// Common practice: nothing of these lies in a folder. Where the kind is blank, the title may name the thing.
describe('a title that names a thing', () => {
  it.each([
    ['Baby shoes of Ruth', 'object', 'objects'],
    ["Hester's blue teapot", 'object', 'objects'],
    ['Gas mask in its box', 'object', 'objects'],
    ['Rag doll', 'object', 'objects'],
    ['Box of buttons', 'object', 'objects'],
    ["Dr. Averill's pill bottle", 'object', 'objects'],
    ['Pocket watch given to Samuel', 'object', 'objects'],
    ['Floppy disks with the accounts', 'digital', 'objects'],
    ['USB stick', 'digital', 'objects'],
    ['CDs of the reunion', 'digital', 'objects'],
    ['Family Bible', 'bound', 'volumes'],
    ['Photograph album of the ferry', 'bound', 'volumes'],
    ['Christening gown', 'textile', 'textiles'],
    ['Negatives from the flood', 'negative', 'photographs'],
    ['Cased daguerreotype of Abel Stroud', 'glass', 'glass'],
  ])('%s is %s, on the shelf for %s', (title, form, shelf) => {
    expect(piece({ title })).toMatchObject({ form, shelf });
    expect(piece({ title, kind: 'gewgaw' })).toMatchObject({ form, shelf });
    expect(partFolder([piece({ title })], US).parts).toEqual([]);
  });

  it.each([
    'Letter about the teapot',
    'Photograph of a doll',
    'Receipt for a clock',
    'Watch repair bill',
    'Copy of the family Bible record',
    'Diary (photocopy)',
    'Pages from an album',
    'Box of letters',
    'Letters in a biscuit tin',
    'Hester Bell',
    'Film programme',
    'Record of service',
    'Map of the ring road',
  ])('%s is paper still', (title) => expect(formOf({ title })).toBe('sheet'));

  it('changes nothing where the kind is known', () => {
    expect(formOf({ kind: 'letter', title: 'Teapot' })).toBe('sheet');
    expect(formOf({ kind: 'photograph', title: 'Baby shoes' })).toBe('photograph');
    // "Object" leaves open how large it is.
    expect(piece({ kind: 'object', title: 'Teapot' }).thickness).toBeGreaterThan(
      piece({ kind: 'object' }).thickness,
    );
  });

  it.each([
    ['baby shoes', 'object'],
    ['teapot', 'object'],
    ['floppies', 'digital'],
    ['floppy disks', 'digital'],
    ['CD', 'digital'],
    ['gas masks', 'object'],
    ['christening gown', 'textile'],
    ['ring binder', 'bound'],
  ])('a kind of its own, %s, is %s', (kind, form) => expect(formOf({ kind })).toBe(form));

  it('takes the room of what files are on, and none for files', () => {
    expect(piece({ kind: 'digital file', size: '2 MB' }).thickness).toBe(0);
    expect(piece({ kind: 'digital file', size: 'CD' }).thickness).toBe(10);
  });

  it('of a case makes something too thick for an enclosure of a plate', () => {
    const cased = piece({ kind: 'photograph', title: 'Daguerreotype of Abel Stroud', size: 'sixth plate' });
    expect(partFolder([cased], US).apart).toMatchObject([{ shelf: 'glass', holders: 0 }]);
  });
});

describe('thickness', () => {
  // 0.1 mm a sheet, three times that where it was folded in three; two boards of 2 mm. Arithmetic.
  it('is that of the sheets, where these are counted', () => {
    expect(piece({ kind: 'letter', sheets: 6 }).thickness).toBeCloseTo(1.8, 6);
    expect(piece({ kind: 'business paper', sheets: 100 }).thickness).toBeCloseTo(10, 6);
    expect(piece({ kind: 'diary', sheets: 400 }).thickness).toBeCloseTo(44, 6);
    // A manuscript of 400 sheets is divided among three folders of 19 mm, not laid apart.
    expect(partFolder([piece({ kind: 'manuscript', sheets: 400 })], US).parts).toMatchObject([
      { folders: 3 },
    ]);
  });

  // 0.15 mm of sleeve to each print of 0.3 mm: arithmetic.
  it('of photographs counts their sleeves, where they have any', () => {
    expect(piece({ kind: 'photographs', quantity: 100 }).thickness).toBeCloseTo(45, 6);
    expect(piece({ kind: 'photograph', size: '16 x 20 in' }).thickness).toBeCloseTo(0.3, 6);
  });

  it('of prints in an unknown number is that of several', () => {
    const unread = piece({ kind: 'photograph', quantityUnread: true });
    expect(unread.thickness).toBeGreaterThan(5 * piece({ kind: 'photograph' }).thickness);
  });

  // A ream of 500 sheets is about 51 mm thick: 0.1 mm a sheet. A receipt is one sheet.
  it('of 400 single sheets is 40 mm', () => {
    expect(piece({ kind: 'receipts', quantity: 400 }).thickness).toBeCloseTo(40, 6);
  });

  // CHECKS: a folder takes about 19 mm; practice puts some 30 letters with their creases into it.
  it('of 30 letters fills a folder, of 40 more than one', () => {
    expect(piece({ kind: 'letters', quantity: 30 }).thickness).toBeLessThanOrEqual(19);
    expect(piece({ kind: 'letters', quantity: 40 }).thickness).toBeGreaterThan(19);
  });

  it('is the third measure, where there is one', () => {
    expect(piece({ kind: 'Bible', size: '12 x 10 x 4 in' }).thickness).toBeCloseTo(101.6, 6);
    expect(piece({ kind: 'books', quantity: 3, size: '20 x 15 x 2 cm' }).thickness).toBeCloseTo(60, 6);
  });

  it('is that of a bundle, where leaves cannot be so thick', () => {
    expect(piece({ kind: 'letters', quantity: 50, size: '25 x 20 x 4 cm' }).thickness).toBeCloseTo(40, 6);
  });

  it('of a small volume is less than of a large one', () => {
    const [small, large] = ['3 x 4 in', '8 x 13 in'].map((size) => piece({ kind: 'diary', size }).thickness);
    expect(small).toBeLessThan(large ?? 0);
  });

  it('of what is as high as it is wide is not forgotten', () => {
    expect(piece({ kind: 'object', size: '11 in across' }).thickness).toBeCloseTo(279.4, 6);
    const bell = { kind: 'object', title: 'The ferry bell', size: '11 in across' };
    expect(piece(bell).thickness).toBeCloseTo(279.4, 6);
    expect(piece({ ...bell, title: 'Ferry token' }).thickness).toBeLessThan(20);
  });

  it('of letters that nobody counted is that of several', () => {
    const [one, several] = [piece({ kind: 'letter' }), piece({ kind: 'letters' })];
    expect(several.thickness).toBeGreaterThan(one.thickness);
  });

  it('grows with the quantity, and every form has its place, whatever the cells say', () => {
    const words = fc.oneof(
      fc.constantFrom(
        ...KINDS.map(({ one }) => one),
        'gewgaw',
        'framed',
        'A4',
        '35 mm',
        '12',
        'large',
        'rolled',
      ),
      fc.string({ maxLength: 20 }),
    );
    const cells = fc.record(
      { kind: words, size: words, condition: words, title: words },
      { requiredKeys: ['title'] },
    );
    fc.assert(
      fc.property(cells, fc.integer({ min: 1, max: 500 }), (known, quantity) => {
        const [one, more] = [piece({ ...known, quantity }), piece({ ...known, quantity: quantity * 2 })];
        expect(more.thickness).toBeGreaterThanOrEqual(one.thickness);
        expect(one.size.long).toBeGreaterThanOrEqual(one.size.short);
        expect(one.thickness > 0 || one.form === 'digital').toBe(true);
        expect(SHELVES).toContain(one.shelf);
      }),
      { numRuns: 500 },
    );
  });
});

describe('sizeFindings', () => {
  const rules = (over: Partial<Thing>) => sizeFindings([someThing({ row: 7, ...over })]);

  it('says what cannot be, and stops the work', () => {
    const [finding, ...others] = rules({ kind: 'letter', size: '-5 x 10 cm' });
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      rule: 'list.size-impossible',
      weight: 'must',
      place: { file: 'list.csv', row: 7, column: 'size' },
    });
    expect(finding?.found).toContain('“-5 x 10 cm”');
  });

  it('says which words it does not know, and what may be meant', () => {
    const [finding] = rules({ kind: 'photograph', size: 'cabinet crad' });
    expect(finding).toMatchObject({ rule: 'list.size-unknown', weight: 'should' });
    expect(finding?.advice).toBe('Is “cabinet card” meant?');
  });

  it('says each once, however many rows have it', () => {
    const things = [3, 4, 5].map((row) => someThing({ row, size: 'so-so' }));
    expect(sizeFindings(things)).toHaveLength(1);
    expect(sizeFindings(things)[0]).toMatchObject({ place: { row: 3 } });
    expect(sizeFindings(things)[0]?.found).toContain('2 more rows');
  });

  it('stops nothing for a size that is only too large', () => {
    expect(rules({ kind: 'map', size: '20 ft x 3 ft' })).toMatchObject([
      { rule: 'list.size-unknown', weight: 'should' },
    ]);
    expect(rules({ kind: 'film reel', size: '35 mm x 300 ft' })).toEqual([]);
  });

  it('says once which units were assumed, and where', () => {
    const sizes = ['16x20', '18 x 24', '8 x 10 in', '24x36', '16x20'];
    const found = sizeFindings(sizes.map((size, index) => someThing({ row: index + 2, size, kind: 'map' })));
    expect(found).toMatchObject([{ rule: 'list.size-assumed', weight: 'consider', place: { row: 2 } }]);
    expect(found[0]?.found).toBe(
      'The sizes of 4 rows have no unit. They are taken in inches: “16x20” (row 2), “24x36” (row 5); in centimetres: “18 x 24” (row 3).',
    );
  });

  it('has nothing to say of good sizes, of blank ones, and of the bytes of a file', () => {
    expect(rules({ size: '8 x 10 in' })).toEqual([]);
    expect(rules({})).toEqual([]);
    expect(rules({ kind: 'digital file', size: '2 MB' })).toEqual([]);
  });
});
