export { compareFindingAids, isEmpty } from './compare.ts';
export { listTable } from './list-table.ts';
export { type MergedLists, mergeLists } from './merge-lists.ts';
export { mergedCsv } from './merged-csv.ts';
export type { Comparison } from './model.ts';
export { NO_DAY, type ReadFindingAid, readFindingAid } from './read-finding-aid.ts';
export { sayComparison } from './say-comparison.ts';
export { sayMerge } from './say-merge.ts';
export { inOneForm, sayAs } from './told-as.ts';
