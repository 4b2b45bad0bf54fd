import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import { fillBoxes } from '../../src/housing/fill-boxes.ts';
import { FORMS, type Shelf } from '../../src/housing/model.ts';
import { partFolder } from '../../src/housing/part-folder.ts';
import type { Piece } from '../../src/housing/piece.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { unitOfApart, unitOfPart } from '../../src/housing/unit-of.ts';

const SHELF: Partial<Record<(typeof FORMS)[number], Shelf>> = {
  bound: 'volumes',
  negative: 'photographs',
  slide: 'photographs',
  glass: 'glass',
  disc: 'discs',
  film: 'film',
  tape: 'tapes',
  textile: 'textiles',
  object: 'objects',
  rolled: 'rolls',
};

const arbitraryPiece: fc.Arbitrary<Piece> = fc
  .record({
    form: fc.oneof(fc.constantFrom(...FORMS), fc.constant('sheet' as const)),
    sides: fc.tuple(fc.integer({ min: 20, max: 900 }), fc.integer({ min: 20, max: 400 })),
    tenths: fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 1500 })),
    quantity: fc.option(fc.integer({ min: 1, max: 400 }), { nil: undefined }),
  })
  .map(({ form, sides, tenths, quantity }) => ({
    thing: {
      row: 2,
      title: 'A thing',
      people: [],
      creators: [],
      places: [],
      copies: [],
      languages: [],
      extra: [],
      ...(quantity !== undefined && { quantity }),
    },
    form,
    shelf: SHELF[form] ?? 'papers',
    size: { long: Math.max(...sides), short: Math.min(...sides) },
    thickness: tenths / 10,
  }));

const arbitraryStock = fc
  .record({ country: fc.constantFrom('US', 'NO', undefined), thickness: fc.constantFrom(undefined, 10, 30) })
  .map(({ country, thickness }) => stockFrom(housingSettings.parse({ thickness }), country));

const arbitraryFolder = fc.tuple(fc.array(arbitraryPiece, { maxLength: 40 }), arbitraryStock);
const NEAR = 1e-6;

describe('whatever is filed under one heading', () => {
  it('lies in exactly one place', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        const { parts, apart, nowhere } = partFolder(pieces, stock);
        const placed = [
          ...parts.flatMap((part) => part.pieces),
          ...apart.map(({ piece }) => piece),
          ...nowhere,
        ];
        expect(placed).toHaveLength(pieces.length);
        expect(new Set(placed)).toEqual(new Set(pieces));
        expect(parts.every((part) => part.pieces.length > 0)).toBe(true);
      }),
    );
  });

  it('grows no folder beyond its limit, unless one row takes several, each within its limit', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        for (const { holder, pieces: own, thickness, folders } of partFolder(pieces, stock).parts) {
          const content = own.reduce((sum, one) => sum + one.thickness, 0);
          expect(thickness).toBeCloseTo(content + folders * holder.wall, 2);
          if (content <= holder.limit + NEAR) expect(folders).toBe(1);
          else {
            expect(own).toHaveLength(1);
            const quantity = own[0]?.thing.quantity ?? 1;
            // In the fullest of its folders, and in one folder fewer: as many folders as it needs, and no more.
            expect((Math.ceil(quantity / folders) * content) / quantity).toBeLessThanOrEqual(
              holder.limit + NEAR,
            );
            expect((Math.ceil(quantity / (folders - 1)) * content) / quantity).toBeGreaterThan(
              holder.limit - NEAR,
            );
          }
        }
      }),
    );
  });

  it('is nowhere larger than what it lies in, nor in a larger folder than it needs', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        const { parts, apart } = partFolder(pieces, stock);
        const held = [
          ...parts.map(({ holder, pieces: own }) => ({ holder, own })),
          ...apart.flatMap(({ holder, piece }) => (holder === undefined ? [] : [{ holder, own: [piece] }])),
        ];
        for (const { holder, own } of held) {
          for (const { size, form } of own) {
            expect(size.long).toBeLessThanOrEqual(holder.inside.long);
            expect(size.short).toBeLessThanOrEqual(holder.inside.short);
            expect(holder.takes).toContain(form);
          }
        }
        for (const { holder, pieces: own } of parts) {
          const smaller = stock.holders.filter(
            ({ type, shelf, inside }) =>
              type === 'folder' && shelf === 'papers' && inside.long < holder.inside.long,
          );
          for (const { inside } of smaller) {
            expect(own.some(({ size }) => size.long > inside.long || size.short > inside.short)).toBe(true);
          }
        }
      }),
    );
  });

  it('keeps its order in every list, and in every folder', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        const { parts, apart, nowhere } = partFolder(pieces, stock);
        const ascending = (some: readonly Piece[]) => {
          const places = some.map((piece) => pieces.indexOf(piece));
          expect(places).toEqual(places.toSorted((a, b) => a - b));
        };
        ascending(apart.map(({ piece }) => piece));
        ascending(nowhere);
        ascending(parts.flatMap(({ pieces: [first] }) => (first === undefined ? [] : [first])));
        for (const company of [['sheet', 'photograph', 'bound'], ['mounted']]) {
          ascending(parts.flatMap((part) => part.pieces).filter(({ form }) => company.includes(form)));
        }
        for (const part of parts) ascending(part.pieces);
      }),
    );
  });

  it('puts nothing but paper, or what is on paper, into a folder of papers, nor mounts among papers, nor frames anywhere', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        for (const { pieces: own } of partFolder(pieces, stock).parts) {
          const forms = [...new Set(own.map(({ form }) => form))];
          const loose = forms.every((form) => ['sheet', 'photograph', 'bound'].includes(form));
          expect(loose || forms.join() === 'mounted').toBe(true);
        }
      }),
    );
  });

  it('comes out the same again', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        expect(partFolder(pieces, stock)).toEqual(partFolder([...pieces], stock));
      }),
    );
  });

  it('never comes into a box that is too shallow or too small for one thing of it', () => {
    fc.assert(
      fc.property(arbitraryFolder, ([pieces, stock]) => {
        const { parts, apart } = partFolder(pieces, stock);
        for (const unit of parts.map(unitOfPart)) expect(unit.thickness).toBeGreaterThan(0);
        for (const one of apart) {
          const { form, size, thickness, thing } = one.piece;
          const unit = unitOfApart(one);
          expect(unit.outside.long).toBeGreaterThanOrEqual(unit.outside.short);
          if (form === 'textile' || form === 'rolled') continue;
          const [filled] = fillBoxes([unit], stock.boxes).filled;
          if (filled === undefined) continue;
          expect(filled.box.takes).toContain(one.shelf);
          expect(filled.box.face.long).toBeGreaterThan(size.long);
          expect(filled.box.face.short).toBeGreaterThan(size.short);
          expect(filled.box.deep).toBeGreaterThanOrEqual(thickness / (thing.quantity ?? 1) - NEAR);
        }
      }),
    );
  });
});
