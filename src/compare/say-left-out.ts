import type { Row } from '../intake/csv-rows.ts';
import type { OpenList } from '../intake/open-list.ts';

/** What opening a list says of what stands in the file beside its rows. */
const BESIDE = new Set(['list.sheet-left-out', 'list.comment-beside', 'list.cell-error']);

export const sayBeside = ({ findings }: OpenList): string[] =>
  findings.flatMap(({ rule, place, found }) =>
    BESIDE.has(rule)
      ? [`${place.file ?? ''}${place.row === undefined ? '' : `, row ${place.row}`}: ${found}`]
      : [],
  );

/** A row that is none of the list, and why. */
export const sayRow = (file: string, { row, cells }: Row, why: string): string =>
  `${file}, row ${row}, ${why}: “${cells
    .filter((cell) => cell.trim() !== '')
    .join(' | ')
    .replace(/\s+/g, ' ')}”`;
