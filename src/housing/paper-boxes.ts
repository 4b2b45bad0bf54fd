import { flat, upright, WALLS } from './box-rows.ts';
import { INCH, inches, mm } from './measures.ts';
import type { Box, Face } from './model.ts';

/** A document box whose outside measures are known: the width of its front, its height, and along the shelf. */
const documentBox = (id: string, words: string, face: Face, outside: Box['outside'], use: string): Box => ({
  ...upright({
    id,
    names: [`${words} document box`, `${words} document boxes`],
    face,
    deep: outside.depth - WALLS,
    takes: ['papers'],
    use,
  }),
  outside,
  along: outside.depth,
});

const inInches = (width: number, height: number, depth: number) => ({
  width: width * INCH,
  height: height * INCH,
  depth: depth * INCH,
});

const LARGE = 'large folders, and what is too thick for them, lying flat';
const largeFlat = (id: string, size: string, face: Face): Box =>
  flat({
    id: `flat-box-${id}`,
    names: [`flat box, ${size}`, `flat boxes, ${size}`],
    face,
    deep: 75,
    takes: ['oversize'],
    use: LARGE,
  });

/** Boxes for letter and legal folders, and for large folders in inches. */
export const LETTER_BOXES: readonly Box[] = [
  documentBox('document-box-letter', 'letter', inches(12, 10), inInches(12.25, 10.25, 5), 'letter folders'),
  documentBox(
    'half-document-box-letter',
    'half letter',
    inches(12, 10),
    inInches(12.25, 10.25, 2.5),
    'a few letter folders',
  ),
  documentBox(
    'document-box-legal',
    'legal',
    inches(15, 10),
    inInches(15.25, 10.25, 5),
    'legal and letter folders',
  ),
  documentBox(
    'half-document-box-legal',
    'half legal',
    inches(15, 10),
    inInches(15.25, 10.25, 2.5),
    'a few legal and letter folders',
  ),
  largeFlat('12x18', '12 × 18 in', inches(18.5, 12.5)),
  largeFlat('16x20', '16 × 20 in', inches(20.5, 16.5)),
  largeFlat('18x24', '18 × 24 in', inches(24.5, 18.5)),
  largeFlat('20x24', '20 × 24 in', inches(24.5, 20.5)),
  largeFlat('24x36', '24 × 36 in', inches(36.5, 24.5)),
  largeFlat('30x40', '30 × 40 in', inches(40.5, 30.5)),
];

const inMillimetres = (width: number, height: number, depth: number) => ({ width, height, depth });

/** Boxes for A4 and foolscap folders, and for large folders in sizes of ISO 216. */
export const METRIC_BOXES: readonly Box[] = [
  documentBox('document-box-a4', 'A4', mm(325, 250), inMillimetres(331, 256, 127), 'A4 folders'),
  documentBox(
    'half-document-box-a4',
    'half A4',
    mm(325, 250),
    inMillimetres(331, 256, 64),
    'a few A4 folders',
  ),
  documentBox(
    'document-box-foolscap',
    'foolscap',
    mm(365, 260),
    inMillimetres(371, 266, 127),
    'foolscap and A4 folders',
  ),
  documentBox(
    'half-document-box-foolscap',
    'half foolscap',
    mm(365, 260),
    inMillimetres(371, 266, 64),
    'a few foolscap and A4 folders',
  ),
  largeFlat('a3', 'A3', mm(450, 327)),
  largeFlat('a2', 'A2', mm(624, 450)),
  largeFlat('b2', 'B2', mm(737, 530)),
  largeFlat('a1', 'A1', mm(871, 624)),
  largeFlat('b1', 'B1', mm(1030, 737)),
];

/** What is only used where it is named: a full carton weighs 15 kg or more, and few households have a plan chest. */
export const NAMED_BOXES: readonly Box[] = [
  {
    ...upright({
      id: 'record-carton',
      names: ['record carton', 'record cartons'],
      face: inches(12, 10),
      deep: 15 * INCH - WALLS,
      takes: ['papers'],
      use: 'letter folders in number; heavy when full',
      material: 'corrugated board, acid-free',
    }),
    // 12 × 15 × 10 in are called its measures, and make the 1.04 cubic feet that are called one. Common practice.
    outside: inInches(12, 10, 15),
    along: 15 * INCH,
  },
  flat({
    id: 'plan-drawer',
    names: ['drawer of a plan chest', 'drawers of a plan chest'],
    face: mm(1250, 945),
    deep: 45,
    takes: ['oversize'],
    use: 'large folders for maps and plans',
    material: 'steel, or wood with a barrier of polyester film',
  }),
];
