import { describe, expect, it } from 'vitest';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import type { Form, Shelf, Size } from '../../src/housing/model.ts';
import { partFolder, sleeveFor } from '../../src/housing/part-folder.ts';
import { type Piece, pieceOf } from '../../src/housing/piece.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { someThing } from '../support/catalogue.ts';

const US = stockFrom(housingSettings.parse({}), 'US');
const NO = stockFrom(housingSettings.parse({}), 'NO');

const LETTER: Size = { long: 279.4, short: 215.9 };
const inches = (long: number, short: number): Size => ({ long: long * 25.4, short: short * 25.4 });

interface Wanted {
  size?: Size;
  shelf?: Shelf;
  quantity?: number;
}

function piece(
  form: Form,
  thickness: number,
  { size = LETTER, shelf = 'papers', quantity }: Wanted = {},
): Piece {
  const thing: Thing = {
    row: 2,
    title: 'A thing of the Quill family',
    people: [],
    creators: [],
    places: [],
    copies: [],
    languages: [],
    extra: [],
    ...(quantity !== undefined && { quantity }),
  };
  return { thing, form, shelf, size, thickness };
}

const sizes = (parts: readonly { pieces: readonly Piece[] }[]) => parts.map(({ pieces }) => pieces.length);

// Every rule here is common practice of the trade with no single source, unless another source is named.
describe('a folder', () => {
  it('takes 19 mm of papers, and a second one the rest', () => {
    const parts = (count: number) =>
      partFolder(
        new Array(count).fill(undefined).map(() => piece('sheet', 0.1)),
        US,
      ).parts;
    // Arithmetic: 190 sheets of 0.1 mm are 19 mm. In binary fractions, their sum is a little more.
    expect(sizes(parts(190))).toEqual([190]);
    expect(sizes(parts(191))).toEqual([190, 1]);
    expect(parts(190)[0]?.thickness).toBe(20);
  });

  it('takes what the settings say instead', () => {
    const stock = stockFrom(housingSettings.parse({ thickness: 10 }), 'US');
    const pieces = [1, 2, 3].map(() => piece('sheet', 4));
    expect(sizes(partFolder(pieces, stock).parts)).toEqual([2, 1]);
  });

  it('keeps the order, within it and from one to the next', () => {
    const pieces = [9, 9, 2, 9, 1, 9, 9].map((thickness) => piece('sheet', thickness));
    const { parts } = partFolder(pieces, US);
    expect(parts.flatMap((part) => part.pieces)).toEqual(pieces);
    // The thin ones are not moved forward into the room that is left.
    expect(sizes(parts)).toEqual([2, 3, 2]);
  });

  it('is the smallest that covers all of its content', () => {
    const holders = (...long: number[]) =>
      partFolder(
        long.map((one) => piece('sheet', 1, { size: inches(one, 8.5) })),
        US,
      ).parts.map(({ holder }) => holder.id);
    expect(holders(11)).toEqual(['folder-letter']);
    expect(holders(14)).toEqual(['folder-legal']);
    expect(holders(11, 14, 11)).toEqual(['folder-legal']);
  });

  // ISO 216: A4 is 297 × 210 mm; a letter folder is 298 mm long, from memory.
  it('leaves a margin, so that A4 comes into a legal folder, or into one of its own size', () => {
    const a4 = [piece('sheet', 1, { size: { long: 297, short: 210 } })];
    expect(partFolder(a4, US).parts[0]?.holder.id).toBe('folder-legal');
    expect(partFolder(a4, NO).parts[0]?.holder.id).toBe('folder-a4');
  });

  it('is not shared by two things that no folder covers together', () => {
    const [folder] = US.holders;
    if (folder === undefined) throw new Error('There are no folders.');
    const wide = { ...folder, id: 'wide', inside: { long: 300, short: 100 } };
    const square = { ...folder, id: 'square', inside: { long: 200, short: 200 } };
    const pieces = [piece('sheet', 1, { size: wide.inside }), piece('sheet', 1, { size: square.inside })];
    const { parts, apart } = partFolder(pieces, { ...US, holders: [wide, square] });
    expect(parts.map(({ holder }) => holder.id)).toEqual(['wide', 'square']);
    expect(apart).toEqual([]);
  });

  it('holds mounted photographs only, or none, and never a frame', () => {
    const pieces = (['sheet', 'mounted', 'photograph', 'framed', 'mounted', 'sheet'] as const).map((form) =>
      piece(form, 3),
    );
    const { parts, apart } = partFolder(pieces, US);
    const forms = parts.map((part) => part.pieces.map(({ form }) => form));
    expect(forms).toEqual([
      ['sheet', 'photograph', 'sheet'],
      ['mounted', 'mounted'],
    ]);
    expect(apart).toMatchObject([{ piece: pieces[3], shelf: 'oversize', holders: 0 }]);
  });

  it('holds loose photographs with papers, each in a sleeve', () => {
    const print = piece('photograph', 0.3, { size: inches(7, 5), quantity: 6 });
    const { parts, apart } = partFolder([piece('sheet', 1), print], US);
    expect(sizes(parts)).toEqual([2]);
    expect(apart).toEqual([]);
    expect(sleeveFor(print, US)?.id).toBe('photograph-sleeve-5x7');
    expect(sleeveFor(piece('sheet', 1), US)).toBeUndefined();
  });
});

