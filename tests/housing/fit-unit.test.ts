import { describe, expect, it } from 'vitest';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import type { Form, Shelf, Size } from '../../src/housing/model.ts';
import { partFolder } from '../../src/housing/part-folder.ts';
import type { Piece } from '../../src/housing/piece.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { inLots, unitOfApart, unitOfPart } from '../../src/housing/unit-of.ts';

const US = stockFrom(housingSettings.parse({}), 'US');

function piece(form: Form, shelf: Shelf, size: Size, thickness: number, quantity = 1): Piece {
  const none = { people: [], creators: [], places: [], copies: [], languages: [], extra: [] };
  return {
    thing: { row: 2, title: 'A thing', quantity, ...none },
    form,
    shelf,
    size,
    thickness,
  };
}

function apartUnit(one: Piece, stock = US) {
  const [apart] = partFolder([one], stock).apart;
  if (apart === undefined) throw new Error('It does not lie apart.');
  return unitOfApart(apart);
}

/** A stock in which one box serves a shelf, so that the arithmetic can be followed. */
const withBox = (inside: string, shelf: Shelf, flat = true) =>
  stockFrom(housingSettings.parse({ own: [{ name: 'Chest', inside, flat, for: [shelf] }] }), 'US');

describe('on the shelf', () => {
  it('a folder is as large as it is outside, and as thick as it is with its content', () => {
    const sheets = [1, 2].map(() => piece('sheet', 'papers', { long: 200, short: 100 }, 4));
    const [part] = partFolder(sheets, US).parts;
    if (part === undefined) throw new Error('There is no folder.');
    expect(unitOfPart(part)).toEqual({
      shelf: 'papers',
      outside: part.holder.outside,
      thickness: 8 + part.holder.wall,
    });
  });

  // Arithmetic: on a floor of 600 × 400 mm there are 3 × 2 of 200 × 200 mm, and 5 × 5 of 120 × 80 mm; turned, 7 × 3 would be fewer.
  it.each([
    [{ long: 200, short: 200 }, 6],
    [{ long: 120, short: 80 }, 25],
    [{ long: 500, short: 300 }, 1],
  ])('things of %j in a flat box take their share of a layer', (size, share) => {
    const stock = withBox('605 x 405 x 150 mm', 'volumes');
    expect(apartUnit(piece('bound', 'volumes', size, 42), stock).thickness).toBeCloseTo(42 / share);
  });

  it('things in an upright box stand side by side, but never one above the other', () => {
    const stock = withBox('605 x 405 x 150 mm', 'volumes', false);
    // Three times 200 mm, or seven times 80 mm, along 600 mm: arithmetic.
    expect(apartUnit(piece('bound', 'volumes', { long: 200, short: 200 }, 42), stock).thickness).toBeCloseTo(
      14,
    );
    expect(apartUnit(piece('bound', 'volumes', { long: 120, short: 80 }, 42), stock).thickness).toBeCloseTo(
      6,
    );
  });

  it('a thing is never thinner than it is, where a box is wide enough for it but too shallow', () => {
    const stock = withBox('605 x 405 x 150 mm', 'objects');
    const tall = piece('object', 'objects', { long: 200, short: 200 }, 180);
    expect(apartUnit(tall, stock).thickness).toBe(180);
  });

  // Arithmetic: 140 slides are 7 pages of one slide's thickness, not a pile of 140.
  it('slides lie side by side in their pages', () => {
    const { outside, thickness } = apartUnit(
      piece('slide', 'photographs', { long: 50.8, short: 50.8 }, 210, 140),
    );
    expect(outside.long).toBeGreaterThan(5 * 50.8);
    expect(thickness).toBeGreaterThan(7 * 1.5);
    expect(thickness).toBeLessThan(7 * 2);
  });

  it('glass plates are as thick as they are with their enclosures', () => {
    const { shelf, outside, thickness } = apartUnit(
      piece('glass', 'glass', { long: 177.8, short: 127 }, 24, 12),
    );
    expect(shelf).toBe('glass');
    expect(outside.long).toBeGreaterThan(177.8);
    // 12 of 2 mm and 12 enclosures of 1 mm: arithmetic.
    expect(thickness).toBeCloseTo(36);
  });

  it('a large sheet lies flat in its large folder', () => {
    const unit = apartUnit(piece('sheet', 'papers', { long: 482, short: 381 }, 0.2));
    expect(unit).toMatchObject({ shelf: 'oversize', outside: { long: 508, short: 406.4 } });
    expect(unit.thickness).toBeCloseTo(1.2);
  });

  // Arithmetic: a sheet of 2133 × 0.3 mm in section is 640 mm²; around a core of 76 mm (P) it makes 81 mm.
  it('what is rolled is as long as the sheet is wide, and as thick as its windings around a core', () => {
    const { outside, thickness } = apartUnit(piece('rolled', 'rolls', { long: 2133.6, short: 508 }, 0.3));
    expect(outside.long).toBe(508);
    expect(thickness).toBeCloseTo(81.2, 1);
    expect(outside.short).toBe(thickness);
  });

  it('a quilt is folded to the size of its box, and keeps its bulk', () => {
    const size = { long: 92 * 25.4, short: 80 * 25.4 };
    const { outside, thickness } = apartUnit(piece('textile', 'textiles', size, 5));
    expect(
      US.boxes.some(
        ({ takes, face }) =>
          takes.includes('textiles') && face.long > outside.long && face.short > outside.short,
      ),
    ).toBe(true);
    expect(outside.long * outside.short * thickness).toBeCloseTo(size.long * size.short * 5, 0);
  });
});

describe('a bundle thicker than any box', () => {
  const unit = (thickness: number) => ({
    shelf: 'volumes' as const,
    outside: { long: 330, short: 203 },
    thickness,
  });
  const { boxes } = withBox('340 x 230 x 100 mm', 'volumes');

  // Arithmetic: 28 books of 25 mm go four to a box 100 mm deep; ten folders of 19 mm go five to it.
  it.each([
    [700, 28, 7, 100],
    [190, 10, 2, 95],
    // Eleven folders of 19 mm: six to the first box would be 114 mm, so it takes three boxes, of four at most.
    [209, 11, 3, 76],
  ])('of %s mm and %s pieces is put into %s boxes', (thickness, most, lots, each) => {
    expect(inLots(unit(thickness), most, boxes)).toEqual(new Array(lots).fill(unit(each)));
  });

  it('stays one where it fits, where one piece of it would not, and where no box is wide enough', () => {
    for (const [thickness, most] of [
      [100, 4],
      [150, 1],
      [400, 3],
    ] as const) {
      expect(inLots(unit(thickness), most, boxes)).toEqual([unit(thickness)]);
    }
    const wide = { ...unit(700), outside: { long: 900, short: 203 } };
    expect(inLots(wide, 28, boxes)).toEqual([wide]);
  });
});
