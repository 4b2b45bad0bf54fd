import type { Finding } from '../catalogue/finding.ts';
import { languageUse } from '../catalogue/languages.ts';
import type { Settings } from '../catalogue/settings.ts';
import { FUNCTION_WORDS } from './function-words.ts';

/** So many small words of a language, and so many times as many as of the declared one, are no chance. */
const FEWEST = 12;
const TIMES = 4;

/** The running texts of the description. */
const TEXTS = ['abstract', 'history', 'custody', 'scope', 'arrangement', 'related', 'processing'] as const;

/** A description that is plainly written in another language than `language` says, or than English where it is silent. */
export function undeclaredLanguage(settings: Settings): Finding[] {
  const declared = languageUse(settings.language);
  const words = TEXTS.flatMap((text) => (settings[text] ?? '').toLowerCase().match(/\p{L}+/gu) ?? []);
  const counts = FUNCTION_WORDS.map(({ code, name, words: own }) => {
    const known = new Set(own);
    return { code, name, count: words.filter((word) => known.has(word)).length };
  });
  const [most] = counts.sort((a, b) => b.count - a.count);
  const ofDeclared = counts.find(({ code }) => code === declared?.code);
  // Of a language without a row in the table nothing can be told.
  if (most === undefined || ofDeclared === undefined || most.code === declared?.code) return [];
  if (most.count < FEWEST || most.count < TIMES * ofDeclared.count) return [];
  return [
    {
      rule: 'description.undeclared-language',
      weight: 'should',
      place: { file: 'collection.yaml' },
      found: `The description seems to be written in ${most.name}, but its language is taken to be ${declared?.name}.`,
      advice: `Write “language: ${most.name}” if that is so. The finding aid tells its readers’ programs in which language to read it.`,
      source: 'ISAAR(CPF) 5.4.7, EAD3 languagedeclaration',
    },
  ];
}
