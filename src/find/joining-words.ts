/**
 * Words that join others and say little by themselves: a thing need not have them where the question has other words.
 * Pronouns and question words with them, as questions are typed. Chosen by us; "may", "will", "can" and "mine" are not
 * here, for they are a month, a legal paper, a tin of film and a coal mine as well. In the form in which words are
 * compared, so without accents.
 */
export const JOINING_WORDS: ReadonlySet<string> = new Set(
  [
    // English
    'a an the of from to in into on at by for and or with about as is are was were be been that this these those',
    'it its he his him she her hers they their them we our us my i you your who whom whose which what when where',
    'why how do does did has have had there here any some all find show me not no',
    // Norwegian, Danish, Swedish
    'og i pa til fra av en ei et den det de som er var med om for ved hos han hun hans hennes jeg vi du ikke ett och att fran av pa',
    // German
    'der die das ein eine und von vom zu zum zur im in am an auf mit aus bei fur ist war',
    // French
    'le la les un une des du de et a au aux en dans par pour sur avec',
    // Spanish, Italian
    'el los las una y e o con por para del al il lo gli di da che per',
  ]
    .join(' ')
    .split(' '),
);
