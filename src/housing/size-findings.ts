import type { Finding } from '../catalogue/finding.ts';
import { nearest } from '../catalogue/nearest.ts';
import type { Thing } from '../catalogue/thing.ts';
import { SIZE_NAMES } from './size-named.ts';
import { sizeReading, usualOf } from './usual-form.ts';

const ADVICE = 'Write it as 20 × 25 cm, as 8 × 10 in, or by a name such as A4 or cabinet card.';

/** Sizes that cannot be, and sizes in words that nobody knows; each is said once, with the first row it stands in. */
export function sizeFindings(things: readonly Thing[]): Finding[] {
  const seen = new Map<string, { first: Thing; size: string; rows: number }>();
  for (const thing of things) {
    const { kind, size } = thing;
    if (size === undefined) continue;
    const key = `${size}\0${kind ?? ''}`;
    const known = seen.get(key);
    if (known === undefined) seen.set(key, { first: thing, size, rows: 1 });
    else known.rows++;
  }
  return [...seen.values()].flatMap(({ first, size, rows }) => findingOf(first, size, rows) ?? []);
}

function findingOf(thing: Thing, size: string, rows: number): Finding | undefined {
  const reading = sizeReading(thing);
  const place = { file: 'list.csv', row: thing.row, column: 'size' };
  const more = rows === 1 ? '' : ` (and in ${rows - 1} more rows)`;
  if (reading?.kind === 'impossible') {
    return {
      rule: 'list.size-impossible',
      weight: 'must',
      place,
      found: `“${size}”${more} cannot be a size. ${reading.why}`,
      advice: ADVICE,
    };
  }
  // Bytes, pixels and running times are all the size that a digital file has.
  const digital = thing.kind !== undefined && usualOf(thing.kind)?.usual.form === 'digital';
  if (reading?.kind !== 'unknown' || digital) return undefined;
  const meant = nearest(size, NAMES);
  return {
    rule: 'list.size-unknown',
    weight: 'should',
    place,
    found: `“${size}”${more} is not a size that is known, so the usual one of its kind is assumed.`,
    advice: meant === undefined ? `${ADVICE} Leave it blank where it is not known.` : `Is “${meant}” meant?`,
  };
}

const NAMES = SIZE_NAMES.filter(({ face }) => face !== undefined).flatMap(({ names }) => names);
