import { CatalogueError } from '../../catalogue/finding.ts';

const SAVE_AGAIN =
  'Open it in a spreadsheet program and save it again as XLSX, or save its list as “CSV UTF-8” under the name list.csv.';

/** Ends the reading of a workbook. */
export function refuse(rule: string, file: string, found: string, advice = SAVE_AGAIN): never {
  throw new CatalogueError([{ rule, weight: 'must', place: { file }, found, advice }]);
}

/**
 * More than this no list is read: rows by the format's own end (ECMA-376 Part 1, 18.3.1.73: 2^20 of them), columns by
 * the same (2^14), cells and bytes so that a workbook made to fill the memory is refused before it does. A list of
 * 100,000 rows and 20 columns has a tenth of these cells and bytes.
 */
export const MOST = { rows: 1 << 20, columns: 1 << 14, cells: 20_000_000, bytes: 400_000_000 } as const;

export function refuseSize(file: string, what: string): never {
  return refuse(
    'workbook.too-large',
    file,
    `The workbook ${what}, more than any list needs; it was not read.`,
    'Copy the list alone into a new workbook, without what lies around it, and save that.',
  );
}
