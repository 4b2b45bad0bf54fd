import { enlarged, inches, mm } from './measures.ts';
import type { Face, Form, Holder } from './model.ts';

const M = 'from memory; makers differ by a few millimetres';

/** What lies in a folder ends this far from its edges, so that nothing sticks out. Common practice. */
const MARGIN = 5;
/** About ¾ in of papers, then a second folder. Common practice. */
const FOLDER_LIMIT = 19;
/** About ¼ in: a large folder is carried flat, by two corners. From memory. */
const LARGE_LIMIT = 6;

/** What a paper folder may hold; everything else would spoil paper, or be spoiled by lying between papers. */
const PAPER_FORMS: readonly Form[] = ['sheet', 'photograph', 'mounted', 'bound'];

const folder = (id: string, words: string, outside: Face, use: string, source = M): Holder => ({
  id: `folder-${id}`,
  one: `${words} folder`,
  many: `${words} folders`,
  type: 'folder',
  inside: enlarged(outside, -2 * MARGIN),
  outside,
  limit: FOLDER_LIMIT,
  wall: 1,
  takes: PAPER_FORMS,
  shelf: 'papers',
  material: 'acid-free folder stock, buffered',
  use,
  source,
});

const large = (id: string, size: string, outside: Face, source = M): Holder => ({
  ...folder(id, '', outside, 'sheets and mounts too large for the other folders; they lie flat', source),
  one: `large folder, ${size}`,
  many: `large folders, ${size}`,
  limit: LARGE_LIMIT,
  shelf: 'oversize',
});

/** Folders where paper is letter and legal: 11 × 8½ and 14 × 8½ in. */
export const LETTER_FOLDERS: readonly Holder[] = [
  folder('letter', 'letter', inches(11.75, 9.5), 'papers up to 11 × 8½ in, unfolded'),
  folder('legal', 'legal', inches(14.75, 9.5), 'papers up to 14 × 8½ in, and A4, unfolded'),
  large('12x18', '12 × 18 in', inches(18, 12)),
  large('16x20', '16 × 20 in', inches(20, 16)),
  large('18x24', '18 × 24 in', inches(24, 18)),
  large('20x24', '20 × 24 in', inches(24, 20)),
  large('24x36', '24 × 36 in', inches(36, 24)),
  large('30x40', '30 × 40 in', inches(40, 30)),
  large('36x48', '36 × 48 in', inches(48, 36)),
];

const ISO = 'ISO 216 for the sheet; 10 mm more on each side, from memory';

/** Folders where paper is A4 (ISO 216), with the older foolscap beside it. */
export const METRIC_FOLDERS: readonly Holder[] = [
  folder('a4', 'A4', mm(315, 235), 'papers up to A4, unfolded'),
  folder('foolscap', 'foolscap', mm(355, 245), 'papers up to 13 × 8 in (foolscap), unfolded'),
  large('a3', 'A3', mm(440, 317), ISO),
  large('a2', 'A2', mm(614, 440), ISO),
  large('b2', 'B2', mm(727, 520), ISO),
  large('a1', 'A1', mm(861, 614), ISO),
  large('b1', 'B1', mm(1020, 727), ISO),
  large('a0', 'A0', mm(1209, 861), ISO),
];
