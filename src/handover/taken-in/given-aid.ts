import { type Component, component } from '../../catalogue/component.ts';
import type { Finding } from '../../catalogue/finding.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { Kept } from '../../catalogue/kept.ts';
import { unitsFrom, withUnits } from '../../catalogue/units.ts';
import { withoutRestricted } from '../../export/without-restricted.ts';
import { idsIn, pointsTo } from './markup.ts';

/** A finding aid that was taken in, without the units that stay. */
interface GivenAid {
  aid: FindingAid;
  /** Every unit that stays, with those in it, and groups of which nothing is left. */
  gone: readonly Component[];
  findings: readonly Finding[];
}

/**
 * The finding aid without some of its units, and without what only those carried: names, places, languages, sums and
 * dates of the whole (see `withoutRestricted`). Of the markup that was kept as found, that goes which was said of
 * something with a part that stays, and that which points to such a part.
 * @param held ids of units; everything below them goes as well
 * @param homes ids of units into which things of the list go: these stand even where nothing else is left in them
 */
export function givenAid(
  aid: FindingAid,
  held: ReadonlySet<string>,
  homes: ReadonlySet<string> = new Set(),
): GivenAid {
  if (held.size === 0) return { aid, gone: [], findings: [] };
  const first = without(aid, held, new Set());
  const left = new Set([...unitsFrom(first.collection)].map(({ id }) => id));
  const emptied = new Set([...homes].filter((id) => !left.has(id)));
  return said(aid, emptied.size === 0 ? first : without(aid, held, emptied));
}

/** @param emptied ids of units that stand although nothing is left in them */
function without(aid: FindingAid, held: ReadonlySet<string>, emptied: ReadonlySet<string>): FindingAid {
  // What is restricted and goes all the same must not look closed meanwhile.
  const conditions = new Map(
    [...unitsFrom(aid.collection)].map(({ id, accessConditions }) => [id, accessConditions]),
  );
  const mark = (unit: Component): Component => ({
    ...unit,
    accessConditions: held.has(unit.id) ? HELD : { ...HELD, restricted: false },
    children: [...unit.children.map(mark), ...(emptied.has(unit.id) ? [STANDING] : [])],
  });
  const restored = ({ children, ...unit }: Component): Component => ({
    ...unit,
    accessConditions: conditions.get(unit.id),
    // Nothing is left by which they could be told.
    ...(emptied.has(unit.id) && { dates: [] }),
    children: children.filter((child) => child.id !== STANDING.id).map(restored),
  });
  const parted = withoutRestricted({ ...aid, collection: mark(aid.collection) });
  return { ...parted, collection: restored(parted.collection) };
}

const HELD = { statement: 'Stays.', restricted: true };

/** Stands for what a list puts into a unit. */
const STANDING: Component = component.parse({
  id: 'things-of-the-list',
  level: 'file',
  title: 'Things of the list',
});

function said(aid: FindingAid, parted: FindingAid): GivenAid {
  const left = new Set([...unitsFrom(parted.collection)].map(({ id }) => id));
  const gone = [...unitsFrom(aid.collection)].filter(({ id }) => !left.has(id));
  const ids = new Set(gone.flatMap(idsOf));
  const pointing: Component[] = [];
  const given = withUnits(parted, (unit) => {
    const { kept, ...rest } = unit;
    if (kept === undefined || !pointsTo(kept, ids)) return unit;
    pointing.push(unit);
    return rest;
  });
  return {
    aid: given,
    gone,
    findings: [
      ...pointing.map(({ title }) => keptLeftOut(title)),
      ...saidOfTheWhole(given, aid).map(({ title, dates }) => wordsOnly(title, dates)),
    ],
  };
}

const idsOf = ({ id, containers, kept }: Component): string[] => [
  id,
  ...containers.flatMap((one) => (one.id === undefined ? [] : [one.id])),
  ...(kept === undefined ? [] : textsOfKept(kept).flatMap(idsIn)),
];

const textsOfKept = ({ xml, before }: Kept): string[] => [xml, ...(before === undefined ? [] : [before])];

/** Units of which a part stays and whose dates are words alone, so that nobody can work them out anew. */
function saidOfTheWhole(given: FindingAid, whole: FindingAid): Component[] {
  const before = new Map([...unitsFrom(whole.collection)].map((unit) => [unit.id, countOf(unit)]));
  return [...unitsFrom(given.collection)].filter(
    (unit) =>
      unit.dates.length > 0 &&
      unit.dates.every(({ edtf, expression }) => edtf === undefined && expression !== 'undated') &&
      countOf(unit) !== before.get(unit.id),
  );
}

const countOf = (unit: Component): number => [...unitsFrom(unit)].length;

const keptLeftOut = (title: string): Finding => ({
  rule: 'hand-over.kept-left-out',
  weight: 'consider',
  place: { file: 'finding-aid.json', column: title },
  found:
    'Its markup as it was found points to something that stays. The unit is written from its fields alone, so that what only the markup told is not in the package.',
});

const wordsOnly = (title: string, dates: Component['dates']): Finding => ({
  rule: 'hand-over.whole',
  weight: 'consider',
  place: { file: 'finding-aid.json', column: title },
  found: `A part of it stays, and its dates are given in words alone: “${dates.map(({ expression }) => expression).join(', ')}”. They go as they are.`,
  advice: 'Look whether they are still right of what is given.',
});
