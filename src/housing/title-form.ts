import { fold } from '../catalogue/fold.ts';
import { heldIn } from '../kinds/held-in.ts';
import { FORMS_BY_KIND, type Usual } from './forms.ts';
import type { Form } from './model.ts';
import { lookUpObject, THINGS_BY_TITLE } from './object-words.ts';
import { containerIn } from './vessels.ts';

/** What a title says for certain of how the thing must be kept. */
export interface Told {
  form: Form;
  /** What such a thing usually is, where the title says more than its form. */
  usual?: Usual;
  /** The word that says it. */
  word: string;
  /** Whether it is one thing, however many lie in it: a tin of 200 buttons. */
  inOne?: true;
}

const ADJECTIVE =
  '(?:a|an|its|the|our|old|small|large|big|heavy|narrow|original|plain|carved|ornate|gilt|gilded|gold|silver|brass|metal|wood|wooden|oak|walnut|mahogany|black|white|brown|oval|round|glazed|double|family)';
const CLEAR = /fram|type|carte|cabinet card|glass|mount$|case|oil /i;
const FRAMED = new RegExp(
  [
    `^(?:${ADJECTIVE}[ -])*framed (?!by\\b|in\\b|with\\b|house|barn|building|cottage|shed)`,
    '[,;(] ?(?:and )?framed ?(?:[),;.]|$)',
    '\\band framed$',
    // On canvas, a painting has a stretcher, and lies as what is framed does.
    `^(?:${ADJECTIVE}[ -])*oil (?:painting|portrait)\\b|\\boil on (?:canvas|board|panel)\\b`,
    `(?:\\b(?:in|with) (?:${ADJECTIVE}[ -])*|[,;(] ?(?:${ADJECTIVE}[ -])+)frame(?! ?(?:of|house|building|removed|missing|lost|gone|is|was))\\b`,
  ].join('|'),
  'i',
);
const MOUNTED = /\b(?:on|in) (?:an?|its) (?:\w+ )?mount$/i;
const CASED = new RegExp(
  `^cased\\b|[,;(] ?cased ?(?:[),;.]|$)|\\bin (?:(?:${ADJECTIVE}|leather|velvet|hinged|union)[ -])+case ?(?:[),;.]|$)`,
  'i',
);
/** In a case lies a watch as well; only with such a word is it a photograph. */
const LIKENESS =
  /\b(?:portraits?|photo(?:graph)?s?|pictures?|likeness(?:es)?|daguerreotypes?|ambrotypes?|tintypes?|ferrotypes?)\b/i;
const SAYS = 'cased|unidentified|early|tinted|hand-coloured|(?:whole|half|quarter|sixth|ninth)[- ]plate';
const BEGINS: readonly { form: Form; words: RegExp; as?: string }[] = [
  {
    form: 'glass',
    words: new RegExp(`^(?:(?:${ADJECTIVE}|${SAYS}),? )*(?:daguerreotype|ambrotype)s?\\b`, 'i'),
    as: 'daguerreotype',
  },
  { form: 'glass', words: /^(?:glass (?:plate|negative)|lantern slide)s?\b/i },
  { form: 'mounted', words: /^(?:carte de visite|cartes de visite|cabinet cards?)\b/i },
];
// A letter about the picture in the gilt frame, and the bill for it, are paper.
const ABOUT = /\b(?:about|concerning|regarding|asking|bills?|receipts?|invoices?|orders?)\b/i;

/**
 * The form that a title tells for certain: that a thing is framed or cased, or what kind of photograph it is. Other words
 * of a title are about what it shows: the mounted police, a rolled carpet, a glass of cider.
 * @param kindForm the form of its kind; undefined where that is blank or not known
 */
export function formByTitle(title: string, kindForm?: Form): Told | undefined {
  if (!CLEAR.test(title)) return undefined;
  const framed = FRAMED.exec(title);
  if (framed !== null && !ABOUT.test(title.slice(0, framed.index))) return { form: 'framed', word: 'framed' };
  const begins = BEGINS.find(({ words }) => words.test(title));
  if (begins?.as !== undefined) return { ...CASE, word: begins.as };
  const mayBeCased = kindForm === undefined ? LIKENESS.test(title) : CASEABLE.has(kindForm);
  if (mayBeCased && CASED.test(title)) return { ...CASE, word: 'cased' };
  if (MOUNTED.test(title)) return { form: 'mounted', word: 'mounted' };
  return begins && { form: begins.form, word: begins.form };
}

const CASEABLE: ReadonlySet<Form> = new Set(['photograph', 'mounted', 'glass']);
const usual = FORMS_BY_KIND.get('daguerreotype');
/** A photograph in its case lies on glass, and is as thick as the case. */
const CASE = { form: 'glass' as const, ...(usual !== undefined && { usual }) };

// A copy of a diary, and a picture of a teapot, are paper.
const PAPER =
  /\b(?:photo ?cop(?:y|ies)|cop(?:y|ies)|transcripts?|transcriptions?|typescript|pages?|leaf|leaves|extracts?|photo\w*|picture|drawing|sketch|postcard|print|receipts?|bills?|list|inventory|instructions?|patterns?|design|advertisement|entry|entries|neg)\b/i;
const HELD = heldIn('stack tin roll bag jar pair');
const HEAD_ENDS =
  / (?:of|with|without|from|in|for|and|at|on|by|about|to|that|which|who|given|made|used|worn|bought|found|belonging|holding|wearing|carrying|showing|playing|sitting|standing) | ?[,;:/(–—&]| ?(?<!\b(?:dr|mr|mrs|ms|st|rev|jr|sr))\.| - /;

// Hester Bell is no bell: such a word with a capital behind another is a name.
const SURNAMES = new Set(
  'bell key cane button bowl hammer coat boot box chest ring fork lamp marble bead trunk cap'.split(' '),
);
const NAME = /\b\p{Lu}[\p{L}.]+ (?=\p{Lu})/u;

/**
 * What the thing is that a title begins with, where that is no loose paper: "Grandma's teapot", "Baby shoes of Ruth".
 * Undefined for any other; meant for rows whose kind is blank or not known.
 */
export function thingInTitle(title: string): Told | undefined {
  const contained = containerIn(title);
  const content = contained && thingAtHead(contained.content);
  if (contained !== undefined && content?.form === 'object') {
    const { container, word } = contained;
    return { form: 'object', usual: container, word: `${word} of`, inOne: true };
  }
  return thingAtHead(title.replace(HELD, '$2'));
}

function thingAtHead(title: string): Told | undefined {
  const head = fold(title).split(HEAD_ENDS, 1)[0] ?? '';
  const words = head.trim().split(/ +/).slice(-3);
  for (const from of words.keys()) {
    const found = lookUpObject(THINGS_BY_TITLE, words.slice(from).join(' '));
    if (found === undefined) continue;
    if (PAPER.test(title.replace(/\bphoto(?:graph)? albums?\b/i, ''))) return undefined;
    if (SURNAMES.has(found.word) && NAME.test(title.slice(0, head.length))) return undefined;
    return { form: found.usual.form, usual: found.usual, word: found.word };
  }
  return undefined;
}
