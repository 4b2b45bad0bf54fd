import { FIXED_FEASTS } from './feasts-fixed.ts';
import { MOVABLE_FEASTS } from './feasts-movable.ts';

/** When a feast falls: a fixed day, days from Easter Sunday, the nth weekday of a month (-1 the last), or by Advent. */
export type FeastRule =
  | { readonly month: number; readonly day: number }
  | { readonly easter: number }
  | { readonly month: number; readonly weekday: number; readonly nth: number }
  | { readonly advent: true };

export interface Feast {
  /** What it is called, by language (ISO 639-1), parted by `|`, folded; the first English name is used in messages. */
  readonly names: Readonly<Record<string, string>>;
  readonly rule: FeastRule;
  /** The country (ISO 3166) where it falls so; everywhere if absent. */
  readonly country?: string;
  /** The first and last year of the rule. */
  readonly since?: number;
  readonly until?: number;
  readonly source: string;
}

/** Feasts with a day that can be computed. Those of one country only need the country to be known. */
export const FEASTS: readonly Feast[] = [...FIXED_FEASTS, ...MOVABLE_FEASTS];
