import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { plainWords } from './plain-words.ts';
import { sayRows } from './said-together.ts';
import { slipsBetween } from './typing-slip.ts';

/** A place as it is written, with the rows in which it stands. */
interface Written {
  place: string;
  rows: number[];
  words: readonly string[];
  /** Whether `collection.yaml` writes it so. */
  isKnown: boolean;
}

/** So many are named that may be meant. */
const FEW = 3;

/** Places written in two ways, with a slip, once with and once without the land they are in, or by half of their name. */
export function placesNearlyAlike(catalogue: Catalogue): Finding[] {
  // The best known first: each is compared only with those that are better known.
  const written = placesOf(catalogue).sort(
    (a, b) => Number(b.isKnown) - Number(a.isKnown) || b.rows.length - a.rows.length,
  );
  const byKey = new Map<string, Written[]>();
  return written.flatMap((one): Finding[] => {
    const others = new Set<Written>();
    for (const key of keysOf(one)) {
      const known = byKey.get(key) ?? [];
      for (const other of known) if (areAlike(one, other)) others.add(other);
      if (known.push(one) === 1) byKey.set(key, known);
    }
    return others.size === 0 || one.rows.length === 0 ? [] : [findingOf(one, [...others])];
  });
}

function placesOf({ settings, things }: Catalogue): Written[] {
  const places = new Map<string, Written>();
  const written = (place: string, isKnown: boolean) => {
    const known = places.get(place) ?? { place, rows: [], words: plainWords(place).split(' '), isKnown };
    places.set(place, known);
    return known;
  };
  for (const { birthplace, deathplace, places: lived } of settings.people)
    for (const place of [birthplace, deathplace, ...lived]) if (place !== undefined) written(place, true);
  for (const { row, places: named } of things)
    for (const place of named) written(place, false).rows.push(row);
  return [...places.values()].filter(({ words }) => words[0] !== '');
}

/** What stands before the land: Ternesund of “Ternesund, Norway”. */
const withoutLand = (place: string) => plainWords(place.replace(/,.*$/su, ''));

/** “The landing” is said of one that has a name. */
const isHalf = ({ words }: Written) => words.length === 2 && words[0] === 'the';

/** Places can only be alike that have a key in common. */
function keysOf({ place, words }: Written): string[] {
  const start = words.map(([letter]) => letter).join('');
  return [
    ...new Set([withoutLand(place), words.join(''), `${start} of ${words.length}`, `... ${words.at(-1)}`]),
  ];
}

function areAlike(one: Written, other: Written): boolean {
  const [its, others] = [one.words.join(''), other.words.join('')];
  if (its === others || slipsBetween(one.words, other.words, 1) !== undefined) return true;
  // Of two lands, each has a place of its own by that name.
  if (one.place.includes(',') !== other.place.includes(','))
    return withoutLand(one.place) === withoutLand(other.place);
  return isHalf(one) && other.words.length > 1 && !isHalf(other) && other.words.at(-1) === one.words[1];
}

function findingOf(one: Written, others: readonly Written[]): Finding {
  const [row] = one.rows;
  const said = others.slice(0, FEW).map(({ place }) => `“${place}”`);
  const more = others.length > FEW ? ` or as one of ${others.length - FEW} more` : '';
  return {
    rule: 'doubles.near-place',
    weight: 'consider',
    place: { file: 'list.csv', ...(row !== undefined && { row }), column: 'place' },
    found: `“${one.place}” (${sayRows(one.rows)}) may be the same place as ${said.join(' or ')}${more}.`,
    advice: 'If it is, write it in one way throughout: things are found by the names of their places.',
    source: 'common practice',
  };
}
