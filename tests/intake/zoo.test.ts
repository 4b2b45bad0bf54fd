import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type ListSettings, listSettings } from '../../src/catalogue/list-settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { readList } from '../../src/intake/list.ts';
import { makeWorkbook, type SheetToMake } from './make-workbook.ts';

/**
 * Awkward lists, each with what must come out. The expectations are worked out by hand from what a person would read off
 * the sheet; the numbers of days are from `date -u` (days since 1899-12-30 after February 1900).
 */
interface Animal {
  list: readonly SheetToMake[] | Uint8Array | string;
  file?: string;
  date1904?: boolean;
  settings?: Partial<ListSettings>;
  things: readonly Readonly<Record<string, unknown>>[];
  /** Every rule that must speak, in the order of the findings; nothing else may. */
  rules?: readonly string[];
  /** Words that must be in what is said. */
  said?: readonly RegExp[];
}

const one = (rows: SheetToMake['rows'], over: Partial<SheetToMake> = {}) => [{ rows, ...over }];
const titles = (...names: string[]) => names.map((title) => ({ title }));
const date = (written: string, edtf = written) => ({ written, reading: { kind: 'date', edtf } });
const file = (name: string) => readFileSync(new URL(`zoo/${name}`, import.meta.url));
const HEAD = ['number', 'title', 'date'] as const;
// 1962-05-14 is day 22780 (date -u -d 1962-05-14: 4516800000 s before 1970, which is day 25569).
const MAY_14 = 22_780;

