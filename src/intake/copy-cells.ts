import type { Finding } from '../catalogue/finding.ts';
import { readCopyPath } from './copy-path.ts';
import { badCopy } from './list-findings.ts';
import { splitCell } from './names.ts';

const NO_COPIES: readonly string[] = [];

/** The paths in a cell that lead to copies; those that lead nowhere are said. */
export function copiesIn(cell: string, file: string, row: number, findings: Finding[]): readonly string[] {
  if (cell === '') return NO_COPIES;
  return splitCell(cell).flatMap((written) => {
    const copy = readCopyPath(written);
    if ('path' in copy) return [copy.path];
    findings.push(badCopy(file, row, copy.trouble));
    return [];
  });
}
