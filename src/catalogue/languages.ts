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
  byWord = new Map();
  for (const { name, iso6393: code3, iso6392B, iso6392T, iso6391 } of iso6393) {
    const row = { code: iso6392B ?? 'mis', name, iso6393: code3 };
    const words = [iso6391, iso6392B, iso6392T, code3, name, name.replace(/ \(.*\)$/, '')];
    for (const word of words) if (word !== undefined && !byWord.has(fold(word))) byWord.set(fold(word), row);
  }
  return byWord;
}

/**
 * A language as a list names it ("Norwegian", "no", "nor") with its code of ISO 639-2/B, its English name, and the
 * script it is usually written in (ISO 15924, from the Unicode likely-subtags data that `Intl` carries).
 * @returns undefined where ISO 639 has no such code or English name
 */
export const languageUse = once((word: string): LanguageUse | undefined => {
  const row = table().get(fold(word));
  if (row === undefined) return undefined;
  const name = row.name.replace(/ \(\d.*\)$/, '');
  const script = new Intl.Locale(row.iso6393).maximize().script;
  if (script === undefined) return { code: row.code, name };
  const scriptName = new Intl.DisplayNames(['en'], { type: 'script' }).of(script) ?? script;
  return { code: row.code, name, script: { code: script, name: scriptName } };
});
