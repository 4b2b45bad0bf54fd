import { natureOf } from '../arrange/devised-titles.ts';
import { capitalised } from '../catalogue/capitalised.ts';
import type { Component } from '../catalogue/component.ts';
import { fold } from '../catalogue/fold.ts';
import { type Count, unitOf } from '../kinds/extents.ts';
import { leaves } from './recount.ts';
import { kindsOf, sumByKind } from './sum-by-kind.ts';

type Reading = ReturnType<typeof unitOf>;

/**
 * The title of a unit of which something went. One that names the kinds in a folder (DACS 2.3.18) names those that are
 * left, counted or not; any other, which somebody wrote, stays as it is.
 * @param whole the same unit with everything below it
 */
export function retitled(left: Component, whole: Component): string {
  const { title, level } = whole;
  if (level !== 'file') return title;
  const kinds = leaves(whole).map(kindsOf);
  // Where nothing is known of some, the folder was called as its group is.
  if (kinds.some(({ length }) => length === 0)) return title;
  const part = / \(\d+ of \d+\)$/.exec(title)?.[0] ?? '';
  const named = title.slice(0, title.length - part.length);
  // The nature is the whole title, or stands behind the occasion or the person that begins it.
  for (const start of [0, ...Array.from(named.matchAll(/: /g), ({ index }) => index + 2)]) {
    const units = unitsNamed(named.slice(start), kinds.flat());
    if (units === undefined) continue;
    const sums = sumByKind(left, units);
    // Somebody called it after some of what is in it, and all of that is left.
    const isWritten = units.size < new Set(kinds.flat().map(({ unit }) => unit.key)).size;
    if (isWritten && [...units.keys()].every((key) => sums.some(({ unit }) => unit.key === key)))
      return title;
    const nature = natureOf(sums);
    if (nature === undefined) return title;
    return `${named.slice(0, start)}${start === 0 ? capitalised(nature) : nature}${part}`;
  }
  return title;
}

/** The units that a text names one after the other, by their keys; undefined where it is anything but kinds that are there. */
function unitsNamed(text: string, kinds: readonly Count[]): Map<string, Reading> | undefined {
  const known = new Set(kinds.map(({ unit }) => unit.key));
  const words = [...new Set(kinds.flatMap(({ unit }) => [unit.one, unit.many]))]
    // A word that nobody knows may have a comma in it.
    .sort((one, other) => other.length - one.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const form = new RegExp(`(${words.join('|')}|.+?)(?:, | and |$)`, 'giu');
  const named = new Map<string, Reading>();
  for (const [, word = ''] of text.matchAll(form)) {
    const reading = unitOf(word);
    const { one, many, key } = reading.unit;
    // Letters from the landing are letters, and yet nobody counts them by these words.
    if (!known.has(key) || ![fold(one), fold(many)].includes(fold(word))) return undefined;
    named.set(key, reading);
  }
  return named.size === 0 ? undefined : named;
}
