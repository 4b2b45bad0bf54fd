import type { Level } from '../catalogue/component.ts';

/** What two finding aids have in common and what not. Each part follows the order of its finding aid. */
export interface Comparison {
  /** Units only in the second finding aid; one that is added with units below it is followed by them. */
  added: readonly PlacedUnit[];
  /** Units only in the first. */
  removed: readonly PlacedUnit[];
  /** Units that stand below another unit than before, or between others. What lies below them moves with them. */
  moved: readonly MovedUnit[];
  /** Units of which a field says something else, moved or not. */
  changed: readonly Changed<UnitName>[];
  people: {
    added: readonly AgentName[];
    removed: readonly AgentName[];
    changed: readonly Changed<AgentName>[];
  };
  /** What changed in the control of the description (ISAD(G) 3.7, DACS 8), and in who is to receive the collection. */
  description: readonly FieldChange[];
}

/** By what a reader knows a unit. */
export interface UnitName {
  id: string;
  referenceCode?: string;
  level: Level;
  title: string;
  /** The expressions of its dates. */
  dates: readonly string[];
}

/** A unit and the unit it stands in; the collection itself stands in none. */
export interface PlacedUnit {
  unit: UnitName;
  within?: UnitName;
}

/** A unit that is there on both sides and lies below another; or below the same, in another order. */
export interface MovedUnit {
  was: UnitName;
  now: UnitName;
  from: UnitName;
  to: UnitName;
  /** It stayed below the same unit, and others that stood before it now stand behind it. */
  reordered?: true;
}

/** By what a reader knows a person, family or corporate body. */
export interface AgentName {
  id: string;
  type: string;
  name: string;
}

/** One thing on both sides, and what is said of it now. */
export interface Changed<Name> {
  was: Name;
  now: Name;
  fields: readonly FieldChange[];
}

/** A field that says something else than before. */
export interface FieldChange {
  /** Its name in the model, such as `scopeAndContent`. */
  field: string;
  /** Its name in ISAD(G) or DACS, such as Scope and content; where neither has one, in plain words. */
  name: string;
  values: readonly ValueChange[];
}

/**
 * A value before and after, as the model holds it; one that came has no `was`, one that went has no `now`. A link to an
 * agent has the name in place of the id, a container that it stands in likewise.
 */
export interface ValueChange {
  was?: unknown;
  now?: unknown;
  /** Both lists hold the same in another order; `was` and `now` are the whole lists. */
  reordered?: true;
}
