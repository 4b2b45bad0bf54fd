import { type DateContext, readDate } from '../dates/index.ts';

/** The languages, beside English, in which dates in words are read most fully; in ISO 639-1. */
export const LANGUAGES_OF_DATES: Readonly<Record<string, string>> = {
  de: 'German',
  fr: 'French',
  nb: 'Norwegian',
  da: 'Danish',
  sv: 'Swedish',
  nl: 'Dutch',
  es: 'Spanish',
  it: 'Italian',
};

/** So many phrases are tried in other languages; by then it has been said which language is missing. */
const TRIED = 200;

/**
 * Finds the languages in which a phrase would be a date that is none in those of a list.
 * @returns their English names; none where it would be a date in no other language
 */
export function languageFinder(context: DateContext): (written: string) => readonly string[] {
  const { languages = [] } = context;
  const found = new Map<string, string[]>();
  return (written) => {
    const known = found.get(written);
    if (known !== undefined || found.size >= TRIED) return known ?? [];
    const names = Object.entries(LANGUAGES_OF_DATES).flatMap(([code, name]) =>
      readDate(written, { ...context, languages: [...languages, code] }).kind === 'date' ? [name] : [],
    );
    found.set(written, names);
    return names;
  };
}
