import type { Component, LanguageUse } from '../../catalogue/component.ts';
import { iso6393Of } from '../../catalogue/languages.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { descriptiveNote } from './text.ts';

/** ISO 639-2 and ISO 15924 for what nobody has determined. */
const UNDETERMINED: LanguageUse = { code: 'und', name: 'Undetermined' };
const UNDETERMINED_SCRIPT = { code: 'Zyyy', name: 'Undetermined script' };

type Codes = Context['languageCodes'];

const language = (use: LanguageUse, codes: Codes) =>
  element('language', { langcode: codes === 'iso639-3' ? iso6393Of(use) : use.code }, use.name);

const script = ({ code, name }: typeof UNDETERMINED_SCRIPT) => element('script', { scriptcode: code }, name);

/** `languagedeclaration`: a language of the description, with its script, which EAD3 requires here. */
export function languageDeclaration(use: LanguageUse, context: Context): XmlElement {
  return element('languagedeclaration', {}, [
    language(use, context.languageCodes),
    script(use.script ?? UNDETERMINED_SCRIPT),
  ]);
}

/** `langmaterial`: ISAD(G) 3.4.3, DACS 4.5. */
export function languageOfMaterial({ languages, languageNote }: Component, context: Context): XmlElement[] {
  const uses = languages.length === 0 ? [UNDETERMINED] : languages;
  if (languageNote === undefined) return languages.length === 0 ? [] : [context.languagesOf(languages)];
  const { name, attributes, children } = languagesOf(uses, context.languageCodes);
  return [element(name, attributes, [...children, ...descriptiveNote(languageNote)])];
}

/** The same without a note. */
export const languagesOf = (uses: readonly LanguageUse[], codes: Codes): XmlElement =>
  element(
    'langmaterial',
    {},
    uses.map((use) => oneLanguage(use, codes)),
  );

function oneLanguage(use: LanguageUse, codes: Codes): XmlElement {
  if (use.script === undefined) return language(use, codes);
  return element('languageset', {}, [language(use, codes), script(use.script)]);
}
