import type { DateContext } from '../dates/index.ts';
import { languageUse } from './languages.ts';
import type { Settings } from './settings.ts';

/** What the settings say that helps to read a date: the order of day and month, languages, the country, the years. */
export function dateContextOf(
  settings: Pick<Settings, 'repository' | 'languages' | 'dateOrder' | 'earliestYear' | 'latestYear'>,
): DateContext {
  const { repository, languages, dateOrder, earliestYear, latestYear } = settings;
  const { country } = repository;
  return {
    languages: languages.map((word) => languageUse(word)?.code).filter((code) => code !== undefined),
    ...(country !== undefined && { country }),
    ...(dateOrder !== undefined && { dateOrder }),
    ...(earliestYear !== undefined && { earliestYear }),
    ...(latestYear !== undefined && { latestYear }),
  };
}
