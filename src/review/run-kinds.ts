/** A kind of which a series may come by the year, the month or the number, so that one can be missing. */
export interface RunKind {
  /** The kind, by the singular of the table of kinds. */
  kind: string;
  by: readonly ('year' | 'month' | 'number')[];
  /** What makes things one series: their title without year or number, their maker, or the person they are about. */
  of: 'title' | 'maker' | 'person';
  /** Whether a finer date stands for its year: a school report of June is the one of that year. */
  finerDates?: boolean;
  source: string;
}

const P = 'common practice';

/**
 * Kinds that come in runs. Letters, photographs, receipts and the like are left out, or counted by their numbers alone:
 * that nobody wrote or took any in a year is no gap. Extend it a row at a time.
 */
export const RUN_KINDS: readonly RunKind[] = [
  { kind: 'diary', by: ['year', 'number'], of: 'maker', source: P },
  { kind: 'account book', by: ['year', 'number'], of: 'title', source: P },
  { kind: 'business paper', by: ['year', 'number'], of: 'title', source: P },
  { kind: 'school report', by: ['year'], of: 'person', finerDates: true, source: P },
  { kind: 'yearbook', by: ['year', 'number'], of: 'title', source: P },
  { kind: 'magazine', by: ['year', 'month', 'number'], of: 'title', source: P },
  { kind: 'newspaper', by: ['number'], of: 'title', source: P },
  { kind: 'book', by: ['number', 'year'], of: 'title', source: P },
  { kind: 'pamphlet', by: ['number', 'year'], of: 'title', source: P },
  { kind: 'programme', by: ['year', 'number'], of: 'title', source: P },
  { kind: 'timetable', by: ['year', 'number'], of: 'title', source: P },
  { kind: 'notebook', by: ['number', 'year'], of: 'title', source: P },
  { kind: 'scrapbook', by: ['number', 'year'], of: 'title', source: P },
  { kind: 'ration book', by: ['year', 'number'], of: 'person', source: P },
  { kind: 'ticket', by: ['year'], of: 'title', source: P },
  { kind: 'photograph album', by: ['number', 'year'], of: 'title', source: P },
  { kind: 'film reel', by: ['number'], of: 'title', source: P },
  { kind: 'sound tape', by: ['number'], of: 'title', source: P },
  { kind: 'video tape', by: ['number'], of: 'title', source: P },
  { kind: 'sheet of music', by: ['number'], of: 'title', source: P },
  // Some number their letters, so that whoever receives them sees whether one was lost.
  { kind: 'letter', by: ['number'], of: 'title', source: P },
];

/** What holds for a kind that the table of kinds does not know, or for none. */
export const ANY_OTHER_KIND: Omit<RunKind, 'kind'> = {
  by: ['year', 'month', 'number'],
  of: 'title',
  source: P,
};

/**
 * Words by which a title or an unknown kind says that it comes by the year or the month. Without one of them, or the
 * year in the title, many things of one title are no run: they may be letters of one correspondent.
 */
export const RUN_WORDS: { words: readonly string[]; source: string } = {
  words: [
    'almanac',
    'almanack',
    'annual',
    'yearly',
    'monthly',
    'quarterly',
    'bulletin',
    'newsletter',
    'gazette',
    'register',
  ],
  source: P,
};
