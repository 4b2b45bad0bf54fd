import type { Column } from './thing.ts';

/** What goes into each column of the list, in plain words, and an example of it. */
export const GUIDE_TO_COLUMNS: Readonly<Record<Column, { says: string; example: string }>> = {
  number: {
    says: 'A number for each thing: 1, 2, 3 and so on, down the rows. In this workbook you fill in the numbers yourself before you settle; in list.csv the program does it.',
    example: '12',
  },
  title: {
    says: 'What the thing is, in a few words. The only column that must be filled.',
    example: 'Ada to Nils about the flood',
  },
  date: {
    says: 'When it was made, as you know it. Leave it empty if you do not know.',
    example: '14 May 1962; 1962; c. 1950; 1950s; 1958-1963; undated',
  },
  kind: {
    says: 'What kind of thing it is. Choose from the list, or write a word of your own.',
    example: 'letter',
  },
  people: {
    says: 'Who is in it, or to whom it was written. Several names are parted by semicolons.',
    example: 'Ada Quill; Nils Quill',
  },
  place: { says: 'Where it was made, or what place it shows.', example: 'Applegarth' },
  occasion: { says: 'The event it belongs to.', example: 'The great flood' },
  description: {
    says: 'What it says or shows, as much as you like.',
    example: 'Ada counts what the water took.',
  },
  quantity: {
    says: 'How many there are, if the row stands for several. Empty means one; of “letters”, that nobody has counted them.',
    example: '12; about 40',
  },
  size: {
    says: 'Height and width, or a usual name. It decides which folder and box are taken.',
    example: '20 x 25 cm; 8x10 in; A4',
  },
  condition: { says: 'Its state. Choose from the list, or write what you see.', example: 'torn' },
  access: {
    says: 'If not everybody may see it: why, or who may.',
    example: 'Private: health of living people',
  },
  until: { says: 'When that ends.', example: '2040' },
  note: { says: 'Anything else.', example: 'Found in the family Bible' },
  copy: {
    says: 'The file of a scan or photograph, in the folder copies. Several are parted by semicolons.',
    example: 'copies/flood-letter.jpg',
  },
  series: {
    says: 'The group it is to stand in, if you have groups of your own.',
    example: 'Letters from the ferry',
  },
  folder: { says: 'A folder it must stay in.', example: 'Voyage of 1931' },
  box: { says: 'The box in which it lies now.', example: '2' },
  language: { says: 'The language it is in, if it is in words.', example: 'English; Norwegian' },
  creator: { says: 'Who wrote it, took it or made it.', example: 'Ada Quill' },
  stays: {
    says: 'Yes, if the thing stays with the family when the rest is handed over.',
    example: 'yes',
  },
  'family note': {
    says: 'What is meant for the family alone: nothing that leaves your hands will have it.',
    example: 'Ask Tom who has the twin of it',
  },
};

/** Words for the state of a thing (common practice). */
export const CONDITIONS = [
  ...['good', 'fair', 'poor', 'creased', 'folded', 'rolled', 'torn', 'brittle', 'faded', 'stained', 'dirty'],
  ...[
    'damp',
    'mouldy',
    'eaten by insects',
    'rusty clips or staples',
    'tape on it',
    'stuck together',
    'broken',
  ],
  ...['loose pages', 'smells of vinegar'],
] as const;

/** What to know before the first row. */
export const GUIDE_TO_LIST: readonly string[] = [
  'One row for each thing, or for each bundle of like things. Begin anywhere; the order does not matter.',
  'Only the title must be there. Leave empty what you do not know: nothing is better than a guess, and c. or ? marks one.',
  'Do not merge cells, and do not put headings between the rows. Columns of your own may be added behind the last.',
  'Do not change the headings in the first row. The columns may be moved.',
  'Write over the example in the second row, or delete it.',
  'Beside this file lies list.csv, the same list for other programs. Fill in one of the two and leave the other as it is.',
];
