import { strToU8, zipSync } from 'fflate';

/** A cell as a test writes it; a plain text is a shared string, a number a number, nothing an empty cell. */
export type Cell =
  | string
  | number
  | null
  | { date: number; as?: StyleName }
  | { inline: string }
  | { rich: readonly string[]; aloud?: string }
  | { formula: string; value?: string | number }
  | { error: string }
  | { bool: boolean }
  | { iso: string }
  | { number: number; as: StyleName };

export interface SheetToMake {
  name?: string;
  state?: 'hidden' | 'veryHidden';
  rows: readonly (readonly Cell[])[];
  /** Rows, from 1, that are not shown. */
  hidden?: readonly number[];
  /** Columns, from 1, that are not shown. */
  hiddenColumns?: readonly number[];
  merged?: readonly string[];
  comments?: Readonly<Record<string, string>>;
  /** Written in the place of the rows. */
  data?: string;
}

/** Number formats of the cells, by their numbers in ECMA-376 Part 1, 18.8.30, or as they are written. */
const STYLES = {
  general: 0,
  day: 14,
  'day and month': 16,
  'month and year': 17,
  'time of day': 20,
  'day and time': 22,
  text: 49,
  year: 'yyyy',
  'with weekday': '[$-407]dddd", den "d. mmmm yyyy;@',
  'three figures': '000',
  money: '#,##0.00 [$EUR]',
  'red hours': '[Red]0.0',
} as const;
export type StyleName = keyof typeof STYLES;
const NAMES = Object.keys(STYLES) as StyleName[];

const escaped = (text: string) =>
  text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\r/g, '_x000D_');

export interface BookToMake {
  date1904?: boolean;
  /** Parts to add, or to put in the place of others. */
  parts?: Readonly<Record<string, string | Uint8Array>>;
}

/** Packs an XLSX workbook by hand, part by part, with a packer that is not the program's own. */
export function makeWorkbook(
  sheets: readonly SheetToMake[],
  { date1904 = false, parts = {} }: BookToMake = {},
): Uint8Array {
  const strings: string[] = [];
  const share = (xml: string) => strings.push(`<si>${xml}</si>`) - 1;
  const made: Record<string, string | Uint8Array> = {};
  sheets.forEach((sheet, at) => {
    made[`xl/worksheets/sheet${at + 1}.xml`] = sheetXml(sheet, share);
    if (sheet.comments === undefined) return;
    const comments = Object.entries(sheet.comments).map(
      ([ref, text]) =>
        `<comment ref="${ref}" authorId="0"><text><r><t>${escaped(text)}</t></r></text></comment>`,
    );
    made[`xl/comments${at + 1}.xml`] =
      `<comments xmlns="${MAIN}"><authors><author>Tom Quill</author></authors><commentList>${comments.join('')}</commentList></comments>`;
    made[`xl/worksheets/_rels/sheet${at + 1}.xml.rels`] = relations([
      ['comments', `../comments${at + 1}.xml`],
    ]);
  });
  const list = sheets.map(
    ({ name, state }, at) =>
      `<sheet name="${escaped(name ?? `Sheet${at + 1}`)}" sheetId="${at + 1}" r:id="r${at + 1}"${state ? ` state="${state}"` : ''}/>`,
  );
  const all: Record<string, string | Uint8Array> = {
    '[Content_Types].xml': '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    '_rels/.rels': relations([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr${date1904 ? ' date1904="1"' : ''}/><sheets>${list.join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations([
      ...sheets.map((_, at): [string, string] => ['worksheet', `worksheets/sheet${at + 1}.xml`]),
      ['sharedStrings', 'sharedStrings.xml'],
      ['styles', 'styles.xml'],
    ]),
    'xl/styles.xml': stylesXml(),
    ...made,
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${strings.join('')}</sst>`,
    ...parts,
  };
  const bytes = Object.entries(all).map(([name, content]) => [
    name,
    typeof content === 'string' ? strToU8(content) : content,
  ]);
  return zipSync(Object.fromEntries(bytes));
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

function relations(to: readonly (readonly [type: string, target: string])[]): string {
  const each = to.map(
    ([type, target], at) => `<Relationship Id="r${at + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${each.join('')}</Relationships>`;
}

function stylesXml(): string {
  const own = NAMES.flatMap((name, at) =>
    typeof STYLES[name] === 'string'
      ? [`<numFmt numFmtId="${200 + at}" formatCode="${escaped(String(STYLES[name]))}"/>`]
      : [],
  );
  const xfs = NAMES.map((name, at) => {
    const id = STYLES[name];
    return `<xf numFmtId="${typeof id === 'number' ? id : 200 + at}"/>`;
  });
  // The styles of styles come first, and must not be taken for those of cells.
  return `<styleSheet xmlns="${MAIN}"><numFmts>${own.join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>${xfs.join('')}</cellXfs></styleSheet>`;
}

function sheetXml(
  { rows, hidden = [], hiddenColumns = [], merged = [], data }: SheetToMake,
  share: (xml: string) => number,
): string {
  const cols = hiddenColumns.map((at) => `<col min="${at}" max="${at}" hidden="1"/>`).join('');
  const lines = rows.map((cells, at) => {
    const row = at + 1;
    const inside = cells.map((cell, index) => cellXml(cell, `${lettersOf(index)}${row}`, share)).join('');
    return `<row r="${row}"${hidden.includes(row) ? ' hidden="1"' : ''}>${inside}</row>`;
  });
  const ranges = merged.map((ref) => `<mergeCell ref="${ref}"/>`).join('');
  return `<worksheet xmlns="${MAIN}">${cols && `<cols>${cols}</cols>`}<sheetData>${data ?? lines.join('')}</sheetData>${ranges && `<mergeCells>${ranges}</mergeCells>`}</worksheet>`;
}

function cellXml(cell: Cell, at: string, share: (xml: string) => number): string {
  if (cell === null) return `<c r="${at}" s="${NAMES.indexOf('text')}"/>`;
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === 'string')
    return `<c r="${at}" t="s"><v>${share(`<t xml:space="preserve">${escaped(cell)}</t>`)}</v></c>`;
  if ('inline' in cell) return `<c r="${at}" t="inlineStr"><is><t>${escaped(cell.inline)}</t></is></c>`;
  if ('rich' in cell) {
    const runs = cell.rich.map((run) => `<r><rPr><b/></rPr><t xml:space="preserve">${escaped(run)}</t></r>`);
    const aloud = cell.aloud === undefined ? '' : `<rPh sb="0" eb="1"><t>${cell.aloud}</t></rPh>`;
    return `<c r="${at}" t="s"><v>${share(runs.join('') + aloud)}</v></c>`;
  }
  if ('formula' in cell) {
    const { formula, value } = cell;
    const kept = value === undefined ? '' : `<v>${escaped(String(value))}</v>`;
    return `<c r="${at}"${typeof value === 'string' ? ' t="str"' : ''}><f>${escaped(formula)}</f>${kept}</c>`;
  }
  if ('error' in cell) return `<c r="${at}" t="e"><v>${cell.error}</v></c>`;
  if ('bool' in cell) return `<c r="${at}" t="b"><v>${cell.bool ? 1 : 0}</v></c>`;
  if ('iso' in cell) return `<c r="${at}" t="d"><v>${cell.iso}</v></c>`;
  const [number, as] = 'date' in cell ? [cell.date, cell.as ?? 'day'] : [cell.number, cell.as];
  return `<c r="${at}" s="${NAMES.indexOf(as)}"><v>${number}</v></c>`;
}

function lettersOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : lettersOf(Math.floor(index / 26) - 1) + last;
}
