import { arrangement } from '../../arrange/index.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { fold } from '../../catalogue/fold.ts';
import { isRestricted } from '../../catalogue/restricted.ts';
import type { Thing } from '../../catalogue/thing.ts';
import { unitsFrom } from '../../catalogue/units.ts';
import { saysItStays } from '../../review/says-it-stays.ts';
import type { GiveOptions, Why } from '../held-back.ts';

/** A unit of a finding aid that was taken in, which stays with everything below it. */
export interface HeldUnit {
  unit: Component;
  why: Why;
}

/** What of a finding aid that was taken in does not go. */
export interface HeldUnits {
  /** None of them lies in another. */
  units: readonly HeldUnit[];
  /** Things of the list that go into such a unit. */
  things: ReadonlyMap<Thing, Why>;
  /** For each thing of the list that goes into a unit, the id of that unit. */
  homes: ReadonlyMap<Thing, string>;
  /** Every name under which a unit can be kept. */
  names: readonly string[];
}

/**
 * The units that do not go, for the reasons for which things do not: named by `handOver: keep` (by title, reference
 * code or number), said to stay by their own access or by `groups` in collection.yaml, or restricted.
 * @param today YYYY-MM-DD
 */
export function heldUnits(
  catalogue: Catalogue & { base: FindingAid },
  { withoutRestricted = false }: GiveOptions,
  today: string,
): HeldUnits {
  const { base, settings, things } = catalogue;
  const keep = new Set(settings.handOver.keep);
  const kept = new Set(settings.handOver.keep.map(fold));
  const groups = new Map(
    Object.entries(settings.groups).map(([title, words]) => [fold(title), words.access]),
  );
  const whyHeld = (unit: Component): Why | undefined => {
    const said = groups.get(fold(unit.title));
    const statements = [unit.accessConditions?.statement, said?.statement];
    if (namesOf(unit).some((name) => keep.has(name)) || kept.has(fold(unit.title))) return 'named';
    if (statements.some(saysItStays)) return 'access';
    const isClosed = isRestricted(unit) || said?.until !== undefined;
    return withoutRestricted && isClosed ? 'restricted' : undefined;
  };
  const own = new Set([...unitsFrom(base.collection)].map(({ id }) => id));
  const units: HeldUnit[] = [];
  const within = new Map<Thing, Why>();
  const homes = new Map<Thing, string>();
  const visit = (unit: Component, above: Why | undefined, home: string): void => {
    const isOwn = own.has(unit.id);
    const here = isOwn ? unit.id : home;
    const why = above ?? (isOwn ? whyHeld(unit) : undefined);
    if (isOwn && above === undefined && why !== undefined) units.push({ unit, why });
    for (const { file } of unit.digitalCopies) {
      const thing = file.startsWith(MARK) ? things[Number(file.slice(MARK.length))] : undefined;
      if (thing === undefined) continue;
      homes.set(thing, here);
      if (why !== undefined) within.set(thing, why);
    }
    for (const child of unit.children) visit(child, why, here);
  };
  const all = saysItStays(settings.access?.statement) ? 'access' : undefined;
  if (all !== undefined) units.push({ unit: base.collection, why: all });
  visit(whereThingsLie(catalogue, today), all, base.collection.id);
  return { units, things: within, homes, names: [...unitsFrom(base.collection)].flatMap(namesOf) };
}

const namesOf = ({ title, referenceCode, otherIdentifiers }: Component): string[] => [
  title,
  ...(referenceCode === undefined ? [] : [referenceCode]),
  ...otherIdentifiers.map(({ value }) => value),
];

/** Begins what stands in the place of the copies of a thing, by which it is known again in the finding aid. */
const MARK = 'kinfonds:thing:';

/** The finding aid with the things of the list in it, each with a mark of its own. */
function whereThingsLie(catalogue: Catalogue, today: string): Component {
  const things = catalogue.things.map((thing, at): Thing => ({ ...thing, copies: [`${MARK}${at}`] }));
  return arrangement({ ...catalogue, things }, today).aid.collection;
}
