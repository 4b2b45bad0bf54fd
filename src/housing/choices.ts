import { LEGAL } from './forms.ts';
import { covers, mm } from './measures.ts';
import { type Box, type Face, FORMS, type Form, type Holder, SHELVES, type Shelf } from './model.ts';
import type { Stock } from './stock.ts';
import { isPaperFolder } from './stock.ts';

/** What a stock offers for each purpose; holders from the smallest to the largest. */
export interface Choices {
  /** Folders that stand among the papers. */
  folders: readonly Holder[];
  /** Folders that lie flat. */
  largeFolders: readonly Holder[];
  /** Sleeves and envelopes, by what they take. */
  sleeves: Readonly<Record<Form, readonly Holder[]>>;
  boxes: Readonly<Record<Shelf, readonly Box[]>>;
  /** What a legal paper is taken for whose size nobody noted: no paper is of US legal size where folders are A4. */
  legal: Face;
}

// ISO 216.
const A4 = mm(297, 210);

type Offer = Pick<Stock, 'holders' | 'boxes'>;

const known = new WeakMap<Offer, Choices>();

/** The choices of a stock, worked out once: 100,000 things are put away one by one. */
export function choicesOf(stock: Offer): Choices {
  const before = known.get(stock);
  if (before !== undefined) return before;
  const holders = stock.holders.toSorted((a, b) => areaOf(a.inside) - areaOf(b.inside));
  const sleeves = holders.filter(({ type }) => type !== 'folder');
  const folders = holders.filter(isPaperFolder);
  const choices: Choices = {
    folders,
    legal: folders.some(({ inside }) => covers(inside, LEGAL)) ? LEGAL : A4,
    largeFolders: holders.filter((holder) => holder.type === 'folder' && !isPaperFolder(holder)),
    sleeves: byEach(FORMS, (form) => sleeves.filter(({ takes }) => takes.includes(form))),
    boxes: byEach(SHELVES, (shelf) => stock.boxes.filter(({ takes }) => takes.includes(shelf))),
  };
  known.set(stock, choices);
  return choices;
}

/** The smallest of some holders, from small to large, that covers a face and takes each thing of that thickness. */
export const smallest = (holders: readonly Holder[], face: Face, each = 0): Holder | undefined =>
  holders.find(({ inside, limit }) => covers(inside, face) && each <= limit);

/** The face of a piece among the folders of a stock. Only what nobody measured is of the very face of the table. */
export const faceIn = ({ size }: { size: Face }, { legal }: Choices): Face => (size === LEGAL ? legal : size);

const areaOf = ({ long, short }: Face) => long * short;

const byEach = <Key extends string, Value>(keys: readonly Key[], work: (key: Key) => Value) =>
  Object.fromEntries(keys.map((key) => [key, work(key)])) as Record<Key, Value>;
