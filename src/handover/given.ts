import { arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Component } from '../catalogue/component.ts';
import { CatalogueError, type Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settled } from '../catalogue/settled.ts';
import type { Thing } from '../catalogue/thing.ts';
import { unitsFrom } from '../catalogue/units.ts';
import type { PlacedGroup } from '../housing/placed.ts';
import { givenSettings } from './given-settings.ts';
import { type GiveOptions, type HeldBack, heldBack } from './held-back.ts';
import { givenAid } from './taken-in/given-aid.ts';
import type { HeldUnit } from './taken-in/held-units.ts';
import { asThings } from './taken-in/units.ts';

/** What goes, as a catalogue of its own, and what stays. */
export interface Given {
  /** Everything in a package is made from this and from nothing else; its rows are those of the family's list. */
  catalogue: Catalogue;
  /** The same things as the family's catalogue has them, in the same order. */
  things: readonly Thing[];
  held: readonly HeldBack[];
  /** Of a finding aid that was taken in: the units that stay, everything in them as things of a list, and what goes. */
  units: readonly HeldUnit[];
  unitsAsThings: { staying: readonly Thing[]; given: readonly Thing[] };
  /** What is to be said of parting such a finding aid. */
  findings: readonly Finding[];
}

/**
 * The catalogue of what is handed over: the given things without the notes meant for the family, with those settled
 * numbers, people and words on groups that they still need. What was stated of the whole with what stays in it (dates,
 * extent) is left to be worked out anew.
 * @param today YYYY-MM-DD
 * @throws CatalogueError where a name to be kept means nothing, and where nothing is left to give
 */
export function thingsToGive(catalogue: Catalogue, options: GiveOptions, today: string): Given {
  const { held, units, homes, findings } = heldBack(catalogue, options, today);
  const staying = new Set(held.map(({ thing }) => thing));
  const things = catalogue.things.filter((thing) => !staying.has(thing));
  if (findings.length > 0) throw new CatalogueError(findings);
  const { base, ofBase, gone } = partedBase(
    catalogue,
    units,
    things.flatMap((thing) => homes.get(thing) ?? []),
  );
  const isEmpty = base === undefined || (base.collection.children.length === 0 && gone.length > 0);
  if (things.length === 0 && isEmpty) throw new CatalogueError([nothingLeft(catalogue.folder)]);
  const going = things.map(({ familyNote, stays, ...thing }): Thing => thing);
  const unitsAsThings = {
    staying: asThings(gone, catalogue.base?.people ?? []),
    given: base === undefined ? [] : asThings(unitsFrom(base.collection), base.people),
  };
  const settings = givenSettings(
    catalogue.settings,
    [...things, ...unitsAsThings.given],
    [...staying, ...unitsAsThings.staying],
  );
  const settled = settledOf(catalogue.settled, things, [...staying]);
  const withBase = base === undefined ? {} : { base };
  const { groups } = arrangement({ settings, things: going, settled, ...withBase }, today);
  const titles = new Set(titlesOf(groups).map(fold));
  const words = Object.entries(settings.groups).filter(([title]) => titles.has(fold(title)));
  const given: Catalogue = {
    folder: catalogue.folder,
    settings: { ...settings, groups: Object.fromEntries(words) },
    things: going,
    settled,
    // The list is written anew from the things, and what was found in reading it may name what stays.
    list: new Uint8Array(),
    listFile: catalogue.listFile,
    sheets: sheetsOf(catalogue, staying),
    ...withBase,
    findings: [],
  };
  return { catalogue: given, things, held, units, unitsAsThings, findings: ofBase };
}

/** The finding aid that was taken in, without what stays of it; undefined where there is none. */
function partedBase(
  { base, folder }: Catalogue,
  units: readonly HeldUnit[],
  homes: readonly string[],
): { base?: Catalogue['base']; ofBase: readonly Finding[]; gone: readonly Component[] } {
  if (base === undefined) return { ofBase: [], gone: [] };
  const held = new Set(units.map(({ unit }) => unit.id));
  if (held.has(base.collection.id)) throw new CatalogueError([nothingLeft(folder)]);
  const { aid, gone, findings } = givenAid(base, held, new Set(homes));
  return { base: aid, ofBase: findings, gone };
}

/** A row of what stays would explain the gap that it leaves. A number that a given thing bears as well is that thing's. */
function settledOf(
  settled: readonly Settled[],
  things: readonly Thing[],
  staying: readonly Thing[],
): Settled[] {
  const given = new Set(things.map(({ number }) => number));
  const gone = new Set(staying.map(({ number }) => number));
  return settled.filter(({ number }) => given.has(number) || !gone.has(number));
}

/** How many given things are on each sheet; what is found in them is then said of the right one. */
function sheetsOf({ sheets, things }: Catalogue, staying: ReadonlySet<Thing>): Catalogue['sheets'] {
  let from = 0;
  return sheets.map(({ file, things: count }) => {
    const on = things.slice(from, from + count);
    from += count;
    return { file, things: on.filter((thing) => !staying.has(thing)).length };
  });
}

const titlesOf = (groups: readonly PlacedGroup[]): string[] =>
  groups.flatMap((group) => [group.title, ...titlesOf(group.groups)]);

const nothingLeft = (folder: string) => ({
  rule: 'hand-over.nothing-left',
  weight: 'must' as const,
  place: { file: folder },
  found: 'Everything in this catalogue stays with the family, so there is nothing to hand over.',
  advice: 'Look at the columns stays and access of the list, and at access and handOver in collection.yaml.',
});
