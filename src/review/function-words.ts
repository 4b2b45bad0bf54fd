/** The commonest small words of a language, by which a text in it is known. */
interface FunctionWords {
  /** ISO 639-2/B. */
  code: string;
  name: string;
  /** Words of this language and of none of the others in the table. */
  words: readonly string[];
  source: string;
}

const M = 'from memory';

const row = (code: string, name: string, words: string): FunctionWords => ({
  code,
  name,
  words: words.split(' '),
  source: M,
});

/** Languages in which descriptions are often written; extend it a row at a time. */
export const FUNCTION_WORDS: readonly FunctionWords[] = [
  row('eng', 'English', 'the and with from which were his they their been this that it are has have'),
  row('ger', 'German', 'und das ist nicht mit eine auf für sich auch von sind wurde nach bei zu'),
  row('fre', 'French', 'les est une dans pour qui sur avec au aux ses sont été leur cette par elle'),
  row('spa', 'Spanish', 'los las y el por fue su sus más como pero esta muy hasta desde para'),
  row('ita', 'Italian', 'il gli della di che nel dei delle sono suo loro anche più dal'),
  row('dut', 'Dutch', 'het een van zijn niet voor ook werd haar naar uit bij deze wordt'),
  row('nor', 'Norwegian', 'og ikke ble hun etter noen disse hadde også være'),
  row('swe', 'Swedish', 'och att är inte från efter några hade också vara'),
  row('pol', 'Polish', 'się nie jest przez oraz jego jej ich był była które został'),
];
