import { inches, mm } from './measures.ts';
import type { Face, Form, Shelf, Size } from './model.ts';

/** How things of a kind usually are, where the list says nothing else. */
export interface Usual {
  form: Form;
  shelf: Shelf;
  size: Size;
  /** Thickness of one, in millimetres. */
  each: number;
  /** Thickness of one sheet, in millimetres, where creases make it more than that of paper. */
  sheet?: number;
  source: string;
}

const M = 'from memory';
const P = 'common practice';
// A ream of 500 sheets is 51 mm thick: 0.1 mm a sheet.
const A = 'arithmetic: 0.1 mm a sheet';

const LETTER = inches(11, 8.5);
/** What legal papers and long manuscripts usually are, where paper is letter and legal. */
export const LEGAL = inches(14, 8.5);

/** Kinds, or single words for a kind that say more than the kind does, with what they usually are. */
const rows = (
  words: string,
  form: Form,
  shelf: Shelf,
  size: Size,
  each: number,
  source: string,
): [string, Usual][] => words.split('|').map((word) => [word, { form, shelf, size, each, source }]);

const sheets = (words: string, size: Face, each: number, source: string) =>
  rows(words, 'sheet', 'papers', size, each, source);
const thin = (words: string, size: Face, each: number, source: string) =>
  rows(words, 'bound', 'papers', size, each, source);
const volumes = (words: string, size: Face, each: number, source: string) =>
  rows(words, 'bound', 'volumes', size, each, source);
const prints = (words: string, form: Form, size: Face, each: number, source: string) =>
  rows(words, form, 'photographs', size, each, source);
const textiles = (words: string, size: Face, each: number, source: string) =>
  rows(words, 'textile', 'textiles', size, each, source);
const objects = (words: string, size: Size, each: number, source: string) =>
  rows(words, 'object', 'objects', size, each, source);

const PAPERS: [string, Usual][] = [
  // Two sheets folded in three are six leaves; with their creases they take as much when they are flattened.
  ...sheets('letter|military paper|medical letter', LETTER, 0.6, A).map(([word, row]): [string, Usual] => [
    word,
    { ...row, sheet: 0.3 },
  ]),
  ...sheets('family tree|memoir|manuscript|speech|story|will|legal paper|deed|lease', LEGAL, 0.6, A),
  ...sheets('telegram|receipt|recipe|ticket|poem', mm(210, 148), 0.1, A),
  ...sheets('email|certificate|medical paper|school paper|business paper|prescription', LETTER, 0.3, A),
  ...sheets('minutes|typescript|diploma', LETTER, 0.6, A),
  ...sheets('school report|report card|programme', inches(9, 6), 0.4, A),
  ...sheets('obituary|press cutting', mm(210, 148), 0.1, A),
  ...sheets('envelope', inches(9.5, 4.125), 0.3, 'arithmetic: two to three leaves'),
  ...sheets('invitation|greeting card|card', mm(210, 148), 0.8, 'card of 0.4 mm, folded once; from memory'),
  ...sheets('postcard', mm(148, 105), 0.3, M),
  ...sheets(
    'mourning card|memorial card|funeral card|in memoriam card',
    mm(115, 75),
    0.8,
    'card, folded once; from memory',
  ),
  ...sheets('visiting card|calling card|business card', mm(90, 55), 0.3, M),
  ...sheets('cigarette card|trading card', mm(68, 36), 0.4, M),
  ...sheets('stamp|postage stamp', mm(40, 30), 0.1, M),
  ...sheets('cheque|payslip|pay slip|bookmark', mm(210, 100), 0.1, M),
  ...sheets('trade card|membership card|library card|ration card', inches(5, 3), 0.3, M),
  ...sheets('note|permit|travel pass', mm(210, 148), 0.2, M),
  ...sheets('recipe card|identity card', inches(5, 3), 0.3, M),
  ...sheets('magazine|journal issue|comic|comic book', LETTER, 3, M),
  ...sheets('newsletter', LETTER, 0.5, A),
  ...sheets('pamphlet', inches(9, 6), 2, 'arithmetic: 40 pages in covers'),
  ...sheets('leaflet|order of service', mm(210, 148), 0.2, A),
  // Folded once across, as it is sold, 12 to 24 sheets.
  ...sheets('newspaper', inches(23, 15), 2.5, 'arithmetic: 12 sheets folded once'),
  ...sheets('timetable', inches(9, 6), 0.5, A),
  ...sheets('poster', inches(36, 24), 0.2, M),
  ...sheets('handbill|broadside', inches(11, 8.5), 0.1, A),
  ...sheets('map|chart', inches(36, 24), 0.2, M),
  ...sheets('plan', inches(36, 24), 0.2, M),
  ...sheets('sheet of music', inches(12, 9), 1, 'arithmetic: five sheets folded once'),
  ...sheets('drawing', inches(14, 11), 0.3, M),
  ...sheets('print', inches(14, 11), 0.3, M),
  ...sheets('painting|watercolour|watercolor', inches(20, 16), 2, 'on paper or thin board; from memory'),
  ...sheets('silhouette', inches(6, 5), 0.4, M),
];

