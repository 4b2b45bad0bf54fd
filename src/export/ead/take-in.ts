import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { EadVersion } from '../../intake/ead/found.ts';
import { readEad } from '../../intake/ead/index.ts';
import { keptWhereNeeded } from './needed.ts';
import { countBeyond } from './say-kept.ts';

/** What became of a finding aid that was taken in. */
export interface TakeInReport {
  version: EadVersion;
  /** How many there are of everything that the model holds: units by their level, people, access points. */
  understood: Record<string, number>;
  /** What the model has no place for and is kept as it was found, with how often: `unitdate/@datechar`. */
  keptAsFound: Record<string, number>;
  /** What was mended, as sentences. */
  repaired: string[];
}

/**
 * Takes in a finding aid in EAD3 or EAD 2002.
 * @param file its name, for messages
 * @param today YYYY-MM-DD
 * @throws CatalogueError where it cannot be read
 */
export async function takeIn(
  bytes: Uint8Array,
  file: string,
  today: string,
): Promise<{ aid: FindingAid; report: TakeInReport }> {
  const read = await readEad(bytes, file, today);
  const kept = countBeyond();
  const aid = keptWhereNeeded(read, kept.add);
  const report: TakeInReport = {
    version: read.version,
    understood: understood(aid),
    keptAsFound: Object.fromEntries([...kept.counts()].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1))),
    repaired: read.repaired,
  };
  return { aid, report };
}

function understood({ people, collection }: FindingAid): Record<string, number> {
  const counts: Record<string, number> = {};
  const add = (what: string, number: number) => {
    if (number > 0) counts[what] = (counts[what] ?? 0) + number;
  };
  const walk = (unit: Component): void => {
    add(unit.level, 1);
    const inWords = unit.dates.filter(({ edtf }) => edtf === undefined).length;
    add('dates', unit.dates.length - inWords);
    add('dates in words only', inWords);
    add('extents', unit.extents.length);
    add('containers', unit.containers.length);
    add('digital copies', unit.digitalCopies.length);
    add('access points', unit.accessPoints.length + unit.people.length);
    unit.children.forEach(walk);
  };
  walk(collection);
  add('people, families and bodies', people.length);
  return counts;
}
