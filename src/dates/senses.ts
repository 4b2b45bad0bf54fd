import type { Mark } from './edtf-point.ts';
import type { Feast } from './feast-days.ts';

/** Which part of a month, year, decade or century: the first of two halves, the third of four quarters. */
export interface Fraction {
  readonly nth: number;
  readonly of: 2 | 3 | 4;
  /** Said loosely: "early", "mid", "late". */
  readonly rough: boolean;
}

/** What a word (or several in a row) does in a phrase. */
export type Sense =
  | { readonly is: 'month'; readonly values: readonly number[]; readonly feast?: readonly Feast[] }
  | { readonly is: 'weekday'; readonly value: number }
  | { readonly is: 'season'; readonly code: number }
  | { readonly is: 'fraction'; readonly fraction: Fraction }
  | { readonly is: 'feast'; readonly rows: readonly Feast[] }
  /** Before a date: circa, probably. */
  | { readonly is: 'mark'; readonly mark: Mark }
  | { readonly is: 'edge'; readonly edge: Edge }
  /** After a date: "or so", "or earlier", "onwards". */
  | { readonly is: 'tail'; readonly tail: Tail }
  /** fifties, with its tens */
  | { readonly is: 'decade'; readonly tens: number }
  /** nineteen (fifties, hundreds) */
  | { readonly is: 'hundreds'; readonly value: number }
  | { readonly is: 'ordinal'; readonly value: number }
  /** Before a day of the week: the last Sunday of a month. */
  | { readonly is: 'last' }
  /** After figures: "50er", "50-tallet"; before them: "années 50". */
  | { readonly is: 'decadeTail' }
  | { readonly is: 'decadeHead' }
  | { readonly is: 'era'; readonly before: boolean }
  /** "Of" where Dutch is spoken: it may be the English word, or "or". */
  | { readonly is: 'filler'; readonly or: true }
  | { readonly is: Simple };

export type Simple =
  | 'century'
  /** hundreds, after nineteen */
  | 'hundredWord'
  /** Q, before its number */
  | 'quarterLetter'
  | 'quarterWord'
  | 'between'
  | 'to'
  | 'until'
  | 'and'
  | 'or'
  | 'allOf'
  | 'ongoing'
  | 'unknown'
  | 'undated'
  | 'bulk'
  | 'filler'
  | 'monthWord'
  | 'dayWord'
  | 'yearWord';

/** before X; at X or before; after X; at X or after; from X on. */
export type Edge = 'before' | 'by' | 'after' | 'notBefore' | 'since';
type Tail = 'roughly' | 'orEarlier' | 'orLater' | 'onward';
