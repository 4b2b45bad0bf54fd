import { inches, mm } from './measures.ts';
import type { Face, Form } from './model.ts';

/** A size that has a name. Measures in millimetres. */
export interface SizeName {
  /** In small letters without accents, the best known first. */
  names: readonly string[];
  /** Undefined where the name says only what the thing is. */
  face?: Face;
  thick?: number;
  /** What only such things are. */
  form?: Form;
  /** Whether the name is used for several sizes, so that the one here is an assumption. */
  loose: boolean;
  source: string;
}

/** A name whose size is the same for everybody. */
export const exact = (
  names: string,
  face: Face,
  source: string,
  more: Pick<SizeName, 'form' | 'thick'> = {},
): SizeName => ({ names: names.split('|'), face, ...more, loose: false, source });

/** A name used for several sizes; the largest usual one stands here, so that nothing gets a cover too small. */
export const loose = (...given: Parameters<typeof exact>): SizeName => ({ ...exact(...given), loose: true });

/** A name that says what a thing is, and nothing of its size. */
export const sizeless = (names: string, form: Form): SizeName => ({
  names: names.split('|'),
  form,
  loose: true,
  source: 'common practice',
});

const iso = (letter: string, sizes: readonly [number, number][], source: string): SizeName[] =>
  sizes.map((size, step) => exact(`${letter}${step}`, mm(...size), source));

const M = 'from memory';

/** Paper of ISO 216 and ISO 269, from 0 to 10. */
export const ISO_PAPER: readonly SizeName[] = [
  ...iso(
    'a',
    [
      ...([
        [1189, 841],
        [841, 594],
        [594, 420],
        [420, 297],
        [297, 210],
        [210, 148],
      ] satisfies [number, number][]),
      ...([
        [148, 105],
        [105, 74],
        [74, 52],
        [52, 37],
        [37, 26],
      ] satisfies [number, number][]),
    ],
    'ISO 216',
  ),
  ...iso(
    'b',
    [
      ...([
        [1414, 1000],
        [1000, 707],
        [707, 500],
        [500, 353],
        [353, 250],
        [250, 176],
      ] satisfies [number, number][]),
      ...([
        [176, 125],
        [125, 88],
        [88, 62],
        [62, 44],
        [44, 31],
      ] satisfies [number, number][]),
    ],
    'ISO 216',
  ),
  ...iso(
    'c',
    [
      ...([
        [1297, 917],
        [917, 648],
        [648, 458],
        [458, 324],
        [324, 229],
        [229, 162],
      ] satisfies [number, number][]),
      ...([
        [162, 114],
        [114, 81],
        [81, 57],
        [57, 40],
        [40, 28],
      ] satisfies [number, number][]),
    ],
    'ISO 269',
  ),
];

/** Paper and books by their English and American names, and words that are no measure. */
export const PAPER: readonly SizeName[] = [
  exact('dl|dl envelope', mm(220, 110), 'ISO 269'),
  exact('letter|letter paper|us letter|letter-size', inches(11, 8.5), 'ANSI/ASME Y14.1, size A'),
  exact('ledger|tabloid', inches(17, 11), 'ANSI/ASME Y14.1, size B'),
  exact('legal', inches(14, 8.5), M),
  exact('half letter|statement|half sheet', inches(8.5, 5.5), M),
  exact('executive', inches(10.5, 7.25), M),
  loose('index card|recipe card', inches(5, 3), M),
  loose('business card|visiting card|calling card', inches(3.5, 2), M),
  loose('trade card', inches(5, 3), M),
  exact('no 10 envelope|number 10 envelope|business envelope', inches(9.5, 4.125), M),
  loose('envelope', inches(9.5, 4.125), M),
  loose('foolscap|foolscap folio', inches(13, 8), M),
  // Sheets as they were made in Britain; of the sizes for writing, drawing and printing, the largest.
  loose('crown', inches(20, 15), M),
  exact('double crown', inches(30, 20), M),
  exact('quad crown', inches(40, 30), M),
  loose('demy', inches(22.5, 17.5), M),
  loose('double demy', inches(35, 22.5), M),
  loose('royal', inches(25, 20), M),
  loose('double royal', inches(40, 25), M),
  loose('imperial', inches(30, 22), M),
  loose('elephant', inches(28, 23), M),
  loose('double elephant', inches(40, 27), M),
  loose('folio', inches(15, 12), M),
  loose('quarto', inches(10, 8), M),
  loose('octavo', inches(9, 6), M),
  loose('crown octavo', inches(7.5, 5), M),
  loose('demy octavo', inches(8.75, 5.625), M),
  loose('royal octavo', inches(10, 6.25), M),
  loose('duodecimo', inches(7.375, 5), M),
  loose('note paper|notepaper', inches(8, 5), M),
  loose('broadsheet', inches(23.5, 15), M),
  loose('berliner', mm(470, 315), M),
  loose('postage stamp|stamp', mm(40, 30), M),
  loose('poster', inches(36, 24), M),
  loose('oversize|oversized', inches(36, 24), M),
  loose('miniature|mini', inches(3, 2), M),
  loose('pocket', inches(6, 4), M),
];
