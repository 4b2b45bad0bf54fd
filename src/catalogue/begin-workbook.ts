import { EXAMPLE } from '../intake/example-row.ts';
import { GUIDE } from '../intake/sheets/choose.ts';
import { KINDS } from '../kinds/kinds.ts';
import { element, type XmlElement } from '../xml/element.ts';
import { writeXml } from '../xml/write.ts';
import { CONDITIONS, GUIDE_TO_COLUMNS, GUIDE_TO_LIST } from './begin-guide.ts';
import { pack } from './pack.ts';
import { COLUMNS, type Column } from './thing.ts';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

// Styles of cells, by their place in styles.xml: text, bold text, text that is broken into lines.
const TEXT = '1';
const BOLD = '2';
const LINES = '3';
// Rows for which choices are offered and cells are set to text.
const LAST_ROW = 10_000;
const WIDTHS: Readonly<Partial<Record<Column, number>>> = {
  title: 48,
  description: 48,
  note: 32,
  number: 9,
  quantity: 9,
};

/**
 * A new list.xlsx: a sheet to fill in, with one example row, choices for kind and condition (other words may be
 * written too), and cells set to text, of which no spreadsheet makes dates; and a sheet that explains each column.
 */
export function beginWorkbook(): Uint8Array {
  const part = (name: string, root: XmlElement): [string, string] => [name, [...writeXml(root)].join('')];
  return pack([
    part('[Content_Types].xml', contentTypes()),
    part('_rels/.rels', relations([['officeDocument', 'xl/workbook.xml']])),
    part('xl/workbook.xml', workbook()),
    part(
      'xl/_rels/workbook.xml.rels',
      relations([
        ['worksheet', 'worksheets/sheet1.xml'],
        ['worksheet', 'worksheets/sheet2.xml'],
        ['styles', 'styles.xml'],
      ]),
    ),
    part('xl/styles.xml', styles()),
    part('xl/worksheets/sheet1.xml', listSheet()),
    part('xl/worksheets/sheet2.xml', guideSheet()),
  ]);
}

function contentTypes(): XmlElement {
  const of = (name: string, type: string) =>
    element('Override', { PartName: `/xl/${name}.xml`, ContentType: `${TYPES}.${type}+xml` });
  return element('Types', { xmlns: 'http://schemas.openxmlformats.org/package/2006/content-types' }, [
    element('Default', {
      Extension: 'rels',
      ContentType: 'application/vnd.openxmlformats-package.relationships+xml',
    }),
    of('workbook', 'sheet.main'),
    of('worksheets/sheet1', 'worksheet'),
    of('worksheets/sheet2', 'worksheet'),
    of('styles', 'styles'),
  ]);
}

function relations(to: readonly (readonly [type: string, target: string])[]): XmlElement {
  return element(
    'Relationships',
    { xmlns: RELATIONS },
    to.map(([type, target], at) =>
      element('Relationship', { Id: `r${at + 1}`, Type: `${OFFICE}/${type}`, Target: target }),
    ),
  );
}

function workbook(): XmlElement {
  return element('workbook', { xmlns: MAIN, 'xmlns:r': OFFICE }, [
    element('sheets', {}, [
      element('sheet', { name: 'List', sheetId: '1', 'r:id': 'r1' }),
      element('sheet', { name: GUIDE.sheet, sheetId: '2', 'r:id': 'r2' }),
    ]),
  ]);
}

function styles(): XmlElement {
  const one = (name: string, child: XmlElement) => element(name, { count: '1' }, [child]);
  const font = (bold: boolean) =>
    element('font', {}, [
      ...(bold ? [element('b', {})] : []),
      element('sz', { val: '11' }),
      element('name', { val: 'Calibri' }),
    ]);
  const fill = (patternType: string) => element('fill', {}, [element('patternFill', { patternType })]);
  // 49 is the format of text (ECMA-376 Part 1, 18.8.30).
  const xf = (numFmtId: string, fontId: string, wrap = false) =>
    element(
      'xf',
      {
        numFmtId,
        fontId,
        fillId: '0',
        borderId: '0',
        xfId: '0',
        applyNumberFormat: '1',
        applyFont: '1',
        ...(wrap && { applyAlignment: '1' }),
      },
      [...(wrap ? [element('alignment', { wrapText: '1', vertical: 'top' })] : [])],
    );
  return element('styleSheet', { xmlns: MAIN }, [
    element('fonts', { count: '2' }, [font(false), font(true)]),
    element('fills', { count: '2' }, [fill('none'), fill('gray125')]),
    one(
      'borders',
      element(
        'border',
        {},
        ['left', 'right', 'top', 'bottom', 'diagonal'].map((side) => element(side, {})),
      ),
    ),
    one('cellStyleXfs', element('xf', { numFmtId: '0', fontId: '0', fillId: '0', borderId: '0' })),
    element('cellXfs', { count: '4' }, [xf('0', '0'), xf('49', '0'), xf('49', '1'), xf('49', '0', true)]),
  ]);
}