describe('a bundle that is one row', () => {
  it('takes as many folders as its things need, and stands between what comes before and after', () => {
    // 100 letters of 0.8 mm: 23 of them to a folder of 19 mm, so 5 folders, arithmetic.
    const bundle = piece('sheet', 80, { quantity: 100 });
    const pieces = [piece('sheet', 1), bundle, piece('sheet', 1)];
    const { parts } = partFolder(pieces, US);
    expect(parts.map(({ folders, pieces: own }) => [folders, own])).toEqual([
      [1, [pieces[0]]],
      [5, [bundle]],
      [1, [pieces[2]]],
    ]);
    expect(parts[1]?.thickness).toBe(80 + 5 * (parts[1]?.holder.wall ?? 0));
  });

  it('of volumes stands with the volumes, of pamphlets stays in folders', () => {
    const diaries = piece('bound', 48, { quantity: 4, size: inches(4, 3), shelf: 'volumes' });
    const pamphlets = piece('bound', 48, { quantity: 24, size: inches(8, 5) });
    const { parts, apart } = partFolder([diaries, pamphlets], US);
    expect(apart).toMatchObject([{ piece: diaries, shelf: 'volumes', why: 'too many for a folder' }]);
    // 2 mm each, so 9 in a folder: arithmetic.
    expect(parts.map(({ pieces, folders }) => [pieces, folders])).toEqual([[[pamphlets], 3]]);
  });
});

