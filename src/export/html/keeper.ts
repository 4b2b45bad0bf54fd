import type { Repository } from '../../catalogue/component.ts';
import { h, joined, type Markup } from './markup.ts';
import { isolated } from './prose.ts';

/** Who keeps it, and where. */
export function keeper({ name, address = [], isil, country }: Repository): Markup {
  const lines = [name, ...address, ...(country === undefined ? [] : [countryName(country)])].map(isolated);
  const code = isil === undefined ? undefined : h` (ISIL ${isolated(isil)})`;
  return h`${joined(lines, ', ')}${code}`;
}

const countryName = (code: string): string => COUNTRY_NAMES.of(code) ?? code;
const COUNTRY_NAMES = new Intl.DisplayNames('en', { type: 'region', fallback: 'code' });