const ZOO: Readonly<Record<string, Animal>> = {
  'a plain sheet': {
    list: one([HEAD, [7, 'A letter', 'c. 1950']]),
    things: [{ row: 2, number: '7', title: 'A letter', date: { written: 'c. 1950' } }],
  },
  'texts in their cells and not shared': {
    list: one([[{ inline: 'title' }], [{ inline: 'Ferry & orchard <1> "toll"' }]]),
    things: titles('Ferry & orchard <1> "toll"'),
  },
  'words in bold and with their reading aloud': {
    list: one([['title'], [{ rich: ['The ', 'ferry', ' in ice'], aloud: 'fery' }]]),
    things: titles('The ferry in ice'),
  },
  'a break in a cell': {
    list: one([
      ['title', 'description'],
      ['The ferry\nin ice', 'One.\r\nTwo.'],
    ]),
    things: [{ title: 'The ferry in ice', description: 'One.\nTwo.' }],
  },
  'emoji and letters of everywhere': {
    list: one([['title'], ['Østergård 🍎 Ελλάδα 渡し']]),
    things: titles('Østergård 🍎 Ελλάδα 渡し'),
  },
  'real dates from 1900': {
    list: one([
      HEAD,
      [1, 'a', { date: MAY_14 }],
      [2, 'b', { date: 1 }],
      [3, 'c', { date: 59 }],
      [4, 'd', { date: 61 }],
    ]),
    things: [
      { date: date('1962-05-14') },
      { date: date('1900-01-01') },
      { date: date('1900-02-28') },
      { date: date('1900-03-01') },
    ],
  },
  'the 29 February 1900 that never was': {
    list: one([HEAD, [1, 'a', { date: 60 }]]),
    things: [{ date: { written: '60' } }],
    rules: ['list.date-assumed'],
  },
  'real dates from 1904': {
    // 1904-01-01 is day 0 there, and 1462 days later in the other count.
    list: one([HEAD, [1, 'a', { date: MAY_14 - 1462 }], [2, 'b', { date: 0 }]]),
    date1904: true,
    things: [{ date: date('1962-05-14') }, { date: date('1904-01-01') }],
  },
  'dates in the form of another language': {
    list: one([HEAD, [1, 'a', { date: MAY_14, as: 'with weekday' }]]),
    things: [{ date: date('1962-05-14') }],
  },
  'dates that ISO 8601 keeps': {
    list: one([HEAD, [1, 'a', { iso: '1962-05-14T00:00:00' }]]),
    things: [{ date: date('1962-05-14') }],
  },
  'dates without a day': {
    list: one([
      HEAD,
      [1, 'a', { date: MAY_14, as: 'month and year' }],
      [2, 'b', { date: MAY_14, as: 'year' }],
    ]),
    things: [{ date: date('1962-05') }, { date: date('1962') }],
  },
  'a date without its year': {
    list: one([HEAD, [1, 'a', { date: MAY_14, as: 'day and month' }]]),
    things: [{ date: date('1962-05-14') }],
    rules: ['list.year-added'],
    said: [/added the year itself: 1962-05-14/],
  },
  'a date with a time of day': {
    list: one([HEAD, [1, 'a', { date: MAY_14 + 0.4375, as: 'day and time' }]]),
    things: [{ date: date('1962-05-14'), extra: [{ heading: 'date, time of day', text: '10:30' }] }],
  },
  'a time of day alone': {
    list: one([
      ['title', 'Tide'],
      ['a', { date: 0.4375, as: 'time of day' }],
    ]),
    things: [{ extra: [{ heading: 'Tide', text: '10:30' }] }],
    rules: ['list.column-unknown'],
  },
  'numbers made into dates': {
    // 3-4 in a cell of the number column, typed in 2024: 2024-03-04 is day 45355.
    list: one([HEAD, [{ date: 45_355 }, 'a', 1950], [{ date: 45_386 }, 'b', 1951]]),
    things: [{ number: '2024-03-04' }, { number: '2024-04-04' }],
    rules: ['list.made-a-date'],
    said: [/holds the date 2024-03-04.*1 more row/],
  },
  'a size made into a date': {
    list: one([
      ['title', 'size'],
      ['a', { date: 45_355, as: 'day and month' }],
    ]),
    things: titles('a'),
    rules: ['list.made-a-date'],
  },
  'a year in a cell for dates': {
    // Day 1962 is 1905-05-15.
    list: one([HEAD, [1, 'a', { date: 1962 }]]),
    things: [{ date: date('1905-05-15') }],
    rules: ['list.year-as-days'],
    said: [/makes of the number 1962/],
  },
  'a date in a cell for numbers': {
    list: one([HEAD, [1, 'a', MAY_14]]),
    things: [{ date: { written: '22780', reading: { kind: 'unreadable' } } }],
    rules: ['list.days-as-number', 'list.date-unreadable'],
    said: [/how a spreadsheet keeps a date: 1962-05-14/],
  },
  'years as numbers': { list: one([HEAD, [1, 'a', 1962]]), things: [{ date: date('1962') }] },
  'numbers as text': {
    list: one([HEAD, ['007', 'a', '1962']]),
    things: [{ number: '007', date: date('1962') }],
  },
  'numbers shown with zeros': {
    list: one([
      ['number', 'title', 'quantity'],
      [{ number: 7, as: 'three figures' }, 'a', { number: 3, as: 'red hours' }],
    ]),
    things: [{ number: '007', quantity: 3 }],
  },
  'sums of money': {
    list: one([
      ['title', 'Price'],
      ['a', { number: 12.1, as: 'money' }],
      ['b', 0.1 + 0.2],
    ]),
    things: [{ extra: [{ heading: 'Price', text: '12.1' }] }, { extra: [{ heading: 'Price', text: '0.3' }] }],
    rules: ['list.column-unknown'],
  },
  'boxes to tick': {
    list: one([
      ['title', 'Private'],
      ['a', { bool: true }],
      ['b', { bool: false }],
    ]),
    things: [{ access: 'Private' }, { title: 'b' }],
  },
  'formulas with their values': {
    list: one([
      ['number', 'title', 'quantity'],
      [
        { formula: 'ROW()-1', value: 1 },
        { formula: '"Letter "&A2', value: 'Letter 1' },
        { formula: '2*6', value: 12 },
      ],
    ]),
    things: [{ number: '1', title: 'Letter 1', quantity: 12 }],
  },
  'formulas without values': {
    list: one([
      ['title', 'quantity'],
      ['a', { formula: '2*6' }],
    ]),
    things: [{ title: 'a' }],
    rules: ['list.formula-without-value'],
  },
  'formulas that call out': {
    list: one([
      ['title', 'note'],
      ['a', { formula: 'WEBSERVICE("http://127.0.0.1:9/x")', value: 'kept' }],
      ['b', { formula: 'HYPERLINK("http://127.0.0.1:9/x","there")', value: 'there' }],
      ['c', { formula: "cmd|' /C calc'!A0", value: '' }],
    ]),
    things: [{ note: 'kept' }, { note: 'there' }, { title: 'c' }],
  },
  'errors in cells': {
    list: one([
      ['title', 'quantity'],
      ['a', { error: '#REF!' }],
      ['b', { error: '#DIV/0!' }],
      ['c', 2],
    ]),
    things: [{ title: 'a' }, { title: 'b' }, { title: 'c', quantity: 2 }],
    rules: ['list.cell-error'],
    said: [/#REF!.*1 more place, the last of them in row 3/],
  },
  'headings below words about the list': {
    list: one([['The papers of the ferry house'], [null], ['as of', 2024], HEAD, [1, 'A letter', 1950]]),
    things: [{ row: 5, title: 'A letter' }],
    rules: ['list.above-headings'],
    said: [/2 rows stand above the headings in row 4, beginning “The papers of the ferry house”/],
  },
  'headings in the row that collection.yaml says': {
    list: one([
      ['title', 'note'],
      ['not a thing', 'x'],
      ['title', 'date'],
      ['A letter', 1950],
    ]),
    settings: { headings: 3 },
    things: [{ row: 4, title: 'A letter' }],
    rules: ['list.above-headings'],
  },
  'no such row of headings': {
    list: one([['title'], ['A letter']]),
    settings: { headings: 9 },
    things: [],
    rules: ['list.no-heading-row'],
  },
  'headings that collection.yaml explains': {
    list: one([
      ['Stück', 'Rückseite', 'Regal', 'title'],
      ['A letter', 'in ink', 'top', 'not it'],
    ]),
    settings: { columns: { Stück: 'title', rückseite: 'description', Regal: 'kept' } },
    things: [
      {
        title: 'A letter',
        description: 'in ink',
        extra: [
          { heading: 'Regal', text: 'top' },
          { heading: 'title', text: 'not it' },
        ],
      },
    ],
    rules: ['list.column-doubled'],
  },
  'an explanation of a heading that is not there': {
    list: one([['title'], ['A letter']]),
    settings: { columns: { Shelf: 'box' } },
    things: titles('A letter'),
    rules: ['list.no-such-heading'],
  },
  'headings in German, with dates in German': {
    list: one([
      ['Nr.', 'Titel', 'Datum', 'Art', 'Ort', 'Größe'],
      [1, 'Brief', '14. Mai 1962', 'letter', 'Applegarth', 'A5'],
    ]),
    things: [
      { number: '1', title: 'Brief', date: { reading: { edtf: '1962-05-14' } }, kind: 'letter', size: 'A5' },
    ],
  },
  'headings in French': {
    list: one([
      ['Intitulé', 'Année', 'Lieu', 'Quantité'],
      ['Lettre', 1950, 'Applegarth', 3],
    ]),
    things: [{ title: 'Lettre', date: date('1950'), places: ['Applegarth'], quantity: 3 }],
  },
  'headings in Norwegian': {
    list: one([
      ['Hva', 'År', 'Sted', 'Størrelse', 'Hvem'],
      ['Brev', 1950, 'Nordvik', 'A4', 'Nils Quill'],
    ]),
    things: [{ title: 'Brev', date: date('1950'), places: ['Nordvik'], size: 'A4', people: ['Nils Quill'] }],
  },
  'several sheets, each a series': {
    list: [
      {
        name: 'Letters',
        rows: [
          ['title', 'series'],
          ['a', null],
          ['b', 'Voyages'],
        ],
      },
      { name: 'Photographs', rows: [['title'], ['c']] },
    ],
    things: [
      { title: 'a', series: 'Letters' },
      { title: 'b', series: 'Voyages' },
      { title: 'c', series: 'Photographs' },
    ],
    rules: ['list.sheets-as-series'],
  },
  'several sheets without names of their own': {
    list: [{ rows: [['title'], ['a']] }, { rows: [['title'], ['b']] }],
    things: [{ title: 'a' }, { title: 'b' }],
    rules: ['list.sheets-as-series'],
  },
  'several sheets with one number twice': {
    list: [
      { name: 'Letters', rows: [HEAD, [1, 'a']] },
      { name: 'Maps', rows: [HEAD, [1, 'b']] },
    ],
    things: titles('a', 'b'),
    rules: ['list.sheets-as-series', 'list.number-twice'],
    said: [/in row 2 and again in row 2 \(list\.xlsx, sheet Maps\)/],
  },
  'a sheet that is chosen': {
    list: [
      { name: 'Letters', rows: [['title'], ['a']] },
      { name: 'Old', state: 'hidden', rows: [['title'], ['b']] },
    ],
    settings: { sheets: ['old'] },
    things: titles('b'),
  },
  'a sheet that is chosen and not there': {
    list: [{ name: 'Letters', rows: [['title'], ['a']] }],
    settings: { sheets: ['Lettres'] },
    things: [],
    rules: ['list.no-such-sheet'],
    said: [/its sheets are “Letters”/],
  },
  'sheets that are no lists, and hidden ones': {
    list: [
      { name: 'To do', rows: [['Ask Ruth']] },
      { name: 'Letters', rows: [['title'], ['a']] },
      { name: 'Old', state: 'veryHidden', rows: [['title'], ['b'], ['c']] },
      { name: 'Empty', rows: [] },
    ],
    things: titles('a'),
    rules: ['list.sheet-left-out', 'list.sheet-left-out'],
    said: [/“To do”.*its 1 row was not read/, /“Old” is hidden, so its 3 rows were/],
  },
  'cells merged downwards': {
    list: one([HEAD, [1, 'a', '1952'], [2, 'b', null], [null, null, null], [4, 'd', null]], {
      merged: ['C2:C5'],
    }),
    things: [{ date: date('1952') }, { date: date('1952') }, { row: 5, date: date('1952') }],
    rules: ['list.merged'],
    said: [/for each row from 2 to 5/],
  },
  'cells merged across, in a title above and in a row': {
    list: one([['Ferry house'], HEAD, [1, 'A long title']], { merged: ['A1:C1', 'B3:C3'] }),
    things: [{ title: 'A long title' }],
    rules: ['list.above-headings'],
  },
  'hidden rows and a hidden column': {
    list: one([HEAD, [1, 'a', 1950], [2, 'b', 1951], [3, 'c', 1952]], { hidden: [3, 4], hiddenColumns: [3] }),
    things: titles('a', 'b', 'c'),
    rules: ['list.column-hidden', 'list.row-hidden'],
    said: [/this row and 1 more/, /the column “date”/],
  },
  'comments on cells': {
    list: one([HEAD, [1, 'a', 1950], [null, null, null]], {
      comments: { B2: 'on the back: keep', C1: 'as on the postmark', A3: 'lost?' },
    }),
    things: [{ extra: [{ heading: 'Comment on title', text: 'on the back: keep' }] }],
    rules: ['list.comment-beside', 'list.comment-beside'],
    said: [/“as on the postmark”/, /“lost\?”/],
  },
  'a conversation in comments': {
    list: one([['title'], ['a']], {
      comments: {
        A2: '[Threaded comment]\n\nYour version allows you to read this.\n\nComment:\n    Ask Ruth',
      },
    }),
    things: [{ extra: [{ heading: 'Comment on title', text: 'Ask Ruth' }] }],
  },
  'columns behind the last heading': {
    list: one([['title'], ['a', null, 'left over'], ['b', null, null]]),
    things: [{ extra: [{ heading: 'Column C', text: 'left over' }] }, { extra: [] }],
    rules: ['list.row-too-long'],
    said: [/Write a heading over them/],
  },
  'a total at the end': {
    list: one([
      ['title', 'quantity'],
      ['a', 3],
      ['b', null],
      ['Total', { formula: 'SUM(B2:B3)', value: 4 }],
    ]),
    things: titles('a', 'b'),
    rules: ['list.total-row'],
  },
  'a total without a word': {
    list: one([
      ['title', 'quantity'],
      ['a', 3],
      ['b', 2],
      [null, { formula: 'SUM(B2:B3)', value: 5 }],
    ]),
    things: titles('a', 'b'),
    rules: ['list.total-row'],
  },
  'a total that is not the sum': {
    list: one([
      ['title', 'quantity'],
      ['a', 3],
      ['b', 2],
      ['Summe:', 6],
    ]),
    things: titles('a', 'b'),
    rules: ['list.total-differs'],
    said: [/holds 6, but the quantities above it make 5/],
  },
  'a thing that is called Total, amid the list': {
    list: one([
      ['title', 'quantity'],
      ['Total', 1],
      ['Total eclipse, a poster', 2],
    ]),
    things: titles('Total', 'Total eclipse, a poster'),
  },
  'rows and cells without their names': {
    // ECMA-376 Part 1, 18.3.1.4 and 18.3.1.73: r may be left out; each is then the next.
    list: one([], {
      data: '<row><c t="inlineStr"><is><t>title</t></is></c></row><row><c t="str"><v>a</v></c></row>',
    }),
    things: [{ row: 2, title: 'a' }],
  },
  'a far row': {
    list: one([], {
      data: '<row r="1"><c r="A1" t="str"><v>title</v></c></row><row r="1048576"><c r="A1048576" t="str"><v>a</v></c></row>',
    }),
    things: [{ row: 1_048_576, title: 'a' }],
  },
  'nothing at all': { list: one([]), things: [], rules: ['list.empty'] },
  'headings alone': { list: one([HEAD]), things: [], rules: ['list.no-things'] },
  'no heading for the title': {
    list: one([
      ['Shelf', 'date'],
      ['top', 1950],
    ]),
    things: [],
    rules: ['list.column-unknown', 'list.no-title-column'],
  },
  'a control character': {
    list: one([['title'], [{ inline: 'bad _x0001_ sign' }]]),
    things: titles('bad \u0001 sign'),
    rules: ['list.forbidden-character'],
  },
  'a text under the name of a workbook': {
    list: 'title\nA letter\n',
    file: 'list.xlsx',
    things: [],
    rules: ['workbook.text'],
    said: [/give it the name list.csv|it is a text/],
  },
  'an old workbook': {
    list: Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Array(600).fill(0)]),
    things: [],
    rules: ['workbook.old'],
  },
  'a workbook locked with a password': {
    // [MS-OFFCRYPTO] 2.3: a compound file with a stream of this name.
    list: Buffer.concat([
      Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
      Buffer.alloc(600),
      Buffer.from('EncryptedPackage', 'utf16le'),
    ]),
    things: [],
    rules: ['workbook.locked'],
  },
  'a sheet in ODS locked with a password': {
    // ODF 1.3 part 2, 4.8.4: each locked part has its encryption-data in the manifest.
    list: zipSync({
      'META-INF/manifest.xml': strToU8(
        '<m:manifest xmlns:m="m"><m:file-entry><m:encryption-data/></m:file-entry></m:manifest>',
      ),
      'content.xml': new Uint8Array([1, 2, 3]),
    }),
    file: 'list.ods',
    things: [],
    rules: ['workbook.locked'],
  },
  'a packed file that is no workbook': {
    list: zipSync({ 'word/document.xml': strToU8('<document/>') }),
    things: [],
    rules: ['workbook.unknown'],
  },
  'a picture under the name of a workbook': {
    list: Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0]),
    things: [],
    rules: ['workbook.unknown'],
  },
  'tabs between the cells': {
    list: 'title\tdate\nA letter\t1950\n',
    file: 'list.tsv',
    things: [{ date: date('1950') }],
  },
  'words above the headings of a text': {
    list: 'The papers of the ferry house,,\n\nno,title,date\n1,A letter,1950\n',
    file: 'list.csv',
    things: [{ row: 4, title: 'A letter' }],
    rules: ['list.above-headings'],
  },
  'UTF-16 without a mark': {
    list: Buffer.from('title;date\nA café;1950\n', 'utf16le'),
    file: 'list.csv',
    things: titles('A café'),
  },
  'an encoding that collection.yaml names': {
    // E9 is é in Windows-1252 and È in Mac Roman (Unicode mapping tables ROMAN.TXT and cp1252.txt).
    list: Buffer.from('title\nA caf\u00e9\n', 'latin1'),
    file: 'list.csv',
    settings: { encoding: 'mac-roman' },
    things: titles('A cafÈ'),
  },
  'Windows-1252, recognised': {
    list: Buffer.from('title\nThe ferry\u0092s caf\u00e9 \u0096 no\u00ebl\n', 'latin1'),
    file: 'list.csv',
    things: titles('The ferry’s café – noël'),
    rules: ['list.encoding-guessed'],
  },
  // 92, 93, 94 and 96 are ’ “ ” – in Windows-1252, and í ì î ñ in Mac Roman; A3 is £ in both (the same tables).
  'Windows-1252 with marks alone': {
    list: Buffer.from(
      'title\nGrandma Ada\u0092s dress, 1904\u009606\n\u0093Skip\u0094 Heron at the toll\n',
      'latin1',
    ),
    file: 'list.csv',
    things: titles('Grandma Ada’s dress, 1904–06', '“Skip” Heron at the toll'),
    rules: ['list.encoding-guessed'],
    said: [/Windows-1252.*mac-roman/s],
  },
  'a sign of the pound, which is the same in both': {
    list: Buffer.from('title\nToll of \u00a35\n', 'latin1'),
    file: 'list.csv',
    things: titles('Toll of £5'),
    rules: ['list.encoding-guessed'],
  },
  // D5, D2 and D3 are ’ “ ” in Mac Roman, and Õ Ò Ó in Windows-1252.
  'Mac Roman with marks alone': {
    list: Buffer.from('title\nGrandma Ada\u00d5s dress\n\u00d2Skip\u00d3 Heron at the toll\n', 'latin1'),
    file: 'list.csv',
    things: titles('Grandma Ada’s dress', '“Skip” Heron at the toll'),
    rules: ['list.encoding-guessed'],
    said: [/Mac Roman.*windows-1252/s],
  },
  'UTF-8 with one broken byte': {
    list: Buffer.concat([Buffer.from('title\nA café, a caf'), Buffer.from([0xe9, 0x0a])]),
    file: 'list.csv',
    things: [],
    rules: ['file.encoding'],
  },
  'a file of a spreadsheet program, in Windows-1252': {
    list: file('faehre-windows-1252.csv'),
    file: 'list.csv',
    things: [{ title: 'Brief an die Großmutter', places: ['Fähre'] }, { places: ['Obstgarten – Süd'] }],
    rules: ['list.encoding-guessed'],
    said: [/Windows-1252/],
  },
  'a file of a spreadsheet program, in Mac Roman': {
    list: file('faehre-mac-roman.csv'),
    file: 'list.csv',
    things: [
      { title: 'Brief an die Großmutter' },
      { title: 'Foto vom Überqueren', places: ['Obstgarten – Süd'] },
    ],
    rules: ['list.encoding-guessed'],
    said: [/Mac Roman/],
  },
  'a file of a spreadsheet program, in UTF-16': {
    list: file('faehre-utf-16.csv'),
    file: 'list.csv',
    things: titles('Brief an die Großmutter', 'Foto vom Überqueren'),
  },
};

