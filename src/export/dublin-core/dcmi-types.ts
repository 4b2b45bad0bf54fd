/** The terms of the DCMI Type Vocabulary that a description of a collection can need (dcmitype.xsd, 2008-02-11). */
export const DCMI_TYPES = [
  ...(['Collection', 'Dataset', 'Event', 'Image', 'InteractiveResource', 'MovingImage'] as const),
  ...(['PhysicalObject', 'Service', 'Software', 'Sound', 'StillImage', 'Text'] as const),
] as const;

export type DcmiType = (typeof DCMI_TYPES)[number];

/** What a kind of material is by the DCMI Type Vocabulary; a null type where no single term is surely right. */
interface KindType {
  /** As the table of kinds calls one of them. */
  kind: string;
  type: DcmiType | null;
  source: string;
}

const NAMED = 'named as an example in the definition of the term (DCMI Type Vocabulary, from memory)';
const WORDS = 'a resource consisting mostly of words for reading: the definition of Text (from memory)';
const STILL = 'a static visual representation: the definition of StillImage (from memory)';
const THING = 'an inanimate three-dimensional object: the definition of PhysicalObject (from memory)';
const MIXED = 'words and pictures, or things of several sorts, side by side: no single term is surely right';
const ANYTHING = 'may be anything';

const rows = (type: DcmiType | null, source: string, ...kinds: string[]): KindType[] =>
  kinds.map((kind) => ({ kind, type, source }));

/**
 * The DCMI type of each kind in the table of kinds; `null` where no single one is surely right: no type is better than a
 * wrong one, for whoever harvests the record sorts and filters by it.
 */
export const KIND_TYPES: readonly KindType[] = [
  ...rows('Text', NAMED, 'letter', 'book', 'newspaper', 'email'),
  ...rows('Text', WORDS, 'family Bible', 'obituary', 'memoir', 'telegram', 'invitation', 'diary', 'notebook'),
  ...rows('Text', WORDS, 'manuscript', 'autograph album', 'certificate', 'deed', 'will', 'legal paper'),
  ...rows('Text', WORDS, 'ration book', 'passport', 'account book', 'receipt', 'business paper', 'ticket'),
  ...rows('Text', WORDS, 'school report', 'school paper', 'yearbook', 'military paper', 'medical paper'),
  ...rows('Text', WORDS, 'recipe', 'cookery book', 'press cutting', 'magazine', 'pamphlet', 'programme'),
  ...rows('Text', WORDS, 'timetable'),

  ...rows('StillImage', NAMED, 'map', 'plan', 'drawing', 'painting'),
  ...rows(
    'StillImage',
    STILL,
    'print',
    'silhouette',
    'photograph',
    'mounted photograph',
    'framed photograph',
  ),
  ...rows(
    'StillImage',
    STILL,
    'photograph album',
    'negative',
    'glass plate',
    'slide',
    'tintype',
    'ambrotype',
    'daguerreotype',
  ),

  ...rows('MovingImage', NAMED, 'film reel', 'video tape'),
  ...rows(
    'Sound',
    'recorded sound: the definition of Sound (from memory)',
    'sound tape',
    'gramophone record',
  ),
  ...rows('PhysicalObject', THING, 'quilt', 'textile', 'medal', 'object', 'lock of hair'),

  ...rows(null, MIXED, 'family tree', 'postcard', 'greeting card', 'envelope', 'poster', 'scrapbook'),
  ...rows(null, 'signs for playing rather than words for reading', 'sheet of music'),
  ...rows(null, ANYTHING, 'digital file'),
];
