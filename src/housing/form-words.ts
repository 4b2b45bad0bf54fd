import type { Form } from './model.ts';

/** Words that make another form of a thing than its kind says. */
interface FormWords {
  form: Form;
  /** Forms that it can change. A mounted map is a sheet still. */
  from: readonly Form[];
  /** In the columns size, kind and condition, in small letters. */
  words: RegExp;
  /** Where the words are trusted; in the condition, many of them tell what was, or what a part of it is. */
  columns: readonly FormColumn[];
  source: string;
}

/** Columns whose words may change the form. */
export type FormColumn = 'kind' | 'size' | 'condition';

const P = 'common practice';
const EVERYWHERE: readonly FormColumn[] = ['kind', 'size', 'condition'];

/** The first row that fits decides. */
const FORM_WORDS: readonly FormWords[] = [
  {
    form: 'framed',
    from: ['sheet', 'photograph', 'mounted', 'bound', 'textile'],
    words:
      /\bframed\b|\bin (?:(?:a|an|its|the|old|original|gilt|wooden|oval|glazed) ){0,3}frame\b|(?:^|[,;(] ?)frame\b/g,
    columns: EVERYWHERE,
    source: P,
  },
  {
    form: 'rolled',
    from: ['sheet', 'photograph'],
    words: /\brolled\b(?! (?:edge|corner|up at|at the))|\bon (?:a )?rollers?\b/g,
    columns: EVERYWHERE,
    source: P,
  },
  {
    form: 'glass',
    from: ['photograph', 'negative', 'slide'],
    words:
      /\bglass (?:plates?|negatives?|positives?|slides?)\b|(?<!under |behind |with )\bon glass\b|^glass\b(?! mount)/g,
    columns: ['kind', 'size'],
    source: P,
  },
  {
    form: 'mounted',
    from: ['photograph'],
    words:
      /\bmounted\b|\b(?:on|in) (?:(?:a|an|its|the|card|oval|board|original) ){0,3}mount\b|\bon (?:card|board|cardboard)\b/g,
    columns: EVERYWHERE,
    source: P,
  },
  {
    form: 'bound',
    from: ['photograph', 'sheet'],
    words: /(?:^|[,;(] ?)(?:photo |photograph )?album\b/g,
    columns: ['size'],
    source: P,
  },
];

// What stands before such a word where it says that the thing is not so, or not any more, or not yet.
const DENIED =
  /(?:\bun|\bun-|\b(?:not|no longer|never|formerly|once|previously|was|were|been|without|removed from|taken from|out of|from|to be|be|for|used to be|half|part|partly|one|some|few|several|two|three|timber|wood|wooden|steel|iron))[ -]?(?:(?:a|an|its|the|their|is|are|of|them|in|be) ?)*$/;
// What stands behind it where the frame or the mount is gone, or left a mark.
const GONE =
  /^,? ?(?:is |was |has been |now )?(?:removed|missing|lost|gone|taken off|off|discarded|marks?\b|stains?\b|shadow)/;

/** The form that words of a column make of a thing of another form; undefined where they say nothing safe. */
export function formByWords(text: string, column: FormColumn, form: Form): Form | undefined {
  return FORM_WORDS.find(
    (row) => row.columns.includes(column) && row.from.includes(form) && says(text, row.words),
  )?.form;
}

function says(text: string, words: RegExp): boolean {
  for (const match of text.matchAll(words)) {
    // "is framed" says what is, "was framed" what was; a bracket or a comma begins anew.
    const before = text.slice(Math.max(0, match.index - 40), match.index).replace(/^.*[,;(]/, '');
    if (!DENIED.test(before) && !GONE.test(text.slice(match.index + match[0].length))) return true;
  }
  return false;
}

const CLEAR = /fram|type|carte|cabinet card|glass|mount$/i;
const FRAMED =
  /^framed (?!by\b|in\b|with\b|house|barn|building)|[,;(] ?(?:and )?framed ?(?:[),;.]|$)|\band framed$|\bin (?:a|its) frame$/i;
const MOUNTED = /\b(?:on|in) (?:an?|its) (?:\w+ )?mount$/i;
const BEGINS: readonly { form: Form; words: RegExp }[] = [
  { form: 'glass', words: /^(?:daguerreotype|ambrotype|glass (?:plate|negative)|lantern slide)s?\b/i },
  { form: 'mounted', words: /^(?:carte de visite|cartes de visite|cabinet cards?)\b/i },
];

/**
 * The form that a title tells for certain: that a thing is framed, or what kind of photograph it is. Other words of a
 * title are about what it shows: the mounted police, a rolled carpet, a glass of cider.
 */
export function formByTitle(title: string): Form | undefined {
  if (!CLEAR.test(title)) return undefined;
  if (FRAMED.test(title)) return 'framed';
  if (MOUNTED.test(title)) return 'mounted';
  return BEGINS.find(({ words }) => words.test(title))?.form;
}