function read({ list, file: name = 'list.xlsx', date1904 = false, settings = {} }: Animal) {
  const bytes =
    typeof list === 'string'
      ? Buffer.from(list)
      : list instanceof Uint8Array
        ? list
        : makeWorkbook(list, { date1904 });
  return readList(bytes, name, {}, { ...listSettings.parse({}), ...settings });
}

describe('a zoo of lists', () => {
  it('has at least forty animals', () => expect(Object.keys(ZOO).length).toBeGreaterThanOrEqual(40));

  it.each(Object.entries(ZOO))('%s', (_, animal) => {
    const { things, findings } = read(animal);
    expect(findings.map(({ rule }) => rule)).toEqual(animal.rules ?? []);
    expect(things.length).toBe(animal.things.length);
    animal.things.forEach((expected, at) => {
      expect(things[at]).toMatchObject(expected);
    });
    const said = findings.map(({ found, advice = '' }) => `${found} ${advice}`).join('\n');
    for (const words of animal.said ?? []) expect(said).toMatch(words);
  });
});

/** The same list, saved by one program as XLSX and as ODS. */
describe.each(['xlsx', 'ods'])('a list of a spreadsheet program, saved as %s', (form) => {
  const whole = (name: string) => readList(file(`${name}.${form}`), `list.${form}`);

  it('has everything that its maker put into it', () => {
    const { things, findings, sheets } = whole('ferry-house');
    expect(sheets.map(({ things: count }) => count)).toEqual([4, 2]);
    const seen = things.map(({ number, title, date: when, series, box, quantity }: Thing) => [
      number,
      title,
      when?.reading.kind === 'date' ? when.reading.edtf : undefined,
      series,
      box,
      quantity,
    ]);
    // As ferry-house.fods says it; the box is merged over three rows, the quantity of the first is =1+2.
    expect(seen).toEqual([
      ['007', 'Ada to Nils about the flood', '1962-05-14', 'Letters', '1', 3],
      ['008', 'Postcard from Applegarth', '1958-08', 'Letters', '1', 1],
      ['2024-04-03', 'Toll book', '1931', 'Letters', '1', 1],
      ['010', 'Ferry licence', '2024-08-04', 'Letters', '2', undefined],
      [undefined, 'The ferry in ice', '1947-02-09', 'Photographs', undefined, undefined],
      [undefined, 'Apple harvest with all hands', '193X', 'Photographs', undefined, undefined],
    ]);
    expect(things[0]?.extra).toEqual([
      { heading: 'Shelf', text: 'top' },
      { heading: 'Comment on What', text: 'in pencil on the back: keep' },
    ]);
    expect(findings.map(({ rule }) => rule).sort()).toEqual(
      [
        'list.above-headings',
        'list.cell-error',
        'list.column-unknown',
        'list.made-a-date',
        'list.merged',
        'list.row-hidden',
        'list.sheet-left-out',
        'list.sheet-left-out',
        'list.sheets-as-series',
        'list.total-row',
        'list.year-added',
      ].sort(),
    );
  });

  it('has its dates where days are counted from 1904', () => {
    const { things, findings } = whole('orchard-1904');
    expect(things.map(({ date: when }) => when?.written)).toEqual(['1951-10-06', '1904-01-02']);
    expect(findings).toEqual([]);
  });
});
