import { describe, expect, test } from 'vitest';
import { housingSettings } from '../../src/catalogue/housing-settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { partFolder } from '../../src/housing/part-folder.ts';
import { pieceOf } from '../../src/housing/piece.ts';
import { sizeFindings } from '../../src/housing/size-findings.ts';
import { stockFrom } from '../../src/housing/stock.ts';
import { someThing } from '../support/catalogue.ts';

const US = stockFrom(housingSettings.parse({}), 'US');
const piece = (over: Partial<Thing>) => pieceOf(someThing({ row: 2, ...over }));
const apart = (over: Partial<Thing>) => partFolder([piece(over)], US).apart[0];

// Common practice: watches and violins have cases too; a cased photograph is named as one.
describe('a case in a title', () => {
  test.each<Partial<Thing>>([
    { kind: 'object', title: 'Pocket watch in its case' },
    { kind: 'object', title: 'Spectacles in a case' },
    { kind: 'object', title: 'Violin in its case' },
    { kind: 'object', title: 'Sextant in wooden case, 30 x 30 x 15 cm', size: '30 x 30 x 15 cm' },
    { kind: 'object', title: 'Portrait of Ada, cased' },
    { title: 'Pocket watch in its case' },
    { title: 'Violin in its case' },
  ])('of $kind, “$title” is an object', (over) => {
    expect(piece(over)).toMatchObject({ form: 'object', shelf: 'objects' });
  });

  test.each<Partial<Thing>>([
    { kind: 'photograph', title: 'Ada Rook, in a leather case' },
    { kind: 'tintype', title: 'Ada Rook, cased' },
    { title: 'Portrait of Ada Rook, in its case' },
    { title: 'Cased likeness of a young man' },
    { kind: 'gewgaw', title: 'Portrait of Ada Rook, in its case' },
  ])('of $kind, “$title” is a photograph on glass', (over) => {
    expect(piece(over).form).toBe('glass');
  });

  test('makes nothing else of a kind that was given', () => {
    expect(piece({ kind: 'letter', title: 'Portrait of Ada Rook, in its case' }).form).toBe('sheet');
    expect(piece({ kind: 'medal', title: 'Medal in its case' }).form).toBe('object');
    expect(piece({ title: 'Certificate, cased' }).form).toBe('sheet');
  });
});

// As large as a biscuit tin or a jam jar, from memory; the envelope for flat keepsakes takes 10 mm.
describe('what a tin, a jar or a box of small things is', () => {
  test.each<Partial<Thing>>([
    { kind: 'object', title: 'Tin of buttons' },
    { title: 'Tin of buttons' },
    { title: 'Jar of buttons' },
    { title: 'Box of marbles' },
    { kind: 'object', title: 'A tin of buttons', quantity: 200 },
    { kind: 'tin', title: 'Tin of buttons' },
    { kind: 'tin of buttons' },
  ])('$kind, “$title”: the container, without an envelope', (over) => {
    const lies = apart(over);
    expect(lies).toMatchObject({ shelf: 'objects', holders: 0 });
    expect(lies?.piece.thickness).toBeGreaterThan(50);
    expect(lies?.piece.thickness).toBeLessThan(200);
  });

  test('buttons alone lie in an envelope, and a box of letters is paper', () => {
    expect(apart({ kind: 'button' })?.holder?.type).toBe('envelope');
    expect(piece({ title: 'Box of letters' }).form).toBe('sheet');
    expect(piece({ title: 'Tin of ferry tickets' }).form).toBe('sheet');
    expect(piece({ title: 'Box of Hester Bell' }).form).toBe('sheet');
  });
});

// A judgement is no measure: "large" of a photograph is not large for a map.
describe('a size that is a judgement', () => {
  test.each(['large', 'small', 'Medium', 'big', 'very large', 'quite small'])('%s is none', (size) => {
    for (const kind of ['photograph', 'account book', 'letter']) {
      expect(piece({ kind, size })).toMatchObject({ size: piece({ kind }).size, assumed: true });
      expect(sizeFindings([someThing({ row: 3, kind, size })])).toMatchObject([
        { rule: 'list.size-unknown', weight: 'should', place: { row: 3 } },
      ]);
    }
  });

  test('says so, and what to do', () => {
    const [finding] = sizeFindings([someThing({ row: 3, kind: 'account book', size: 'large' })]);
    expect(finding?.found).toBe('“large” says no measure, so the usual one of its kind is assumed.');
    expect(finding?.advice).toMatch(/^Measure it, or leave it blank\. /);
  });

  test('takes nothing from a measure or a name beside it', () => {
    expect(piece({ kind: 'photograph', size: 'large, 8 x 10 in' }).size).toMatchObject({ long: 254 });
    expect(sizeFindings([someThing({ row: 3, kind: 'photograph', size: 'large cabinet card' })])).toEqual([]);
  });
});
