import { FORMS_BY_KIND, type Usual } from './forms.ts';
import { inches, mm } from './measures.ts';
import type { Face, Form, Shelf } from './model.ts';

const M = 'as such things usually are, from memory';

const rows = (
  words: string,
  form: Form,
  shelf: Shelf,
  size: Face,
  each: number,
  source = M,
): [string, Usual][] => words.split('|').map((word) => [word, { form, shelf, size, each, source }]);

const objects = (words: string, size: Face, each: number) => rows(words, 'object', 'objects', size, each);
const textiles = (words: string, size: Face, each: number) => rows(words, 'textile', 'textiles', size, each);
const carriers = (words: string, size: Face, each: number) => rows(words, 'digital', 'objects', size, each);

/**
 * Words for things that are no paper, in the singular, as they stand in a kind or at the beginning of a title; they are
 * no kinds of their own. Thickness in millimetres. Extend it a row at a time.
 */
const OBJECTS: readonly [string, Usual][] = [
  ...objects('baby shoe|baby shoes|bootee|bootie', mm(150, 120), 70),
  ...objects('shoe|boot|slipper|sandal|clog|skate', mm(320, 230), 120),
  ...objects('teapot|coffee pot|kettle|jug|pitcher|vase|bowl|urn|basket|bucket', mm(250, 160), 160),
  ...objects(
    'cup|mug|saucer|tankard|goblet|candlestick|bottle|jar|trophy|loving cup|silver cup|prize cup|figurine|ornament',
    mm(250, 120),
    120,
  ),
  ...objects(
    'spoon|fork|cutlery|knife|penknife|scissors|razor|pen|fountain pen|pipe|whistle',
    mm(220, 60),
    25,
  ),
  ...objects('bag|handbag|satchel|briefcase|rucksack|knapsack|haversack', mm(400, 300), 120),
  ...objects('purse|wallet|pouch|thimble|rosary|compass|lighter|snuffbox|snuff box', mm(120, 90), 30),
  ...objects('suitcase|trunk|hatbox|hat box|toolbox|tool box', mm(700, 450), 250),
  ...objects('gas mask|helmet|hat|cap|bonnet|top hat|wig', mm(320, 260), 180),
  ...objects('doll|teddy bear|teddy|rattle|puppet|toy|marble|board game|jigsaw', mm(400, 250), 120),
  ...objects('clock|mantel clock|lamp|lantern|telephone|camera|binoculars|telescope', mm(350, 250), 200),
  ...objects('watch|pocket watch|wristwatch|spectacles|eyeglasses|glasses|lorgnette', mm(170, 80), 50),
  ...objects(
    'ring|wedding ring|brooch|necklace|bracelet|locket|earrings|earring|cufflink|tiepin',
    mm(80, 60),
    25,
  ),
  ...objects('coin|badge|token|button|buckle|bead', mm(40, 40), 4),
  ...objects('medal|insignia|key', mm(90, 45), 8),
  ...objects(
    'box|tin|casket|chest|cigar box|jewellery box|jewelry box|sewing box|music box',
    mm(320, 230),
    150,
  ),
  ...objects('bell|iron|tool|hammer|saw|plane|plaque|shield|horseshoe|weight|scales', mm(240, 180), 100),
  ...objects('typewriter|sewing machine|accordion|gramophone|phonograph', mm(480, 380), 280),
  ...objects(
    'violin|fiddle|banjo|guitar|sword|bayonet|walking stick|cane|umbrella|parasol|oar',
    mm(980, 250),
    120,
  ),
  // In their cases, where such things have one.
  ...objects(
    'viola|mandolin|ukulele|clarinet|oboe|saxophone|trombone|rifle|shotgun|musket',
    mm(980, 250),
    120,
  ),
  ...objects('cello|harp|cradle|sledge|spinning wheel|loom|saddle', mm(1300, 500), 400),
  ...objects('cornet|trumpet|concertina|melodeon|zither|drum|tambourine', mm(500, 250), 200),
  ...objects('tuba|euphonium|french horn|bagpipe', mm(700, 450), 350),
  ...objects('harmonica|mouth organ|flute|fife|piccolo|recorder|bugle|fan|fishing reel', mm(380, 120), 60),
  ...objects('axe|hatchet|spade|shovel|hoe|rake|scythe|pitchfork|racket|fishing rod', mm(1200, 250), 80),
  ...objects('chisel|screwdriver|spanner|wrench|pliers|drill|trowel|sickle|shears|dagger', mm(350, 120), 40),
  ...objects('pistol|revolver|gun', mm(320, 180), 50),
  ...objects('dinner plate|dish|mirror|picture frame', mm(320, 280), 40),
  ...objects('statue|statuette|bust|carving|sculpture|globe|radio|wireless|projector', mm(400, 300), 300),
  ...objects('sextant|octant|microscope', mm(350, 300), 200),
  ...objects('barometer|paperweight|tape measure|measuring tape|kaleidoscope', mm(200, 120), 60),
  ...objects('opera glasses|field glasses|stethoscope|sewing kit|hip flask|flask', mm(220, 150), 70),
  ...objects('keyring|key ring|tie clip|pin|hat pin|epaulette|banknote|hair slide', mm(150, 90), 10),
  ...objects('toy car|powder compact|jew’s harp|mouth harp|teacup|tea cup', mm(120, 90), 80),
  ...objects('letter opener|paper knife|pocket knife|cigarette holder|corkscrew|nutcracker', mm(220, 60), 25),
  ...objects('horse brass|photo frame|photograph frame|tray', mm(320, 280), 40),
  ...objects('book end|bookend|candle holder|shaving mug|christening mug|shaving brush', mm(200, 150), 120),
  ...objects('map case|butter mould|cake mould|cookie cutter|spyglass', mm(300, 200), 80),
  ...objects('letter box|letterbox|postbox|record player|slide projector|sewing basket', mm(400, 350), 250),
  ...objects('biscuit tin|tobacco tin', mm(240, 190), 90),
  ...objects('jam jar', mm(130, 80), 80),
  ...objects('card table|sewing table|weathervane|weather vane', mm(800, 800), 150),
  ...objects('piano|organ', mm(1500, 1300), 600),
  ...objects('lock of hair|plait|braid', mm(150, 100), 10),

  ...textiles(
    'gown|christening gown|wedding dress|robe|coat|overcoat|jacket|cloak|uniform|suit',
    inches(60, 30),
    6,
  ),
  ...textiles('dress|shirt|blouse|skirt|petticoat|waistcoat|apron|nightgown', inches(48, 24), 3),
  ...textiles('shawl|scarf|veil|tablecloth|tapestry|banner|flag|curtain|sash|pillowcase', inches(60, 60), 2),
  ...textiles('blanket|bedspread|coverlet|rug|quilt|eiderdown', inches(90, 80), 6),
  ...textiles('cushion|pillow|hooked rug|bedcover', inches(30, 24), 60),
  ...textiles('tea towel|table runner|tea cosy|needlework|pyjamas', inches(30, 20), 4),
  ...textiles(
    'glove|mitten|stocking|sock|collar|necktie|bib|handkerchief|doily|sampler|lace|cuff|napkin|towel|tie|bow tie|ribbon',
    inches(24, 12),
    5,
  ),

  // Each in its case or sleeve, from memory.
  ...carriers('floppy|floppie|floppy disk|floppy disc|diskette|disk', mm(94, 90), 4),
  ...carriers('cd|cd-rom|compact disc|compact disk', mm(142, 125), 10),
  ...carriers('dvd|blu-ray', mm(190, 135), 15),
  ...carriers(
    'usb stick|usb drive|usb|memory stick|thumb drive|flash drive|memory card|sd card',
    mm(80, 40),
    15,
  ),
  ...carriers('hard drive|hard disk|external drive|zip disk|minidisc', mm(160, 110), 30),

  ...rows('box file|lever arch file|ring binder|binder', 'bound', 'volumes', inches(12.5, 11), 75),
];

