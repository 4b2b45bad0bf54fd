import { fold } from '../catalogue/fold.ts';
import type { HousingSettings } from '../catalogue/housing-settings.ts';
import { nearest } from '../catalogue/nearest.ts';
import { readBoxMeasures } from './box-measures.ts';
import { flat, upright } from './box-rows.ts';
import { mm } from './measures.ts';
import { type Box, SHELVES, type Shelf } from './model.ts';

/** Everyday words for what goes into a box, beside the names of the shelves. */
const ALSO: Readonly<Record<string, Shelf>> = {
  letters: 'papers',
  documents: 'papers',
  folders: 'papers',
  'large papers': 'oversize',
  maps: 'oversize',
  plans: 'oversize',
  posters: 'oversize',
  frames: 'oversize',
  albums: 'volumes',
  books: 'volumes',
  diaries: 'volumes',
  photos: 'photographs',
  negatives: 'photographs',
  slides: 'photographs',
  'glass plates': 'glass',
  records: 'discs',
  films: 'film',
  reels: 'film',
  cassettes: 'tapes',
  clothes: 'textiles',
  quilts: 'textiles',
  things: 'objects',
  keepsakes: 'objects',
  tubes: 'rolls',
};

const WORDS: ReadonlyMap<string, Shelf> = new Map([
  ...SHELVES.map((shelf) => [shelf, shelf] as const),
  ...Object.entries(ALSO),
]);

/** What is wrong with a box of one's own: what was found, and what to do. */
interface OwnTrouble {
  rule: 'housing.own-measures' | 'housing.own-for';
  found: string;
  advice: string;
}

/**
 * A box of one's own. Upright, its measures are the width and height of what it takes, and its depth from the first
 * piece to the last; in a flat one the smallest is the height of the stack, in whatever order they are written.
 */
export function ownBox(own: HousingSettings['own'][number]): { box: Box } | { troubles: OwnTrouble[] } {
  const troubles: OwnTrouble[] = [];
  const read = readBoxMeasures(own.inside);
  if ('wrong' in read) {
    const advice = 'Write width × height × depth inside with their unit, such as 12 x 10 x 4 in.';
    troubles.push({ rule: 'housing.own-measures', found: `Box “${own.name}”: ${read.wrong}`, advice });
  }
  const takes = new Set<Shelf>();
  for (const word of own.for) {
    const shelf = WORDS.get(fold(word));
    if (shelf === undefined) troubles.push(unknownWord(own.name, word));
    else takes.add(shelf);
  }
  if ('wrong' in read || troubles.length > 0) return { troubles };
  const [width, height, depth] = own.flat ? read.measures.toSorted((a, b) => b - a) : read.measures;
  const row = {
    id: fold(own.name).replaceAll(' ', '-'),
    names: [own.name, own.name] as [string, string],
    face: mm(Math.max(width ?? 0, height ?? 0), Math.min(width ?? 0, height ?? 0)),
    deep: depth ?? 0,
    takes: [...takes],
    use: [...own.for].join(', '),
    material: 'at hand',
    source: 'collection.yaml; its walls are taken to be 3 mm thick',
  };
  return { box: own.flat ? flat(row) : upright(row) };
}

function unknownWord(name: string, word: string): OwnTrouble {
  const meant = nearest(fold(word), [...WORDS.keys()]);
  return {
    rule: 'housing.own-for',
    found: `Box “${name}” is for “${word}”, which is not known.`,
    advice: meant === undefined ? `Write one or more of ${SHELVES.join(', ')}.` : `Is “${meant}” meant?`,
  };
}
