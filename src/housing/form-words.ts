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
  /** The kind whose usual measures it then has, where those of its form say too little. */
  as?: string;
  source: string;
}

/** Columns whose words may change the form. */
type FormColumn = 'kind' | 'size' | 'condition';

const P = 'common practice';
const EVERYWHERE: readonly FormColumn[] = ['kind', 'size', 'condition'];

/** The first row that fits decides. */
const FORM_WORDS: readonly FormWords[] = [
  {
    form: 'framed',
    from: ['sheet', 'photograph', 'mounted', 'bound', 'textile'],
    words:
      /\bframed\b|\b(?:in|with) (?:(?:a|an|its|the|old|original|gilt|gold|black|oak|wooden|oval|glazed) ){0,3}frame\b|\b(?:gilt|gilded|gold|black|oak|wooden|oval) frame\b|(?:^|[,;(] ?)frame\b/g,
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
    // A photograph in its case, with its glass.
    form: 'glass',
    from: ['photograph', 'mounted'],
    words:
      /\bcased\b|\b(?:union|hinged|velvet) case\b|\bin (?:(?:a|an|its|the|original|old|leather|brass|folding) ){1,3}case\b(?! of)/g,
    columns: EVERYWHERE,
    as: 'daguerreotype',
    source: P,
  },
  {
    // On canvas, a painting has a stretcher, and lies as what is framed does.
    form: 'framed',
    from: ['sheet'],
    words: /\boil (?:painting|portrait|on (?:canvas|board|panel))|\bon canvas\b|\bstretcher\b|\bstretched\b/g,
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
  /(?:\bun|\bun-|\b(?:not|no longer|never|formerly|once|previously|was|were|been|without|removed from|taken from|out of|from|to be|be|for|used to be|half|part|partly|one|some|few|several|two|three|timber|steel|iron))[ -]?(?:(?:a|an|its|the|their|is|are|of|them|in|be) ?)*$/;
// What stands behind it where the frame or the mount is gone, or left a mark.
const GONE =
  /^,? ?(?:is |was |has been |now )?(?:removed|missing|lost|gone|taken off|off|discarded|marks?\b|stains?\b|shadow)/;

/** What words of a column make of a thing of another form; undefined where they say nothing safe. */
export function formByWords(
  text: string,
  column: FormColumn,
  form: Form,
): Pick<FormWords, 'form' | 'as'> | undefined {
  return FORM_WORDS.find(
    (row) => row.columns.includes(column) && row.from.includes(form) && says(text, row.words),
  );
}

function says(text: string, words: RegExp): boolean {
  for (const match of text.matchAll(words)) {
    // "is framed" says what is, "was framed" what was; a bracket or a comma begins anew.
    const before = text.slice(Math.max(0, match.index - 40), match.index).replace(/^.*[,;(]/, '');
    if (!DENIED.test(before) && !GONE.test(text.slice(match.index + match[0].length))) return true;
  }
  return false;
}
