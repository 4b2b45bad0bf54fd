/** Words that go with names and do not tell people apart. */
interface NameWords {
  /** What is dropped, or the word it stands for. */
  words: readonly string[];
  /** What it is read as; left out where the word is dropped. */
  as?: string;
  source: string;
}

const P = 'common practice';

/** In small letters without points. "Mrs" is not here: Mrs Thomas Quill is not Thomas Quill. */
export const DROPPED: NameWords = {
  words: ['mr', 'miss', 'ms', 'dr', 'prof', 'professor', 'rev', 'reverend', 'capt', 'captain', 'sgt', 'the'],
  source: P,
};

/** Words that make two people of one name. */
export const TELLING: NameWords = {
  words: ['jr', 'junior', 'sr', 'senior', 'elder', 'younger', 'mrs', 'widow', 'ii', 'iii', 'iv'],
  source: P,
};

/** Short forms in the names of organisations. */
export const SHORT_FORMS: readonly NameWords[] = [
  { words: ['co'], as: 'company', source: P },
  { words: ['bros'], as: 'brothers', source: P },
  { words: ['soc'], as: 'society', source: P },
  { words: ['assoc', 'assn'], as: 'association', source: P },
  { words: ['ltd'], as: 'limited', source: P },
  { words: ['inc'], as: 'incorporated', source: P },
  { words: ['univ'], as: 'university', source: P },
];
