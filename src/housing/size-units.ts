import { INCH } from './measures.ts';

/** Units of length as people write them, each in millimetres. */
const UNITS: readonly { mm: number; words: string }[] = [
  { mm: 1, words: 'mm|millimeter|millimeters|millimetre|millimetres|milimetros' },
  { mm: 10, words: 'cm|cms|centimeter|centimeters|centimetre|centimetres|zentimeter|centimetros' },
  { mm: 100, words: 'dm' },
  { mm: 1000, words: 'm|meter|meters|metre|metres|metros' },
  { mm: INCH, words: 'in|ins|inch|inches|"|zoll|tommer|pouce|pouces|pulgada|pulgadas' },
  { mm: 12 * INCH, words: "ft|foot|feet|'|fuss|fot|pied|pieds|pie|pies" },
  { mm: 36 * INCH, words: 'yd|yds|yard|yards' },
];

/** What stands behind a number in the size column and is no length: weight, time, counts, bytes. */
const OTHER_UNITS =
  'lb|lbs|pound|pounds|kg|kilo|kilos|g|gram|grams|oz|ounces|min|mins|minute|minutes|hour|hours|hrs|sec|seconds|kb|mb|gb|bytes|px|pixels|dpi|page|pages|pp|sheet|sheets|leaf|leaves|frames|exposures|copies|pieces|items|years';

/** Millimetres of a unit by its word; `other` for those that are no length. */
export const UNIT_WORDS: ReadonlyMap<string, number | 'other'> = new Map<string, number | 'other'>([
  ...UNITS.flatMap(({ mm, words }) => words.split('|').map((word): [string, number] => [word, mm])),
  ...OTHER_UNITS.split('|').map((word): [string, 'other'] => [word, 'other']),
]);

const set = (words: string): ReadonlySet<string> => new Set(words.split('|'));

/** Words between the measures of one thing. */
export const CROSSES = set('x|×|х|✕|✖|*|/|by|par|por|mal|auf|ganger');

/** Words that say which measure a number is. */
export const LABELS = set(
  'diameter|diam|dia|across|round|ø|⌀|durchmesser|diametre|square|sq|tall|high|height|h|hoch|hohe|hauteur|wide|width|w|broad|breit|breite|largeur|long|length|l|deep|depth|d|thick|thickness|dick|dicke|tykk',
);

/** Those of them with which one measure is enough: round, or as wide as high. */
export const ROUND_LABELS = set('diameter|diam|dia|across|round|ø|⌀|durchmesser|diametre|square|sq');

/** Those of them that say nothing of how large the front is. */
export const THICK_LABELS = set('thick|thickness|dick|dicke|tykk');

/** Words that make of a measure the least that something has, so that nothing of that size would cover it. */
export const MORE = set('larger|bigger|longer|wider|over|more|exceeds|exceeding|uber|plus');

/** Words between the two ends of a range, or between alternatives. */
export const RANGES = set('-|to|or|and|&|+|bis|und|oder|et|ou|y|til|og|eller');

/** Words of the size column that say how large a thing looks to whoever holds it; alone they are no measure. */
export const VAGUE = set('large|big|huge|small|tiny|little|medium|middling|very|quite|rather|fairly|extra');

/** Words of the size column that change nothing about the size. */
export const FILLERS = set(
  'size|sizes|sized|format|formats|grosse|taille|tamano|storrelse|paper|page|about|approx|approximately|roughly|circa|ca|around|each|all|mostly|ish|so|a|the|an|in|of|on|standard|normal|regular|din|iso|us|uk|old|new|folded|unfolded|flat|open|opened|portrait|landscape|upright|black|white|colour|color|photo|photos|photograph|photographs|photographic|print|prints|picture|pictures|snapshot|snapshots|boxed|box|can|sleeve|case|cased|s|loose|framed|unframed|mounted|unmounted|rolled',
);
