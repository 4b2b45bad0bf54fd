// Common practice, all of it: the words with which people write how many there are. A blank stands for any blanks.

const ONES = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const TEENS = 'thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Number words, from one to ninety-nine. */
export const NUMBER_WORDS: ReadonlyMap<string, number> = new Map([
  ...[...ONES, ...TEENS].map((word, index): [string, number] => [word, index + 1]),
  ...TENS.flatMap((word, index): [string, number][] => [
    [word, 20 + 10 * index],
    ...ONES.slice(0, 9).flatMap((one, unit): [string, number][] => [
      [`${word}-${one}`, 21 + 10 * index + unit],
      [`${word} ${one}`, 21 + 10 * index + unit],
    ]),
  ]),
]);

/** Words for several, which a number can stand before; `2 dozen`, `a pair`. */
export const MULTIPLES: ReadonlyMap<string, number> = new Map([
  ['pair', 2],
  ['pairs', 2],
  ['dozen', 12],
  ['dozens', 12],
  ['score', 20],
  ['gross', 144],
  ['hundred', 100],
]);

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));

/** What each counts as one thing. In the singular. */
export const THINGS = words(
  'piece item thing pc copy letter card postcard photo photograph picture print snapshot slide negative transparency plate receipt bill invoice certificate document note recipe cutting clipping ticket telegram map plan poster drawing painting medal coin badge button object image file record disc disk cd dvd lp single issue programme leaflet pamphlet booklet',
);

/** What is a thing itself, but may hold several of those that the kind names: 2 albums of photographs. */
export const HOLDERS = words(
  'volume vol book notebook album scrapbook diary ledger reel roll spool tape cassette envelope magazine newspaper',
);

/** What only holds things: without a number of what is in it, nobody knows how many there are. */
export const CONTAINERS = words(
  'bundle packet packets pack set pile batch lot box boxes case bag folder file stack tin tray carousel strip group envelope album roll wallet drawer parcel',
);

/** What measures how much one thing is, with how many of them make a sheet: a letter of 6 sheets is one letter. */
export const SHEETS: ReadonlyMap<string, number> = new Map([
  ['sheet', 1],
  ['leaf', 1],
  ['folio', 1],
  ['page', 2],
  ['pp', 2],
  ['side', 2],
]);

/** What may stand between a number and its unit, and changes nothing. */
export const BETWEEN = words(
  'small large big little old new loose single separate different more other extra odd individual colour color coloured colored b&w bw framed mounted unmounted glass lantern film photo photograph picture post birthday christmas greeting greetings sound video audio cine home of',
);

/** Cells that say nothing: a dash where a number could be. */
export const NOTHING = words('- – — -- n/a na');

/** Kinds of which a volume, an envelope or a roll holds several. */
export const LEAVES =
  /letter|card|photo|picture|slide|negative|print|snapshot|receipt|bill|invoice|certificate|document|paper|recipe|cutting|clipping|ticket|telegram|drawing|transparenc|correspondence|mail/;

/** Kinds that are such a volume, envelope or roll themselves, so that what is in them is not counted. */
export const VOLUMES = /album|book|volume|diar|ledger|bible|reel|roll|tape|cassette|envelope|box/;
