import type { Level } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { writeXml } from '../../xml/write.ts';
import { fileNames } from '../file-names.ts';
import type { OutFile } from '../out-file.ts';
import { dctermsRecords } from './dcterms.ts';
import { oaiDc, simpleStatements } from './oai-dc.ts';
import { tableHeadings, tableRow } from './table.ts';
import { describedUnits } from './units.ts';

/**
 * Simple Dublin Core: a record for the collection and for each unit of it that gets one, a file each, and the table.
 * @param downTo as for `describedUnits`
 */
export function* dublinCore(
  aid: FindingAid,
  downTo: Level | undefined = aid.recipient?.recordsDownTo,
): Generator<OutFile> {
  const fileName = fileNames();
  const statementsOf = simpleStatements(aid);
  const table = [tableHeadings];
  for (const described of describedUnits(aid.collection, downTo)) {
    const statements = statementsOf(described);
    table.push(tableRow(statements, aid));
    const path = `dublin-core/${fileName(described.unit.id)}.xml`;
    yield { path, xml: true, content: writeXml(oaiDc(statements)) };
  }
  yield { path: 'dublin-core.csv', xml: false, content: table };
}

/** Qualified Dublin Core: the same units in DCMI terms, in one file. */
export function dcterms(
  aid: FindingAid,
  downTo: Level | undefined = aid.recipient?.recordsDownTo,
): OutFile[] {
  return [{ path: 'dcterms/records.xml', xml: true, content: writeXml(dctermsRecords(aid, downTo)) }];
}
