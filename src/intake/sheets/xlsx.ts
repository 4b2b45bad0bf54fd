import { posix } from 'node:path';
import { refuse } from './refuse.ts';
import { attribute, scanXml } from './scan-xml.ts';
import type { Epoch } from './serial.ts';
import { rowMakers, type Sheet, type SheetRow } from './sheet.ts';
import type { Packed } from './unpack.ts';
import { columnOfCell } from './xlsx-cell.ts';
import { readComments } from './xlsx-comments.ts';
import { readSheet } from './xlsx-sheet.ts';
import { readStrings } from './xlsx-strings.ts';
import { readStyles } from './xlsx-styles.ts';

/** A part that another part of the workbook leads to. */
interface Related {
  id: string;
  type: string;
  target: string;
}

/**
 * Reads the sheets of a workbook in XLSX (ECMA-376 Part 1, both its transitional and its strict form).
 * Nothing outside the file is asked for: relations that lead there are left out.
 * @throws CatalogueError where the file is no whole workbook
 */
export function readXlsx(packed: Packed, file: string): Sheet[] {
  const main = relatedTo(packed, file, '').find(({ type }) => type === 'officeDocument');
  const book = main === undefined ? undefined : packed.part(main.target);
  if (main === undefined || book === undefined || main.target.endsWith('.bin'))
    return refuse('workbook.unknown', file, 'This is a packed file, but no workbook in XLSX or ODS.');
  const { sheets, epoch } = readBook(book, file, main.target);
  const related = relatedTo(packed, file, main.target);
  const partOf = (type: string) => {
    const name = related.find((one) => one.type === type)?.target;
    const bytes = name === undefined ? undefined : packed.part(name);
    return name === undefined || bytes === undefined ? undefined : { name, bytes };
  };
  const strings = partOf('sharedStrings');
  const styles = partOf('styles');
  const shared = {
    file,
    epoch,
    strings: strings === undefined ? [] : readStrings(strings.bytes, file, strings.name),
    styles: styles === undefined ? [] : readStyles(styles.bytes, file, styles.name),
  };
  const makeRows = rowMakers(file);
  return sheets.flatMap(({ name, hidden, id }): Sheet[] => {
    const found = related.find((one) => one.id === id && one.type === 'worksheet');
    const bytes = found === undefined ? undefined : packed.part(found.target);
    if (found === undefined || bytes === undefined) return [];
    const sheet = readSheet(bytes, found.target, shared, makeRows());
    const comments = relatedTo(packed, file, found.target).find(({ type }) => type === 'comments');
    const said = comments === undefined ? undefined : packed.part(comments.target);
    if (comments !== undefined && said !== undefined)
      sheet.rows = withComments(sheet.rows, readComments(said, file, comments.target));
    return [{ name, hidden, ...sheet }];
  });
}

function readBook(
  bytes: Uint8Array,
  file: string,
  part: string,
): { sheets: { name: string; hidden: boolean; id: string }[]; epoch: Epoch } {
  const sheets: { name: string; hidden: boolean; id: string }[] = [];
  let epoch: Epoch = 1900;
  scanXml(bytes, file, part, {
    open(element, attributes) {
      if (element === 'workbookPr' && /^(?:1|true)$/.test(attribute(attributes, 'date1904') ?? ''))
        epoch = 1904;
      if (element !== 'sheet') return;
      const state = attribute(attributes, 'state') ?? 'visible';
      const name = attribute(attributes, 'name') ?? '';
      sheets.push({ name, hidden: state !== 'visible', id: attribute(attributes, 'id') ?? '' });
    },
    close() {},
    text() {},
  });
  return { sheets, epoch };
}

/** The parts that a part leads to (ECMA-376 Part 2, 6.5); the type is the last step of its address. */
function relatedTo(packed: Packed, file: string, part: string): Related[] {
  const { dir, base } = posix.parse(part);
  const name = posix.join(dir, '_rels', `${base}.rels`);
  const bytes = packed.part(name);
  if (bytes === undefined) return [];
  const related: Related[] = [];
  scanXml(bytes, file, name, {
    open(element, attributes) {
      if (element !== 'Relationship' || attribute(attributes, 'TargetMode') === 'External') return;
      const target = attribute(attributes, 'Target') ?? '';
      related.push({
        id: attribute(attributes, 'Id') ?? '',
        type: (attribute(attributes, 'Type') ?? '').split('/').at(-1) ?? '',
        target: target.startsWith('/') ? target.slice(1) : posix.join(dir, target),
      });
    },
    close() {},
    text() {},
  });
  return related;
}

/** A comment on a cell of an empty row makes that row one of its own. */
function withComments(rows: readonly SheetRow[], comments: ReadonlyMap<string, string>): SheetRow[] {
  const byRow = new Map(rows.map((row) => [row.row, row]));
  const empty: SheetRow[] = [];
  for (const [cell, text] of comments) {
    const number = Number(/\d+$/.exec(cell)?.[0]);
    let row = byRow.get(number);
    if (row === undefined) {
      row = { row: number, cells: [] };
      byRow.set(number, row);
      empty.push(row);
    }
    row.remarks ??= [];
    row.remarks.push({ index: columnOfCell(cell), what: 'comment', text });
  }
  return empty.length === 0 ? [...rows] : [...rows, ...empty].sort((one, other) => one.row - other.row);
}