const VOLUMES: [string, Usual][] = [
  ...thin('notebook|copybook|recipe book', inches(9, 7), 5, 'arithmetic: 80 pages in covers'),
  ...thin('ration book|passport|bank book|bankbook|passbook', inches(6, 4), 2.5, M),
  ...thin('address book|pocket book|savings book|pay book|sketchbook|sketch book', inches(8, 5), 8, M),
  ...volumes('diary|logbook|log|log book|appointment book', inches(8.5, 6), 20, M),
  ...volumes('account book|minute book|order book', inches(13, 8), 25, M),
  ...volumes('family bible|bible', inches(12, 10), 100, M),
  ...sheets('bible record', LETTER, 0.3, A),
  ...volumes('autograph album|guest book', inches(8, 6), 20, M),
  ...volumes('yearbook', inches(11, 8.5), 15, M),
  ...volumes('book|cookery book|song book|hymnal', inches(9, 6), 25, M),
  ...volumes('atlas', inches(15, 11), 30, M),
  ...volumes('scrapbook', inches(15, 12), 40, P),
  ...volumes('photograph album', inches(14, 11), 40, P),
];

const PICTURES: [string, Usual][] = [
  ...prints('photograph', 'photograph', inches(5, 3.5), 0.3, M),
  ...prints('mounted photograph', 'mounted', inches(10, 8), 2, P),
  ...prints('cabinet card', 'mounted', inches(6.5, 4.25), 1.5, M),
  ...prints('stereograph|stereoview|stereo card', 'mounted', inches(7, 3.5), 1.5, M),
  ...prints('polaroid', 'photograph', inches(4.25, 3.5), 0.7, M),
  ...prints('contact sheet', 'photograph', inches(10, 8), 0.3, M),
  ...prints('carte de visite', 'mounted', inches(4, 2.5), 0.8, M),
  // With its glass and its back. A frame lies flat, with nothing on it.
  ...rows('framed photograph', 'framed', 'oversize', inches(12, 10), 25, P),
  ...prints('negative', 'negative', mm(90, 60), 0.2, M),
  ...prints('slide', 'slide', inches(2, 2), 2, M),
  ...rows('glass plate', 'glass', 'glass', inches(6.5, 4.75), 2, M),
  ...rows('lantern slide', 'glass', 'glass', inches(4, 3.25), 3, M),
  ...prints(
    'tintype|ferrotype',
    'photograph',
    inches(3.25, 2.75),
    0.5,
    'sixth plate of thin iron; from memory',
  ),
  ...rows(
    'ambrotype|daguerreotype',
    'glass',
    'glass',
    inches(3.75, 3.25),
    20,
    'sixth plate in its case; from memory',
  ),
];

const MEDIA: [string, Usual][] = [
  ...rows('film reel', 'film', 'film', inches(7, 7), 21, '16 mm, 400 ft; from memory'),
  ...rows('sound tape|reel-to-reel tape', 'tape', 'tapes', inches(7, 7), 15, M),
  ...rows(
    'cassette|audio cassette|cassette tape|compact cassette|music cassette|audiocassette|audio cassette tape|microcassette|dictaphone tape',
    'tape',
    'tapes',
    mm(109, 70),
    17,
    M,
  ),
  ...rows('video tape', 'tape', 'tapes', mm(188, 104), 25, M),
  ...rows('gramophone record|disc', 'disc', 'discs', inches(12, 12), 3, 'in its sleeve; from memory'),
  ...rows('digital file', 'digital', 'papers', mm(0, 0), 0, 'it takes no place on the shelf'),
  ...rows('disk|memory stick', 'digital', 'objects', mm(94, 90), 8, M),
];

const THINGS: [string, Usual][] = [
  // Spread out; whoever boxes it reckons with its folds.
  ...textiles('quilt', inches(90, 80), 5, M),
  ...textiles('textile|dress|clothing|uniform|flag', inches(60, 30), 2, M),
  ...textiles('cloth|lace|sampler|apron|handkerchief|embroidery', inches(24, 18), 2, M),
  ...objects('medal|coin|token', mm(60, 45), 8, 'without its case; from memory'),
  ...objects('object', mm(150, 100), 50, 'as large as a hand; from memory'),
  ...objects('jewellery', mm(80, 60), 20, M),
  ...objects('lock of hair', mm(150, 100), 3, 'in an envelope; from memory'),
];

/** What things usually are, by their kind or by a word for it, in small letters. */
export const FORMS_BY_KIND: ReadonlyMap<string, Usual> = new Map([
  ...PAPERS,
  ...VOLUMES,
  ...PICTURES,
  ...MEDIA,
  ...THINGS,
]);

/** Where nothing says what a thing is. Most of what families keep is paper. */
export const UNKNOWN_KIND: Usual = {
  form: 'sheet',
  shelf: 'papers',
  size: LETTER,
  each: 0.6,
  source: 'as for letters',
};

/** What a thing is that turns out to be mounted, framed, on glass. What is rolled stays what it is, on another shelf. */
export const BY_FORM: Readonly<Record<Exclude<Form, 'sheet' | 'textile' | 'digital' | 'rolled'>, Usual>> = {
  photograph: usual('photograph'),
  mounted: usual('mounted photograph'),
  framed: usual('framed photograph'),
  bound: usual('photograph album'),
  negative: usual('negative'),
  slide: usual('slide'),
  glass: usual('glass plate'),
  disc: usual('gramophone record'),
  film: usual('film reel'),
  tape: usual('sound tape'),
  object: usual('object'),
};

function usual(kind: string): Usual {
  return FORMS_BY_KIND.get(kind) ?? UNKNOWN_KIND;
}
