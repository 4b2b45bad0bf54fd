/** Words of the table of kinds that mean something else behind other words. */
interface MisleadingHead {
  /** In small letters; their plurals with -s are meant too. */
  heads: string;
  /** Words before it with which it is no such kind; undefined where it says too little behind any. */
  behind?: string;
  /** What it would be. */
  for: string;
}

/**
 * Words that are kinds where they stand alone, and mislead as the last of several: "school record" is no gramophone
 * record, "stamp album" holds no photographs. Common practice, from memory. Extend it a row at a time.
 */
const MISLEADING: readonly MisleadingHead[] = [
  { heads: 'card', for: 'membership card, index card' },
  { heads: 'record|file', for: 'school record, church record, case file, nail file' },
  { heads: 'disc|disk', for: 'compact disc, identity disc' },
  { heads: 'reel', for: 'cotton reel, tape reel' },
  { heads: 'tree', for: 'apple tree, shoe tree' },
  { heads: 'wire|cable|mail', for: 'copper wire, chain mail' },
  { heads: 'chart|survey|score', for: 'growth chart, questionnaire survey, cricket score' },
  { heads: 'account|essay', for: 'eyewitness accounts, photo essay' },
  { heads: 'legal|military|medical', for: 'an adjective, which goes with what is left out' },
  { heads: 'discharge', behind: 'electric|electrical', for: 'no paper' },
  {
    heads: 'album',
    behind: 'stamp|postcard|record|press|clippings?|cuttings?|recipe|card|lp',
    for: 'stamp album',
  },
  {
    heads: 'book',
    behind:
      'sketch|drawing|cheque|check|match|pocket|stamp|receipt|pay|order|minute|record|rule|letter|sample|pattern|invoice|rent|phone',
    for: 'sketch book, cheque book',
  },
  { heads: 'journal', behind: 'medical|trade|scientific|academic|learned|law', for: 'a periodical' },
  { heads: 'magazine', behind: 'rifle|gun|ammunition|cartridge|slide', for: 'a part of a gun' },
  { heads: 'story', behind: 'newspaper|news', for: 'a press cutting' },
  { heads: 'letter', behind: 'wooden|brass|metal|capital|block|plastic|tin', for: 'letters of a sign' },
  { heads: 'bill', behind: 'dollar|pound|play|duck|treasury', for: 'money, a playbill' },
  { heads: 'programme|program', behind: 'computer|television|tv|radio', for: 'software, a broadcast' },
  { heads: 'plan', behind: 'lesson|business|pension|savings|diet|work', for: 'no drawing' },
  {
    heads: 'portrait',
    behind: 'oil|painted|pencil|charcoal|pastel|miniature|ink|watercolou?r|engraved|drawn',
    for: 'a drawing or a painting',
  },
  {
    heads: 'picture',
    behind: 'motion|moving|oil|needlework|embroidered|painted|silk',
    for: 'film, a painting',
  },
  { heads: 'print', behind: 'finger|thumb|foot|hand|paw|linen|cotton', for: 'fingerprint' },
  { heads: 'slide', behind: 'hair|microscope|trombone|playground|water', for: 'hair slide' },
  {
    heads: 'film',
    behind: 'roll|still|camera|negative|photographic|undeveloped|unexposed|cling|120|127|620|sheet|x-ray',
    for: 'film for a camera',
  },
  {
    heads: 'tape',
    behind: 'red|bias|ticker|paper|adhesive|sticky|computer|data|name|punched',
    for: 'tape without sound',
  },
  { heads: 'cassette', behind: 'film|ink|data|x-ray', for: 'a cassette without sound' },
  { heads: 'recording', behind: 'video|film|television|tv', for: 'moving images' },
  {
    heads: 'cutting|clipping',
    behind: 'plant|rose|apple|paper|hair|nail|grass|vine',
    for: 'no press cutting',
  },
  { heads: 'token', behind: 'book|gift|record', for: 'a paper' },
  { heads: 'instrument', behind: 'legal|trust', for: 'a legal paper' },
  { heads: 'suit', behind: 'law', for: 'a legal paper' },
  { heads: 'stamp', behind: 'date|office|ink|hand', for: 'an office stamp' },
  { heads: 'note', behind: 'bank|pound|dollar|promissory|delivery', for: 'money' },
  { heads: 'key', behind: 'answer|map', for: 'a paper' },
  { heads: 'puzzle', behind: 'crossword|newspaper', for: 'a paper' },
  { heads: 'cartridge', behind: 'tape|8-track|film|data|game|ink|toner', for: 'no ammunition' },
  { heads: 'log', behind: 'yule|fire|wooden', for: 'wood' },
];

const ALL = new Map(
  MISLEADING.flatMap(({ heads, behind }) =>
    heads
      .split('|')
      .map((head) => [head, behind === undefined ? /./ : new RegExp(`^(?:${behind})$`)] as const),
  ),
);

/** Words that tell nothing of what a thing is, so that what stands behind them means what it does alone. */
const PLAIN =
  /^(?:old|older|loose|various|assorted|mixed|other|more|some|several|few|many|torn|early|vintage|antique|small|large|big|little|my|our|his|her|their|the|a|an|two|three|four|five|six|\d+)$/;

/** Whether the last of some words, all in small letters, is a kind alone but not behind the word before it. */
export function misleads(words: readonly string[]): boolean {
  const before = words.at(-2) ?? '';
  const head = words.at(-1) ?? '';
  const behind = ALL.get(head) ?? ALL.get(head.replace(/s$/, ''));
  return behind?.test(before) === true && !PLAIN.test(before);
}
