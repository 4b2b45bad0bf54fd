import { enlarged, inches, mm } from './measures.ts';
import type { Face, Form, Holder } from './model.ts';

const M = 'from memory; makers differ by a few millimetres';
const P = 'common practice';

type Sleeve = Omit<Holder, 'type' | 'one' | 'many' | 'inside' | 'outside'>;

/** What holds one thing, or one in each of its pockets; a can, a case and a four-flap enclosure among them. */
const sleeve = (names: [one: string, many: string], inside: Face, rim: number, rest: Sleeve): Holder => ({
  ...rest,
  type: 'sleeve',
  one: names[0],
  many: names[1],
  inside,
  outside: enlarged(inside, rim),
});

/** A size as it stands in an id: 3¼ × 4¼ gives 3.25x4.25. */
const plain = (size: string) =>
  size.replace(' × ', 'x').replaceAll('¼', '.25').replaceAll('½', '.5').replaceAll('¾', '.75');

const PAT = 'paper or polyester that passes the Photographic Activity Test (ISO 18916)';

const print = (size: string, long: number, short: number): Holder =>
  sleeve(
    [`photograph sleeve, ${size} in`, `photograph sleeves, ${size} in`],
    enlarged(inches(long, short), 3),
    10,
    {
      id: `photograph-sleeve-${plain(size)}`,
      limit: 3,
      wall: 0.15,
      takes: ['photograph', 'mounted'],
      shelf: 'photographs',
      material: PAT,
      use: 'one loose photograph; it goes into its folder sleeved',
      source: P,
    },
  );

const negative = (id: string, size: string, inside: Face, rim: number): Holder =>
  sleeve([`negative sleeve, ${size}`, `negative sleeves, ${size}`], inside, rim, {
    id: `negative-${id}`,
    limit: 1,
    wall: 0.2,
    takes: ['negative'],
    shelf: 'photographs',
    material: 'paper that passes the Photographic Activity Test (ISO 18916)',
    use: 'negatives on film, one each; for film that may be cellulose nitrate ask a conservator first',
    source: M,
  });

/** Pages for small negatives and slides are as large as a letter sheet with holes for a binder. From memory. */
const PAGE = mm(286, 235);

const page = (id: string, words: string, takes: Form, inside: Face, use: string): Holder => ({
  ...negative(id, '', inside, 0),
  id,
  one: `page for ${words}`,
  many: `pages for ${words}`,
  outside: PAGE,
  limit: takes === 'slide' ? 3.5 : 1,
  takes: [takes],
  material: 'polyester or polypropylene that passes the Photographic Activity Test (ISO 18916)',
  use,
});

const plate = (size: string, long: number, short: number): Holder =>
  sleeve(
    [`four-flap enclosure, ${size} in`, `four-flap enclosures, ${size} in`],
    enlarged(inches(long, short), 2),
    4,
    {
      id: `four-flap-${plain(size)}`,
      limit: 5,
      wall: 1,
      takes: ['glass'],
      shelf: 'glass',
      material: 'paper that passes the Photographic Activity Test (ISO 18916)',
      use: 'one glass plate; it stands on its long edge',
      source: P,
    },
  );

const disc = (inch: number, across: number): Holder =>
  sleeve([`${inch}-inch record sleeve`, `${inch}-inch record sleeves`], mm(across, across), 6, {
    id: `record-sleeve-${inch}`,
    limit: 5,
    wall: 1,
    takes: ['disc'],
    shelf: 'discs',
    material: 'acid-free board with an inner sleeve of polyethylene',
    use: 'one gramophone record, of shellac or vinyl; it stands upright',
    source: M,
  });

const can = (inch: number): Holder =>
  sleeve([`${inch}-inch film can`, `${inch}-inch film cans`], enlarged(inches(inch, inch), 3), 8, {
    id: `film-can-${inch}`,
    limit: 40,
    wall: 4,
    takes: ['film'],
    shelf: 'film',
    material: 'vented polypropylene',
    use: 'one reel of film, lying flat; for film that may be cellulose nitrate ask a conservator first',
    source: M,
  });

const tape = (id: string, words: string, inside: Face, use: string): Holder =>
  sleeve([words, `${words}s`], inside, 10, {
    id,
    limit: 30,
    wall: 4,
    takes: ['tape'],
    shelf: 'tapes',
    material: 'polypropylene or acid-free board',
    use,
    source: M,
  });

const reelCase = (inch: number): Holder =>
  tape(
    `tape-case-${inch}`,
    `${inch}-inch tape case`,
    enlarged(inches(inch, inch), 3),
    'one reel of sound tape; it stands upright',
  );

/** What is the same everywhere: the formats of photographs, records, film and tape do not follow those of paper. */
export const SLEEVES: readonly Holder[] = [
  print('2¼ × 3¼', 3.25, 2.25),
  print('3½ × 5', 5, 3.5),
  print('4 × 6', 6, 4),
  print('5 × 7', 7, 5),
  print('8 × 10', 10, 8),
  print('11 × 14', 14, 11),
  page('page-35', '35 mm negatives', 'negative', mm(230, 37), '35 mm negatives in strips, 35 of them'),
  page(
    'page-120',
    'roll film negatives',
    'negative',
    mm(195, 63),
    'roll film negatives in strips, 8 of them',
  ),
  page('page-slides', 'slides', 'slide', mm(53, 53), '20 slides in mounts of 2 × 2 in'),
  negative('4x5', '4 × 5 in', mm(130, 105), 8),
  negative('5x7', '5 × 7 in', mm(181, 130), 8),
  negative('8x10', '8 × 10 in', mm(257, 206), 10),
  plate('3¼ × 4¼', 4.25, 3.25),
  plate('4 × 5', 5, 4),
  plate('4¾ × 6½', 6.5, 4.75),
  plate('5 × 7', 7, 5),
  plate('6½ × 8½', 8.5, 6.5),
  plate('8 × 10', 10, 8),
  disc(7, 181),
  disc(10, 258),
  disc(12, 308),
  can(3),
  can(4),
  can(5),
  can(7),
  can(10.5),
  can(12),
  tape(
    'cassette-case',
    'cassette case',
    mm(112, 72),
    'one sound cassette without a case of its own; it stands upright',
  ),
  tape(
    'video-case',
    'video case',
    mm(192, 108),
    'one video cassette without a case of its own; it stands upright',
  ),
  reelCase(3),
  reelCase(5),
  reelCase(7),
  reelCase(10.5),
  {
    ...sleeve(['small envelope', 'small envelopes'], mm(150, 100), 10, {
      id: 'envelope-small',
      limit: 12,
      wall: 0.5,
      takes: ['object'],
      shelf: 'objects',
      material: 'acid-free paper',
      use: 'small flat keepsakes: a lock of hair, coins, badges',
      source: P,
    }),
    type: 'envelope',
  },
];

/** How many things lie side by side in one of them, where it has pockets: seven strips of five, four of two, 5 × 4. */
const POCKETS: ReadonlyMap<string, number> = new Map([
  ['page-35', 35],
  ['page-120', 8],
  ['page-slides', 20],
]);

/** How many things a sleeve holds, each in a pocket of its own; one, where it has no pockets. */
export const pocketsOf = ({ id }: Holder): number => POCKETS.get(id) ?? 1;
