import type { LanguageUse } from '../../catalogue/component.ts';
import { iso6393Of } from '../../catalogue/languages.ts';

/** A language as `lang` has it (BCP 47: the shortest code there is, en and not eng); English where none is known. */
export function languageTag(use: LanguageUse | undefined): string {
  if (use === undefined) return 'en';
  try {
    return Intl.getCanonicalLocales(iso6393Of(use))[0] ?? 'en';
  } catch {
    return 'en';
  }
}
