import { createRequire } from 'node:module';
import type { LanguageUse } from './component.ts';
import { fold } from './fold.ts';
import { atFirstUse, once } from './once.ts';

interface LanguageRow {
  /** ISO 639-2/B; `mis`, a language without a code, for those that only ISO 639-3 knows. */
  code: string;
  name: string;
  iso6393: string;
}

/** The eight thousand languages of ISO 639. They are read once one is asked for: many answers have to do with none. */
const languages = atFirstUse(() =>
  (createRequire(import.meta.url)('iso-639-3') as typeof import('iso-639-3')).iso6393.map((language) => {
    const { name, iso6391, iso6392B, iso6392T, iso6393 } = language;
    const row: LanguageRow = { code: iso6392B ?? 'mis', name, iso6393 };
    return { row, iso6391, codes: [iso6391, iso6392B, iso6392T, iso6393] };
  }),
);

/** Every code of ISO 639 (parts 1, 2 and 3); two-letter codes win over three-letter ones. */
const byCode = atFirstUse(() => {
  const rows = new Map<string, LanguageRow>();
  for (const { row, codes } of languages())
    for (const code of codes) if (code !== undefined && !rows.has(code)) rows.set(code, row);
  return rows;
});

const LETTER = /^[A-Za-z]/;
/** With what a name begins once it is folded. */
const initialOf = (name: string): string => (LETTER.test(name) ? name : fold(name)).charAt(0).toLowerCase();

/** The English names with one initial, folded: to fold all sixteen thousand takes longer than the rest of an answer. */
const byName = once((initial: string) => {
  const rows = new Map<string, LanguageRow>();
  for (const { row } of languages()) {
    if (initialOf(row.name) !== initial) continue;
    for (const name of [row.name, row.name.replace(/ \(.*\)$/, '')]) {
      const word = fold(name);
      if (!rows.has(word)) rows.set(word, row);
    }
  }
  return rows;
});

/** What languages call themselves: Deutsch, norsk. Asked only for a word that is no code and no English name. */
const byOwnName = atFirstUse(() => {
  const rows = new Map<string, LanguageRow>();
  for (const { row, iso6391 } of languages()) {
    const own = iso6391 && new Intl.DisplayNames([iso6391], { type: 'language' }).of(iso6391);
    if (own) rows.set(fold(own), row);
  }
  return rows;
});

/** The codes first: there is a language named En. */
const find = (word: string): LanguageRow | undefined =>
  (word.length <= 3 ? byCode().get(word) : undefined) ?? byName(word.charAt(0)).get(word);

/**
 * A language as a list names it ("Norwegian", "no", "nor") with its code of ISO 639-2/B, its English name, and the
 * script it is usually written in (ISO 15924, from the Unicode likely-subtags data that `Intl` carries).
 * @returns undefined where ISO 639 has no such code or English name
 */
export const languageUse = once((word: string): LanguageUse | undefined => {
  // en-GB is English (BCP 47).
  const code = /^([a-z]{2,3})-/i.exec(word)?.[1] ?? '';
  const row = find(fold(word)) ?? byCode().get(fold(code)) ?? byOwnName().get(fold(word));
  if (row === undefined) return undefined;
  const name = row.name.replace(/ \(\d.*\)$/, '');
  const script = new Intl.Locale(row.iso6393).maximize().script;
  if (script === undefined) return { code: row.code, name };
  const scriptName = new Intl.DisplayNames(['en'], { type: 'script' }).of(script) ?? script;
  return { code: row.code, name, script: { code: script, name: scriptName } };
});

/** The code of a language in ISO 639-3, which has one for nearly every language. */
export function iso6393Of({ code, name }: LanguageUse): string {
  return (code === 'mis' ? find(fold(name)) : byCode().get(code))?.iso6393 ?? code;
}