describe('what lies apart', () => {
  const alone = (one: Piece, stock = US) => {
    const { parts, apart, nowhere } = partFolder([one], stock);
    expect([parts, nowhere, apart.length]).toEqual([[], [], 1]);
    return apart[0];
  };

  it('is an album or a book that is thicker than a folder may be', () => {
    const album = alone(piece('bound', 30, { shelf: 'volumes' }));
    expect(album).toMatchObject({
      shelf: 'volumes',
      holder: undefined,
      holders: 0,
      why: 'too thick for a folder',
    });
  });

  it('is a frame, however thin: flat, or packed as an object where it is too thick for a flat box', () => {
    const why = 'a frame lies flat, in no folder';
    // ISO 216: A3 is 420 × 297 mm.
    const a3 = { long: 420, short: 297 };
    expect(alone(piece('framed', 3, { size: a3 }), NO)).toMatchObject({ shelf: 'oversize', holders: 0, why });
    expect(alone(piece('framed', 25))).toMatchObject({ shelf: 'oversize', why });
    expect(alone(piece('framed', 90))).toMatchObject({ shelf: 'objects', why });
  });

  it('is what is too large for the folders, flat, in a large one', () => {
    const apart = alone(piece('sheet', 0.2, { size: inches(19, 15) }));
    expect(apart).toMatchObject({
      holder: { id: 'folder-16x20' },
      holders: 1,
      shelf: 'oversize',
      why: 'too large for its folder',
    });
    // ISO 216: A3 is 420 × 297 mm.
    expect(alone(piece('sheet', 0.2, { size: { long: 420, short: 297 } }), NO)?.holder?.id).toBe('folder-a3');
    // Never thicker than such a folder may be, 6 mm: 20 posters of 0.5 mm want two.
    expect(alone(piece('sheet', 10, { size: inches(28, 22), quantity: 20 }))?.holders).toBe(2);
  });

  it('is what is larger than any folder', () => {
    expect(alone(piece('sheet', 0.2, { size: inches(52, 40) }))).toMatchObject({
      shelf: 'oversize',
      holders: 0,
      why: 'larger than any folder',
    });
    expect(alone(piece('bound', 10, { size: inches(17, 14), shelf: 'volumes' }))).toMatchObject({
      shelf: 'volumes',
      why: 'larger than any folder',
    });
  });

  it.each<[Form, Shelf, Size, string]>([
    ['negative', 'photographs', { long: 36, short: 24 }, 'page-35'],
    ['negative', 'photographs', { long: 60, short: 60 }, 'page-120'],
    ['negative', 'photographs', inches(5, 4), 'negative-4x5'],
    ['slide', 'photographs', inches(2, 2), 'page-slides'],
    ['glass', 'glass', inches(7, 5), 'four-flap-5x7'],
    ['glass', 'glass', inches(4, 3.25), 'four-flap-3.25x4.25'],
    ['disc', 'discs', inches(12, 12), 'record-sleeve-12'],
    ['disc', 'discs', inches(10, 10), 'record-sleeve-10'],
    ['film', 'film', inches(7, 7), 'film-can-7'],
    ['tape', 'tapes', inches(5, 5), 'tape-case-5'],
    ['tape', 'tapes', inches(3, 3), 'tape-case-3'],
    // IEC 60094-7 for the cassette, IEC 60774-1 for the video cassette; both from memory.
    ['tape', 'tapes', { long: 100, short: 64 }, 'cassette-case'],
    ['tape', 'tapes', { long: 188, short: 104 }, 'video-case'],
    ['object', 'objects', { long: 25, short: 25 }, 'envelope-small'],
  ])('is a %s, on the shelf of %s, in what suits it', (form, shelf, size, id) => {
    const apart = alone(piece(form, 1, { size, shelf }));
    expect(apart).toMatchObject({ shelf, holder: { id }, holders: 1 });
    expect(apart?.why).toMatch(/ kept apart from paper$/);
  });

  it.each<[Form, Shelf]>([
    ['textile', 'textiles'],
    ['object', 'objects'],
    ['rolled', 'rolls'],
    ['digital', 'objects'],
  ])('is a %s, on the shelf of %s, without a folder', (form, shelf) => {
    const apart = alone(piece(form, 14, { shelf }));
    expect(apart).toMatchObject({ shelf, holders: 0 });
    expect(apart?.boxes.length).toBeGreaterThan(0);
    expect(apart?.boxes.every(({ takes }) => takes.includes(shelf))).toBe(true);
  });

  it('needs a sleeve for each thing, or a page for each twenty slides', () => {
    const slides = piece('slide', 196, { size: inches(2, 2), shelf: 'photographs', quantity: 140 });
    expect(alone(slides)?.holders).toBe(7);
    const plates = piece('glass', 24, { size: inches(7, 5), shelf: 'glass', quantity: 12 });
    expect(alone(plates)?.holders).toBe(12);
    const tokens = piece('object', 126, { size: { long: 25, short: 25 }, shelf: 'objects', quantity: 63 });
    // 2 mm each, 6 in an envelope of 12 mm: arithmetic.
    expect(alone(tokens)?.holders).toBe(11);
  });

  it('is nothing digital that has no carrier: it lies nowhere', () => {
    const file = piece('digital', 0, { shelf: 'objects' });
    expect(partFolder([file], US)).toEqual({ parts: [], apart: [], nowhere: [file] });
  });
});

describe('papers whose size nobody noted', () => {
  const row = (kind: string, size?: string) =>
    pieceOf(someThing({ row: 2, kind, ...(size !== undefined && { size }) }));
  const folderOf = (kind: string, stock: typeof NO, size?: string) =>
    partFolder([row(kind, size)], stock).parts[0]?.holder.id;

  // Where folders are A4, so is paper (ISO 216); US legal is 14 × 8½ in.
  it.each(['legal paper', 'will', 'adoption papers', 'family tree'])(
    '%s: A4 where folders are A4',
    (kind) => {
      expect(folderOf(kind, NO)).toBe('folder-a4');
      expect(folderOf(kind, US)).toBe('folder-legal');
    },
  );

  it('lie with letters in one folder, whichever comes first', () => {
    for (const kinds of [
      ['will', 'letter'],
      ['letter', 'will'],
    ])
      expect(
        partFolder(
          kinds.map((kind) => row(kind)),
          NO,
        ),
      ).toMatchObject({ apart: [], parts: [{ holder: { id: 'folder-a4' } }] });
  });

  it('noted as legal, are as large as that', () => {
    expect(folderOf('will', NO, '14 x 8.5 in')).toBeUndefined();
    expect(partFolder([row('will', '14 x 8.5 in')], NO).apart[0]?.why).toBe('too large for its folder');
  });

  it('say that a size was assumed where that is why they lie apart', () => {
    const whyOf = (size?: string) => partFolder([row('map', size)], NO).apart[0]?.why;
    // 36 × 24 in, the usual map of the table of kinds.
    expect(whyOf()).toBe('too large for its folder; no size is noted, and 610 × 914 mm was assumed');
    expect(whyOf('as long as an oar')).toBe(
      'too large for its folder; its size is not known, and 610 × 914 mm was assumed',
    );
    expect(whyOf('24 x 36 in')).toBe('too large for its folder');
  });
});
