import { iso6393 } from 'iso-639-3';
import type { LanguageUse } from './component.ts';
import { fold } from './fold.ts';
import { once } from './once.ts';

interface LanguageRow {
  /** ISO 639-2/B; `mis`, a language without a code, for those that only ISO 639-3 knows. */
  code: string;
  name: string;
  iso6393: string;
}

let byWord: Map<string, LanguageRow> | undefined;

/** Every code and English name of ISO 639 (parts 1, 2 and 3), folded; two-letter codes win over three-letter ones. */
function table(): Map<string, LanguageRow> {
  if (byWord !== undefined) return byWord;
  const words = new Map<string, LanguageRow>();
  const add = (word: string | undefined, row: LanguageRow) => {
    if (word !== undefined && !words.has(fold(word))) words.set(fold(word), row);
  };
  const rows = iso6393.map(({ name, iso6393: code3, ...codes }) => ({
    row: { code: codes.iso6392B ?? 'mis', name, iso6393: code3 },
    codes: [codes.iso6391, codes.iso6392B, codes.iso6392T, code3],
  }));
  // The codes first: there is a language named En.
  for (const { row, codes } of rows) for (const code of codes) add(code, row);
  for (const { row } of rows) for (const name of [row.name, row.name.replace(/ \(.*\)$/, '')]) add(name, row);
  byWord = words;
  return words;
}

let byOwnName: Map<string, LanguageRow> | undefined;

/** What languages call themselves: Deutsch, norsk. Asked only for a word that is no code and no English name. */
function ownNames(): Map<string, LanguageRow> {
  if (byOwnName !== undefined) return byOwnName;
  byOwnName = new Map();
  for (const { iso6391, iso6393: code3 } of iso6393) {
    const row = iso6391 === undefined ? undefined : table().get(code3);
    const own = iso6391 && new Intl.DisplayNames([iso6391], { type: 'language' }).of(iso6391);
    if (row !== undefined && own) byOwnName.set(fold(own), row);
  }
  return byOwnName;
}

/**
 * A language as a list names it ("Norwegian", "no", "nor") with its code of ISO 639-2/B, its English name, and the
 * script it is usually written in (ISO 15924, from the Unicode likely-subtags data that `Intl` carries).
 * @returns undefined where ISO 639 has no such code or English name
 */
export const languageUse = once((word: string): LanguageUse | undefined => {
  // en-GB is English (BCP 47).
  const code = /^([a-z]{2,3})-/i.exec(word)?.[1] ?? '';
  const row = table().get(fold(word)) ?? table().get(fold(code)) ?? ownNames().get(fold(word));
  if (row === undefined) return undefined;
  const name = row.name.replace(/ \(\d.*\)$/, '');
  const script = new Intl.Locale(row.iso6393).maximize().script;
  if (script === undefined) return { code: row.code, name };
  const scriptName = new Intl.DisplayNames(['en'], { type: 'script' }).of(script) ?? script;
  return { code: row.code, name, script: { code: script, name: scriptName } };
});

/** The code of a language in ISO 639-3, which has one for nearly every language. */
export function iso6393Of({ code, name }: LanguageUse): string {
  return (code === 'mis' ? table().get(fold(name)) : table().get(code))?.iso6393 ?? code;
}
