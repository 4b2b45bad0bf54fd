import type { Component, LanguageUse } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { descriptiveNote } from './text.ts';

/** ISO 639-2 and ISO 15924 for what nobody has determined. */
const UNDETERMINED: LanguageUse = { code: 'und', name: 'Undetermined' };
const UNDETERMINED_SCRIPT = { code: 'Zyyy', name: 'Undetermined script' };

const language = ({ code, name }: LanguageUse) => element('language', { langcode: code }, name);

const script = ({ code, name }: typeof UNDETERMINED_SCRIPT) => element('script', { scriptcode: code }, name);

/** `languagedeclaration`: a language of the description, with its script, which EAD3 requires here. */
export function languageDeclaration(use: LanguageUse): XmlElement {
  return element('languagedeclaration', {}, [language(use), script(use.script ?? UNDETERMINED_SCRIPT)]);
}

/** `langmaterial`: ISAD(G) 3.4.3, DACS 4.5. */
export function languageOfMaterial({ languages, languageNote }: Component): XmlElement[] {
  if (languages.length === 0 && languageNote === undefined) return [];
  const uses = languages.length === 0 ? [UNDETERMINED] : languages;
  return [element('langmaterial', {}, [...uses.map(oneLanguage), ...descriptiveNote(languageNote)])];
}

function oneLanguage(use: LanguageUse): XmlElement {
  if (use.script === undefined) return language(use);
  return element('languageset', {}, [language(use), script(use.script)]);
}
