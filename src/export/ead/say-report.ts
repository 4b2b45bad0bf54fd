import type { EadVersion } from '../../intake/ead/found.ts';
import type { NotHeld } from './not-held.ts';
import type { TakeInReport } from './take-in.ts';

const NAMES = { ead3: 'EAD3', ead2002: 'EAD 2002' } as const;
/** So many of each are named; the rest are counted. */
const MOST = 12;

/**
 * The report of what was taken in, in lines for people.
 * @param folder of the catalogue
 */
export function sayReport(report: TakeInReport, folder: string): string[] {
  const { version, understood, keptAsFound, repaired } = report;
  const count = ([what, number]: [string, number]) =>
    `${number} ${number === 1 ? oneOf(what) : manyOf(what)}`;
  const times = ([what, number]: [string, number]) => (number === 1 ? what : `${what} (${number})`);
  const kept = Object.entries(keptAsFound);
  return [
    `Understood, from ${NAMES[version]}: ${Object.entries(understood).map(count).join(', ')}.`,
    kept.length === 0
      ? 'Kept as found: nothing; the catalogue holds all of it.'
      : `Kept as found, and written back in ${NAMES[version]}: ${some(kept.map(times))}.`,
    ...(repaired.length === 0
      ? ['Repaired: nothing.']
      : ['Repaired:', ...repaired.map((says) => `  ${says}`)]),
    `To look at it: kinfonds check ${folder}`,
  ];
}

/** What is counted in the plural, as one. */
const ONE: Readonly<Record<string, string>> = {
  dates: 'date',
  'dates in words only': 'date in words only',
  extents: 'extent',
  containers: 'container',
  'digital copies': 'digital copy',
  'access points': 'access point',
  'people, families and bodies': 'person, family or body',
};

const oneOf = (what: string): string => ONE[what] ?? what;

/** Levels of description stand in the singular; a series and a fonds are called so in the plural too. */
const manyOf = (what: string): string => (Object.hasOwn(ONE, what) || what.endsWith('s') ? what : `${what}s`);

/** What a version of EAD is written without of a finding aid that was found in the other, as one sentence; none if nothing. */
export function sayNotHeld({ words, attributes }: NotHeld, version: EadVersion): string | undefined {
  const missing = [...byElement(words), ...byAttribute(attributes)];
  if (missing.length === 0) return undefined;
  return `${NAMES[version]} is written without what it does not hold, or not in that way: ${some(missing)}. All of it stays in the catalogue.`;
}

const some = (list: readonly string[]) =>
  list.length <= MOST ? list.join(', ') : `${list.slice(0, MOST).join(', ')} and ${list.length - MOST} more`;

function byElement(words: NotHeld['words']): string[] {
  const elements = new Map<string, string[]>();
  for (const { element, word } of words) elements.set(element, [...(elements.get(element) ?? []), word]);
  return [...elements].map(([element, list]) => {
    const shown = list.slice(0, 6).join(' ');
    return `"${shown}${list.length > 6 ? ' …' : ''}" of ${element}`;
  });
}

function byAttribute(attributes: NotHeld['attributes']): string[] {
  const sums = new Map<string, number>();
  for (const { attribute, count } of attributes) sums.set(attribute, (sums.get(attribute) ?? 0) + count);
  return [...sums].map(([attribute, count]) => (count === 1 ? attribute : `${attribute} (${count})`));
}
