import { csvRecord } from '../../catalogue/csv-cell.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { DC_ELEMENTS, type DcElement } from '../crosswalk/row.ts';
import type { Statement } from './statements.ts';

const SEPARATOR = ' | ';

/** The first row of the table of records in simple Dublin Core. */
export const tableHeadings = `\uFEFF${csvRecord(DC_ELEMENTS)}`;

/**
 * A record in simple Dublin Core as a row of a table with a column for each element (RFC 4180, UTF-8 with a byte order
 * mark for spreadsheets). Several values of an element stand in one cell, parted as the recipient wants them. A
 * separator within a value stays as it is, for there is no way of writing it that every recipient would know; `check`
 * finds it.
 */
export function tableRow(statements: readonly Statement<DcElement>[], { recipient }: FindingAid): string {
  const separator = recipient?.separator ?? SEPARATOR;
  const cells = new Map<DcElement, string>();
  for (const { element, text } of statements) {
    const before = cells.get(element);
    cells.set(element, before === undefined ? text : before + separator + text);
  }
  return csvRecord(DC_ELEMENTS.map((name) => cells.get(name)));
}
