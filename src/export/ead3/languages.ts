import type { Component, LanguageUse } from '../../catalogue/component.ts';
import { iso6393Of } from '../../catalogue/languages.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { descriptiveNote } from './text.ts';

/** ISO 639-2 and ISO 15924 for what nobody has determined. */
const UNDETERMINED: LanguageUse = { code: 'und', name: 'Undetermined' };
const UNDETERMINED_SCRIPT = { code: 'Zyyy', name: 'Undetermined script' };

const language = (use: LanguageUse, { languageCodes }: Context) =>
  element('language', { langcode: languageCodes === 'iso639-3' ? iso6393Of(use) : use.code }, use.name);

const script = ({ code, name }: typeof UNDETERMINED_SCRIPT) => element('script', { scriptcode: code }, name);

/** `languagedeclaration`: a language of the description, with its script, which EAD3 requires here. */
export function languageDeclaration(use: LanguageUse, context: Context): XmlElement {
  return element('languagedeclaration', {}, [
    language(use, context),
    script(use.script ?? UNDETERMINED_SCRIPT),
  ]);
}

/** `langmaterial`: ISAD(G) 3.4.3, DACS 4.5. */
export function languageOfMaterial({ languages, languageNote }: Component, context: Context): XmlElement[] {
  if (languages.length === 0 && languageNote === undefined) return [];
  const uses = languages.length === 0 ? [UNDETERMINED] : languages;
  return [
    element('langmaterial', {}, [
      ...uses.map((use) => oneLanguage(use, context)),
      ...descriptiveNote(languageNote),
    ]),
  ];
}

function oneLanguage(use: LanguageUse, context: Context): XmlElement {
  if (use.script === undefined) return language(use, context);
  return element('languageset', {}, [language(use, context), script(use.script)]);
}
