import type { LanguageUse } from '../../catalogue/component.ts';
import { languageUse } from '../../catalogue/languages.ts';
import { elementsOf, type Found, isElement } from './found.ts';
import { words } from './text.ts';

/** One `language`, with the script beside it (EAD3) or in its attribute (EAD 2002). */
function use(language: Found, script?: Found): LanguageUse | undefined {
  const code = language.attributes.langcode?.trim() ?? '';
  if (!/^[a-z]{3}$/.test(code)) return undefined;
  const scriptCode = (script ?? language).attributes.scriptcode?.trim() ?? '';
  const scriptName = script === undefined ? scriptCode : words(script) || scriptCode;
  return {
    code,
    name: words(language) || code,
    ...(/^[A-Z][a-z]{3}$/.test(scriptCode) && { script: { code: scriptCode, name: scriptName } }),
  };
}

/** The first word of a sentence that names a language, such as English in "Description is in English". */
export function languageInWords(element: Found | undefined): LanguageUse | undefined {
  if (element === undefined) return undefined;
  for (const [word] of words(element).matchAll(/\p{Lu}\p{L}{3,}/gu)) {
    const known = languageUse(word);
    if (known !== undefined) return { code: known.code, name: known.name };
  }
  return undefined;
}

/** The languages named in an element, and what else it says. */
export function languagesIn(elements: readonly Found[]): { languages: LanguageUse[]; languageNote?: string } {
  const languages: LanguageUse[] = [];
  const notes: string[] = [];
  for (const element of elements) {
    let rest = '';
    for (const child of element.children) {
      if (!isElement(child)) rest += child;
      else {
        const uses =
          child.name === 'languageset' || child.name === 'languagedeclaration'
            ? elementsOf(child, 'language').map((language) => use(language, elementsOf(child, 'script')[0]))
            : [child.name === 'language' ? use(child) : undefined];
        const known = uses.filter((one) => one !== undefined);
        languages.push(...known);
        if (known.length < uses.length || known.length === 0) rest += ` ${words(child)} `;
      }
    }
    // Commas and full stops stood between and after the languages.
    const note = words({ ...element, children: [rest] }).replace(/^(?:[,;.]|and\b|\s)+|(?:[,;]|\s)+$/g, '');
    if (/[\p{L}\p{N}]/u.test(note)) notes.push(note);
  }
  // The code of ISO 639-2 for what nobody has determined stands only where there must be a code.
  const real = notes.length > 0 ? languages.filter(({ code }) => code !== 'und') : languages;
  return { languages: real, ...(notes.length > 0 && { languageNote: notes.join('\n\n') }) };
}
