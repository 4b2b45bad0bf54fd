import { arrangement, isOpen } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { PlacedGroup } from '../housing/placed.ts';
import { saysItStays } from '../review/says-it-stays.ts';
import { type HeldUnit, type HeldUnits, heldUnits } from './taken-in/held-units.ts';

/** Why a thing stays: the list marks it, `collection.yaml` names it or its group, its access says so, or it is restricted. */
export type Why = 'marked' | 'named' | 'access' | 'restricted';

export interface HeldBack {
  thing: Thing;
  why: Why;
}

export interface GiveOptions {
  /** Leaves out everything that is not open, too. */
  withoutRestricted?: boolean;
}

/**
 * The things that do not go, in the order of the list, each with the first reason that holds; the units of a finding
 * aid that was taken in that do not go; and, as findings that must stop the work, the names to keep that mean nothing in
 * this catalogue.
 * @param today YYYY-MM-DD
 */
export function heldBack(
  catalogue: Catalogue,
  options: GiveOptions,
  today: string,
): { held: HeldBack[]; units: readonly HeldUnit[]; homes: HeldUnits['homes']; findings: Finding[] } {
  const { settings, things, base } = catalogue;
  const { withoutRestricted = false } = options;
  const ofBase = base === undefined ? undefined : heldUnits({ ...catalogue, base }, options, today);
  const groups = groupsOf(arrangement(catalogue, today).groups, settings);
  const keep = settings.handOver.keep.map((name) => ({ name, folded: fold(name), isMet: false }));

  const isNamed = (thing: Thing): boolean => {
    const names = [fold(thing.title), ...(groups.titles.get(thing) ?? [])];
    const met = keep.filter(({ name, folded }) => name === thing.number || names.includes(folded));
    for (const one of met) one.isMet = true;
    return met.length > 0;
  };
  const accessOf = (thing: Thing) => [thing.access, ...(groups.access.get(thing) ?? [])];
  const whyHeld = (thing: Thing): Why | undefined => {
    const named = isNamed(thing);
    if (thing.stays !== undefined) return 'marked';
    if (named) return 'named';
    if (accessOf(thing).some(saysItStays) || saysItStays(settings.access?.statement)) return 'access';
    if (withoutRestricted && (isRestricted(thing) || groups.closed.has(thing))) return 'restricted';
    return ofBase?.things.get(thing);
  };

  const held = things.flatMap((thing): HeldBack[] => {
    const why = whyHeld(thing);
    return why === undefined ? [] : [{ thing, why }];
  });
  const ofUnits = new Set(ofBase?.names.flatMap((name) => [name, fold(name)]));
  const known = [...things.map(({ title }) => title), ...groups.shown, ...(ofBase?.names ?? [])];
  const unmet = keep.filter(
    ({ name, folded, isMet }) => !(isMet || ofUnits.has(name) || ofUnits.has(folded)),
  );
  const { units = [], homes = new Map() } = ofBase ?? {};
  return { held, units, homes, findings: unmet.map(({ name }) => unknown(name, known)) };
}

/** As the finding aid has it: whatever is said of access or of its end, unless it says that anybody may see it. */
const isRestricted = ({ access, until }: Thing) =>
  (access !== undefined || until !== undefined) && !isOpen(access);

/** What the groups say of the things in them: titles (folded), statements on access, and whether they are closed. */
function groupsOf(placed: readonly PlacedGroup[], settings: Settings) {
  const said = new Map(Object.entries(settings.groups).map(([title, words]) => [fold(title), words]));
  const titles = new Map<Thing, string[]>();
  const access = new Map<Thing, string[]>();
  const closed = new Set<Thing>();
  const shown: string[] = [];
  const visit = (
    group: PlacedGroup,
    above: readonly string[],
    statements: readonly string[],
    end: boolean,
  ) => {
    const words = said.get(fold(group.title));
    const own = [group.title, ...(words?.title === undefined ? [] : [words.title])];
    shown.push(...own);
    const names = [...above, ...own.map(fold)];
    const says = words?.access === undefined ? statements : [...statements, words.access.statement];
    const isClosed = end || words?.access?.until !== undefined;
    for (const inner of group.groups) visit(inner, names, says, isClosed);
    for (const { thing } of group.folders.flatMap((folder) => folder.things)) {
      titles.set(thing, names);
      access.set(thing, [...says]);
      if (isClosed) closed.add(thing);
    }
  };
  for (const group of placed) visit(group, [], [], false);
  return { titles, access, closed, shown };
}

function unknown(name: string, known: readonly string[]): Finding {
  const near = nearest(name, [...new Set(known)]);
  const hint = near === undefined ? '' : ` Perhaps “${near}” is meant.`;
  return {
    rule: 'hand-over.keep-unknown',
    weight: 'must',
    place: { file: 'collection.yaml' },
    found: `Under handOver, keep names “${name}”, and no thing and no group is called so.${hint}`,
    advice: 'Write it as the list or kinfonds arrange has it, so that nothing goes that was to stay.',
  };
}