// Kinds that a title names for certain where it begins with them; a "record" or a "file" may be anything.
const KINDS = [
  'bible',
  'family bible',
  'photograph album',
  'scrapbook',
  'autograph album',
  'diary',
  'account book',
  'yearbook',
  'negative',
  'glass plate',
  'lantern slide',
  'daguerreotype',
  'ambrotype',
  'film reel',
  'video tape',
  'audio cassette',
  'gramophone record',
  'quilt',
];
const ALSO: Readonly<Record<string, string>> = {
  album: 'photograph album',
  'photo album': 'photograph album',
  ledger: 'account book',
  'glass negative': 'glass plate',
  cassette: 'audio cassette',
  'cassette tape': 'audio cassette',
  'home movie': 'film reel',
  'cine film': 'film reel',
};

/** Words in a kind that the table of kinds does not hold: what they are, by the word in small letters. */
export const OBJECTS_BY_WORD: ReadonlyMap<string, Usual> = new Map(OBJECTS);

/** Words at the beginning of a title that say for certain that the thing is no loose paper. */
export const THINGS_BY_TITLE: ReadonlyMap<string, Usual> = new Map([
  ...OBJECTS,
  ...[...KINDS.map((kind) => [kind, kind] as const), ...Object.entries(ALSO)].flatMap(
    ([word, kind]): [string, Usual][] => {
      const usual = FORMS_BY_KIND.get(kind);
      return usual === undefined ? [] : [[word, usual]];
    },
  ),
]);

/** Looks up a word, or several of it, in one of the tables. */
export function lookUpObject(
  table: ReadonlyMap<string, Usual>,
  word: string,
): { usual: Usual; word: string; plural: boolean } | undefined {
  for (const one of [word, word.replace(/s$/, ''), word.replace(/es$/, ''), word.replace(/ies$/, 'y')]) {
    const usual = table.get(one);
    if (usual !== undefined) return { usual, word: one, plural: one !== word };
  }
  return undefined;
}
