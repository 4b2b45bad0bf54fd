import { isil } from '../../catalogue/component.ts';
import type { EadVersion, Found } from '../../intake/ead/found.ts';
import { token } from '../ead2002/token.ts';
import { type ConversionRow, VALUES } from './conversions.ts';

/** Both versions have these on every element. */
const EVERYWHERE: Readonly<Record<string, string>> = {
  id: 'id',
  altrender: 'altrender',
  audience: 'audience',
};

/** Attributes that EAD 2002 gives one word only (NMTOKEN), where EAD3 allows more. */
const ONE_WORD = new Set(['source', 'rules', 'era', 'calendar', 'otherlevel', 'countrycode']);
/** Elements whose `type` is one word; that of a note may be anything. */
const TYPE_IS_ONE_WORD = new Set([
  'unitid',
  'container',
  'physloc',
  'abstract',
  'unittitle',
  'date',
  'num',
  'archdesc',
]);

/** What both versions accept as a date for machines. */
const NORMAL = /^[0-2]\d{3}(?:-?\d\d(?:-?\d\d)?)?(?:\/[0-2]\d{3}(?:-?\d\d(?:-?\d\d)?)?)?$/;

/** The attributes of an element under the names that the other version has for them; what it has none for is left out. */
export function convertedAttributes(
  element: Found,
  row: ConversionRow,
  to: EadVersion,
): Record<string, string> {
  const made: Record<string, string> = {};
  for (const [older, newer] of Object.entries({ ...EVERYWHERE, ...row.attributes })) {
    const [key, into] = to === 'ead3' ? [older, newer] : [newer, older];
    const value = element.attributes[key];
    const told = value === undefined ? undefined : toldValue(value, older, row, to);
    if (told !== undefined) made[into] = told;
  }
  if (to === 'ead2002' && made['xlink:href'] !== undefined) made['xlink:type'] = 'simple';
  return made;
}

/** @param name of the attribute in EAD 2002 */
function toldValue(value: string, name: string, row: ConversionRow, to: EadVersion): string | undefined {
  const pairs = VALUES[`${row.ead2002}/@${name}`] ?? VALUES[`@${name}`];
  if (pairs !== undefined) {
    const pair = pairs.find(([older, newer]) => value === (to === 'ead3' ? older : newer));
    return to === 'ead3' ? pair?.[1] : pair?.[0];
  }
  if (name === 'normal' && row.ead2002.endsWith('date')) return NORMAL.test(value) ? value : undefined;
  if (name === 'repositorycode')
    return isil.safeParse(value).success && token(value) === value ? value : undefined;
  if (name === 'countrycode') return /^[A-Z]{2}$/.test(value) ? value : undefined;
  if (name === 'certainty') return token(value);
  if (name === 'xlink:href' || name === 'xlink:role') return /^[\x21-\x7E]+$/.test(value) ? value : undefined;
  const oneWord = ONE_WORD.has(name) || (name === 'type' && TYPE_IS_ONE_WORD.has(row.ead2002));
  return oneWord && to === 'ead2002' ? token(value) : value;
}
