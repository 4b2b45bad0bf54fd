import type { FindingAid } from '../catalogue/finding-aid.ts';
import { arrangement, type ToArrange } from './arrangement.ts';

export { readKind } from '../kinds/kind-words.ts';
export { KINDS } from '../kinds/kinds.ts';
export { isOpen } from './access.ts';
export { type Arrangement, arrangement } from './arrangement.ts';
export { compareSortings, type SortingSummary } from './compare.ts';
export { groupTitles } from './group-titles.ts';
export { leftOver } from './left-over.ts';
export type { LookAlike } from './look-alikes.ts';
export type { Move } from './moves.ts';
export { sayGone } from './number-history.ts';
export { outline } from './outline.ts';
export { placedCodes } from './placed-codes.ts';
export { referenceCodes } from './reference-codes.ts';
export { freeNumbers, type Settling, settle } from './settle.ts';

/**
 * Turns a list into a finding aid: groups, order, folders, reference codes, boxes, and the description that follows.
 * @param today the day of the description where the settings name none, as YYYY-MM-DD
 */
export function arrange(catalogue: ToArrange, today: string): FindingAid {
  return arrangement(catalogue, today).aid;
}
