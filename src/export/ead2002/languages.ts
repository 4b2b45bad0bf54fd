import type { Component, LanguageUse } from '../../catalogue/component.ts';
import { element, type XmlElement, type XmlNode } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';

/** ISO 639-2 for what nobody has determined. */
const UNDETERMINED: LanguageUse = { code: 'und', name: 'Undetermined' };

/** `language` for each, with a comma between: the elements around it hold text. */
export function languageList(uses: readonly LanguageUse[]): XmlNode[] {
  return uses.flatMap(({ code, name, script }, index) => [
    ...(index === 0 ? [] : [', ']),
    element('language', { langcode: code, scriptcode: script?.code }, name),
  ]);
}

/** `langmaterial`: ISAD(G) 3.4.3, DACS 4.5. */
export function languageOfMaterial({ languages, languageNote }: Component, context: Context): XmlElement[] {
  if (languageNote === undefined) return languages.length === 0 ? [] : [context.languagesOf(languages)];
  const list = languageList(languages.length === 0 ? [UNDETERMINED] : languages);
  return [element('langmaterial', {}, [...list, `. ${languageNote}`])];
}

/** The same without a note. */
export const languagesOf = (uses: readonly LanguageUse[]): XmlElement =>
  element('langmaterial', {}, languageList(uses));