function listSheet(): XmlElement {
  const cols = COLUMNS.map((column, at) =>
    element('col', {
      min: `${at + 1}`,
      max: `${at + 1}`,
      width: `${WIDTHS[column] ?? 18}`,
      style: TEXT,
      customWidth: '1',
    }),
  );
  const kinds = choices('kind', `'${GUIDE.sheet}'!$E$2:$E$${KINDS.length + 1}`);
  const conditions = choices('condition', `'${GUIDE.sheet}'!$G$2:$G$${CONDITIONS.length + 1}`);
  return element('worksheet', { xmlns: MAIN }, [
    element('sheetViews', {}, [
      element('sheetView', { workbookViewId: '0' }, [
        element('pane', { ySplit: '1', topLeftCell: 'A2', activePane: 'bottomLeft', state: 'frozen' }),
      ]),
    ]),
    element('cols', {}, cols),
    element('sheetData', {}, [
      row(1, COLUMNS, BOLD),
      row(
        2,
        COLUMNS.map((column) => EXAMPLE[column] ?? ''),
        TEXT,
      ),
    ]),
    element('dataValidations', { count: '2' }, [kinds, conditions]),
  ]);
}

/** Choices for a column; a word that is not among them may be written all the same. */
function choices(column: Column, from: string): XmlElement {
  const letter = String.fromCharCode(65 + COLUMNS.indexOf(column));
  const sqref = `${letter}2:${letter}${LAST_ROW}`;
  return element('dataValidation', { type: 'list', allowBlank: '1', showErrorMessage: '0', sqref }, [
    element('formula1', {}, from),
  ]);
}

function guideSheet(): XmlElement {
  const width = (at: number, wide: number) =>
    element('col', { min: `${at}`, max: `${at}`, width: `${wide}`, customWidth: '1' });
  const explained: string[][] = [
    ...GUIDE_TO_LIST.map((line) => ['', line]),
    [],
    ['Column', 'What goes there', 'For example'],
    ...COLUMNS.map((column) => [column, GUIDE_TO_COLUMNS[column].says, GUIDE_TO_COLUMNS[column].example]),
  ];
  const length = Math.max(explained.length, KINDS.length, CONDITIONS.length);
  const rows = Array.from({ length }, (_, at) => {
    const [column = '', says = '', example = ''] = explained[at] ?? [];
    const kind = KINDS[at];
    const cells = [column, says, example, '', kind?.one ?? '', kind?.group ?? '', CONDITIONS[at] ?? ''];
    return row(at + 2, cells, LINES);
  });
  const head = row(1, [GUIDE.begins, '', '', '', 'Kinds', 'Their groups', 'Conditions'], BOLD);
  return element('worksheet', { xmlns: MAIN }, [
    element('cols', {}, [
      width(1, 24),
      width(2, 70),
      width(3, 40),
      width(4, 4),
      width(5, 24),
      width(6, 28),
      width(7, 24),
    ]),
    element('sheetData', {}, [head, ...rows]),
  ]);
}

function row(at: number, texts: readonly string[], style: string): XmlElement {
  const cells = texts.flatMap((text, index) =>
    text === ''
      ? []
      : [
          element('c', { r: `${String.fromCharCode(65 + index)}${at}`, s: style, t: 'inlineStr' }, [
            element('is', {}, [element('t', {}, text)]),
          ]),
        ],
  );
  return element('row', { r: `${at}` }, cells);
}
