import { describe, expect, it } from 'vitest';
import { BOXES } from '../../src/housing/boxes.ts';
import { roomIn } from '../../src/housing/fill-boxes.ts';
import { HOLDERS } from '../../src/housing/holders.ts';
import { INCH } from '../../src/housing/measures.ts';
import type { Box, Holder } from '../../src/housing/model.ts';
import { COMMON_BOXES } from '../../src/housing/other-boxes.ts';
import { LETTER_BOXES, METRIC_BOXES } from '../../src/housing/paper-boxes.ts';
import { LETTER_FOLDERS, METRIC_FOLDERS } from '../../src/housing/paper-folders.ts';
import { SLEEVES } from '../../src/housing/sleeves.ts';

const holder = (id: string) => HOLDERS.find((one) => one.id === id);
const box = (id: string) => BOXES.find((one) => one.id === id);
const inInches = (numbers: readonly (number | undefined)[]) => numbers.map((one) => (one ?? 0) / INCH);
const takes = (boxes: readonly Box[], { shelf, outside, wall }: Holder) =>
  boxes.filter((one) => roomIn(one, [], { shelf, outside, thickness: wall }));

describe('the tables of folders and boxes', () => {
  // Measures written from memory by practitioners: a folder 11¾ × 9½ and 14¾ × 9½ in, a box 12¼ × 10¼ × 5 and 2½ in.
  it('holds the usual measures of folders and document boxes', () => {
    const measures = (id: string) => {
      const { outside } = holder(id) ?? {};
      return inInches([outside?.long, outside?.short]);
    };
    expect(measures('folder-letter')).toEqual([11.75, 9.5]);
    expect(measures('folder-legal')).toEqual([14.75, 9.5]);
    const outside = (id: string) => {
      const { width, height, depth } = box(id)?.outside ?? {};
      return inInches([width, height, depth]);
    };
    expect(outside('document-box-letter')).toEqual([12.25, 10.25, 5]);
    expect(outside('half-document-box-letter')).toEqual([12.25, 10.25, 2.5]);
  });

  // Arithmetic: 5 in ÷ 12 and 2½ in ÷ 12; the rounding to hundredths is the usual one.
  it.each([
    ['document-box-letter', 0.42],
    ['document-box-legal', 0.42],
    ['half-document-box-letter', 0.21],
  ])('takes the depth of %s for its linear feet', (id, feet) => {
    expect(Math.round(((box(id)?.along ?? 0) / INCH / 12) * 100) / 100).toBe(feet);
  });

  // Arithmetic: 12 × 15 × 10 in are 1800 cubic inches, and a cubic foot has 1728.
  it('makes a record carton 1.04 cubic feet', () => {
    const { width, height, depth } = box('record-carton')?.outside ?? { width: 0, height: 0, depth: 0 };
    expect((width * height * depth) / INCH ** 3 / 1728).toBeCloseTo(1.04, 2);
  });

  // Common practice: content of folders at most about ¾ in, 19 mm.
  it('lets no folder grow thicker than 19 mm', () => {
    const folders = HOLDERS.filter(({ type }) => type === 'folder');
    expect(folders.length).toBeGreaterThan(0);
    expect(Math.max(...folders.map(({ limit }) => limit))).toBe(19);
  });

  // ISO 216 for A4, A3, A2, A1; letter and legal paper are 11 × 8½ and 14 × 8½ in. Nothing sticks out: common practice.
  it.each([
    ['folder-letter', 11 * INCH, 8.5 * INCH],
    ['folder-legal', 14 * INCH, 8.5 * INCH],
    ['folder-a4', 297, 210],
    ['folder-a3', 420, 297],
    ['folder-a2', 594, 420],
    ['folder-a1', 841, 594],
  ])('covers its paper in %s with at least 5 mm on every side', (id, long, short) => {
    const { inside, outside } = holder(id) ?? {};
    expect(inside?.long).toBeGreaterThanOrEqual(long);
    expect(inside?.short).toBeGreaterThanOrEqual(short);
    expect(((outside?.long ?? 0) - long) / 2).toBeGreaterThanOrEqual(5);
    expect(((outside?.short ?? 0) - short) / 2).toBeGreaterThanOrEqual(5);
  });

  it('does not count A4 among what a letter folder covers, which would be 1 mm short of its edges', () => {
    expect(holder('folder-letter')?.inside.long).toBeLessThan(297);
  });

  it('gives every row a name of its own, measures that can be, and a source', () => {
    const rows = [...HOLDERS, ...BOXES];
    for (const words of [rows.map(({ id }) => id), rows.map(({ one }) => one)]) {
      expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([]);
    }
    for (const row of rows) {
      expect(row.id).toMatch(/^[a-z0-9.-]+$/);
      expect([row.source, row.material, row.use].every((text) => text.length > 3)).toBe(true);
    }
    for (const { id, inside, outside } of HOLDERS) {
      expect(inside.long >= inside.short && outside.long >= outside.short, id).toBe(true);
      expect(outside.long > inside.long && outside.short > inside.short, id).toBe(true);
    }
    for (const { id, face, deep, outside } of BOXES) {
      expect(face.long >= face.short, id).toBe(true);
      const within = [face.long, face.short, deep].toSorted((a, b) => a - b);
      const around = [outside.width, outside.height, outside.depth].toSorted((a, b) => a - b);
      expect(
        within.every((one, index) => one <= (around[index] ?? 0)),
        id,
      ).toBe(true);
    }
  });

  // Common practice: the box's inside height is above the tallest folder in it.
  it.each([
    ['letter', LETTER_FOLDERS, LETTER_BOXES, ['folder-36x48']],
    ['metric', METRIC_FOLDERS, METRIC_BOXES, ['folder-a0']],
  ] as const)(
    'has a box for every folder of the %s sizes, but for those that want a drawer',
    (_, folders, boxes, left) => {
      const without = folders.filter((one) => takes(boxes, one).length === 0);
      expect(without.map(({ id }) => id)).toEqual(left);
      for (const one of without) expect(takes(BOXES, one).map(({ id }) => id)).toEqual(['plan-drawer']);
    },
  );

  it('has boxes of two widths and two sizes for papers, in letter and in metric sizes', () => {
    for (const boxes of [LETTER_BOXES, METRIC_BOXES]) {
      const papers = boxes.filter(({ takes: shelves }) => shelves.includes('papers'));
      expect(papers).toHaveLength(4);
      expect(new Set(papers.map(({ along }) => Math.round(along))).size).toBe(2);
      expect(new Set(papers.map(({ face }) => face.long)).size).toBe(2);
    }
  });

  it('has a box for every sleeve, but for those of photographs, which go into folders', () => {
    const apart = SLEEVES.filter(({ takes: forms }) => !forms.includes('photograph'));
    expect(apart.length).toBeGreaterThan(20);
    expect(apart.filter((one) => takes(COMMON_BOXES, one).length === 0)).toEqual([]);
  });
});
