import { readOdsStyles } from './ods-styles.ts';
import { type TableReader, tableReader } from './ods-table.ts';
import { refuse } from './refuse.ts';
import { scanXml } from './scan-xml.ts';
import { rowMakers, type Sheet } from './sheet.ts';
import type { Packed } from './unpack.ts';

const CONTENT = 'content.xml';

/**
 * Reads the sheets of a workbook in the Open Document Format (ODF 1.3 part 3, chapter 9). Scripts, links and sources
 * of data that it may hold are not looked at.
 * @throws CatalogueError where the file is no whole workbook
 */
export function readOds(packed: Packed, file: string): Sheet[] {
  const manifest = packed.part('META-INF/manifest.xml');
  if (manifest !== undefined && isLocked(manifest, file))
    return refuse('workbook.locked', file, 'The workbook is locked with a password.');
  const content = packed.part(CONTENT);
  if (content === undefined)
    return refuse('workbook.unknown', file, 'This is a packed file, but no workbook in XLSX or ODS.');
  const named = packed.part('styles.xml');
  const styles = readOdsStyles(
    [
      { bytes: content, name: CONTENT },
      ...(named === undefined ? [] : [{ bytes: named, name: 'styles.xml' }]),
    ],
    file,
  );
  const makeRows = rowMakers(file);
  const sheets: Sheet[] = [];
  let table: TableReader | undefined;
  let depth = 0;
  scanXml(content, file, CONTENT, {
    open(element, attributes, empty) {
      if (table !== undefined) {
        if (!empty) depth++;
        table.open(element, attributes, empty);
      } else if (element === 'table' && !empty) {
        table = tableReader(attributes, styles, makeRows(), file);
        sheets.push(table.sheet);
      }
    },
    close(element) {
      table?.close(element);
      if (table !== undefined && depth-- === 0) {
        table = undefined;
        depth = 0;
      }
    },
    text(piece) {
      table?.text(piece);
    },
  });
  return sheets;
}

function isLocked(manifest: Uint8Array, file: string): boolean {
  let locked = false;
  scanXml(manifest, file, 'META-INF/manifest.xml', {
    open(element) {
      locked ||= element === 'encryption-data';
    },
    close() {},
    text() {},
  });
  return locked;
}
