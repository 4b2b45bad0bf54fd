/** A sheet of labels. All measures in millimetres, width or rightwards first. */
export interface Sheet {
  /** As `--sheet` takes it. */
  name: string;
  /** What to look for in a shop: measures in the words of the place. */
  words: string;
  page: Measure;
  columns: number;
  rows: number;
  label: Measure;
  /** The upper left corner of the first label, from that of the page. */
  first: Measure;
  /** From one label to the next, rightwards and downwards. */
  step: Measure;
  /** For which labels it is proposed, if for any. */
  suits?: 'folders' | 'boxes';
  source: string;
}

/** A width and a height, or a way rightwards and downwards. */
export type Measure = readonly [number, number];

// ISO 216: A4. ANSI/ASME Y14.1: size A, "letter", 8½ × 11 in.
export const A4: Measure = [210, 297];
export const LETTER: Measure = [215.9, 279.4];

const inches = (x: number, y: number): Measure => [x * 25.4, y * 25.4];

// Where the rows fill the page but for even margins, and the columns with even margins and one gap, the rest follows
// from the size of the label by arithmetic; the gap is written from memory.
const EVEN = 'even margins above and below: arithmetic';

/** Sheets by their measures alone. The first that suits folders, and boxes, on a kind of paper is what is proposed. */
export const SHEETS: readonly Sheet[] = [
  {
    name: 'letter 3x10',
    words: 'US Letter, 3 across and 10 down, each label 1 × 2⅝ in (25.4 mm high, 66.7 mm wide)',
    page: LETTER,
    columns: 3,
    rows: 10,
    label: inches(2.625, 1),
    first: inches(0.1875, 0.5),
    step: inches(2.75, 1),
    suits: 'folders',
    source: `gap of ⅛ in between columns from memory; ${EVEN}: (11 - 10) ÷ 2 in; (8.5 - 3 × 2.625 - 2 × 0.125) ÷ 2 in`,
  },
  {
    name: 'letter 2x5',
    words: 'US Letter, 2 across and 5 down, each label 2 × 4 in (50.8 mm high, 101.6 mm wide)',
    page: LETTER,
    columns: 2,
    rows: 5,
    label: inches(4, 2),
    first: inches(0.15625, 0.5),
    step: inches(4.1875, 2),
    suits: 'boxes',
    source: `gap of 3/16 in between columns from memory; ${EVEN}: (11 - 5 × 2) ÷ 2 in; (8.5 - 2 × 4 - 0.1875) ÷ 2 in`,
  },
  {
    name: 'letter 2x3',
    words: 'US Letter, 2 across and 3 down, each label 3⅓ × 4 in (84.7 mm high, 101.6 mm wide)',
    page: LETTER,
    columns: 2,
    rows: 3,
    label: inches(4, 10 / 3),
    first: inches(0.15625, 0.5),
    step: inches(4.1875, 10 / 3),
    suits: 'boxes',
    source: `gap of 3/16 in between columns from memory; ${EVEN}: (11 - 3 × 3⅓) ÷ 2 in; (8.5 - 2 × 4 - 0.1875) ÷ 2 in`,
  },
  {
    name: 'A4 3x7',
    words: 'A4, 3 across and 7 down, each label 63.5 mm wide and 38.1 mm high',
    page: A4,
    columns: 3,
    rows: 7,
    label: [63.5, 38.1],
    first: [7.21, 15.15],
    step: [66.04, 38.1],
    suits: 'folders',
    source: `gap of 2.54 mm between columns from memory; ${EVEN}: (297 - 7 × 38.1) ÷ 2; (210 - 3 × 63.5 - 2 × 2.54) ÷ 2`,
  },
  {
    name: 'A4 3x8',
    words: 'A4, 3 across and 8 down, each label 70 mm wide and 37 mm high, without gaps',
    page: A4,
    columns: 3,
    rows: 8,
    label: [70, 37],
    first: [0, 0.5],
    step: [70, 37],
    suits: 'folders',
    source: 'arithmetic: 3 × 70 fills the width of the page, and (297 - 8 × 37) ÷ 2 is left above and below',
  },
  {
    name: 'A4 2x4',
    words: 'A4, 2 across and 4 down, each label 99.1 mm wide and 67.7 mm high',
    page: A4,
    columns: 2,
    rows: 4,
    label: [99.1, 67.7],
    first: [4.63, 13.1],
    step: [101.64, 67.7],
    suits: 'boxes',
    source: `gap of 2.54 mm between columns from memory; ${EVEN}: (297 - 4 × 67.7) ÷ 2; (210 - 2 × 99.1 - 2.54) ÷ 2`,
  },
  {
    name: 'A4 2x7',
    words: 'A4, 2 across and 7 down, each label 99.1 mm wide and 38.1 mm high',
    page: A4,
    columns: 2,
    rows: 7,
    label: [99.1, 38.1],
    first: [4.63, 15.15],
    step: [101.64, 38.1],
    suits: 'boxes',
    source: `gap of 2.54 mm between columns from memory; ${EVEN}: (297 - 7 × 38.1) ÷ 2; (210 - 2 × 99.1 - 2.54) ÷ 2`,
  },
];

// Countries in which letter paper is sold rather than A4 (from memory).
const LETTER_COUNTRIES: readonly string[] = ['US', 'CA'];

/** The sheet proposed where none is named. @param country ISO 3166-1 code of the country of the repository */
export function usualSheet(country: string | undefined, suits: 'folders' | 'boxes'): Sheet {
  const page = country !== undefined && LETTER_COUNTRIES.includes(country) ? LETTER : A4;
  const found = SHEETS.find((sheet) => sheet.page === page && sheet.suits === suits);
  if (found === undefined) throw new Error(`No sheet is known for ${suits}.`);
  return found;
}

/** How many labels a sheet has. */
export const labelsOn = ({ columns, rows }: Sheet): number => columns * rows;

/** The upper left corner of a label on its sheet, in millimetres. @param index from 0, across and then down */
export function cornerOf({ columns, first, step }: Sheet, index: number): Measure {
  const [column, row] = [index % columns, Math.floor(index / columns)];
  return [first[0] + column * step[0], first[1] + row * step[1]];
}
