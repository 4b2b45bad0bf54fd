import type { Level } from '../../catalogue/component.ts';
import { csvRecord } from '../../catalogue/csv-cell.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { DC_ELEMENTS, type DcElement } from '../crosswalk/row.ts';
import { simpleStatements } from './oai-dc.ts';
import type { Statement } from './statements.ts';
import { describedUnits } from './units.ts';

const SEPARATOR = ' | ';

/**
 * The records in simple Dublin Core as a table, one row a record and one column an element (RFC 4180, UTF-8 with a
 * byte order mark for spreadsheets). Several values of an element stand in one cell, parted as the recipient wants
 * them. A separator within a value stays as it is, for there is no way of
 * writing it that every recipient would know; `check` finds it.
 */
export function* dublinCoreTable(aid: FindingAid, downTo?: Level): Generator<string> {
  const separator = aid.recipient?.separator ?? SEPARATOR;
  const statementsOf = simpleStatements(aid);
  yield `\uFEFF${csvRecord(DC_ELEMENTS)}`;
  for (const described of describedUnits(aid.collection, downTo)) {
    const statements = statementsOf(described);
    yield csvRecord(DC_ELEMENTS.map((name) => valuesOf(statements, name).join(separator)));
  }
}

const valuesOf = (statements: readonly Statement<DcElement>[], name: DcElement) =>
  statements.filter(({ element }) => element === name).map(({ text }) => text);
