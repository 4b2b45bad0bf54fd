import type { Finding } from '../catalogue/finding.ts';
import { quoted } from '../catalogue/quoted.ts';
import { sayList } from '../catalogue/say-list.ts';
import type { Column, Thing } from '../catalogue/thing.ts';

export function noTitle(file: string, row: number, others: readonly string[]): Finding {
  return {
    rule: 'list.no-title',
    weight: 'must',
    place: { file, row, column: 'title' },
    found: `The row has no title; it holds ${others.slice(0, 3).map(quoted).join(', ')}${others.length > 3 ? ', …' : ''}.`,
    advice:
      'Say in a few words what the thing is. A remark that is no thing goes into collection.yaml, under “notes” or “history”; then empty the row.',
  };
}

export function numbersOnly(file: string, rows: readonly number[]): Finding {
  const [first = 0] = rows;
  const found =
    rows.length === 1
      ? 'The row holds a number and nothing else, so it was left out.'
      : `This row and ${rows.length === 2 ? '' : `${rows.length - 1} more, the last of them `}row ${rows.at(-1)} hold a number and nothing else, so they were left out.`;
  return { rule: 'list.number-only', weight: 'consider', place: { file, row: first }, found };
}

export function sameNumber(number: string, places: readonly { file: string; row: number }[]): Finding {
  const [first = { file: '', row: 0 }, ...others] = places;
  const named = others
    .slice(0, 10)
    .map(({ file, row }) => (file === first.file ? String(row) : `${row} (${file})`))
    .join(', ');
  const again =
    others.length === 1
      ? `row ${named}`
      : `rows ${named}${others.length > 10 ? ` and ${others.length - 10} more` : ''}`;
  return {
    rule: 'list.number-twice',
    weight: 'must',
    place: { ...first, column: 'number' },
    found: `The number ${quoted(number)} is given to more than one thing: in row ${first.row} and again in ${again}.`,
    advice:
      'Give each thing a number of its own. One that is settled (it stands in numbers.csv) stays with its thing; the cell of a new thing may be left empty, and settling gives it the next number.',
  };
}

export function readAsGroups(file: string, sheets: readonly string[]): Finding {
  return {
    rule: 'list.sheets-as-series',
    weight: 'consider',
    place: { file },
    found: `The list was read from ${sheets.length} sheets, ${sayList(sheets.map(quoted))}; things without a series of their own have their sheet’s name as series.`,
    advice:
      'To sort by sheet, write in collection.yaml sort: {groups: [series]}; to read fewer, list: {sheets: […]}.',
  };
}

export function noQuantity(file: string, row: number, written: string): Finding {
  return {
    rule: 'list.quantity-unreadable',
    weight: 'should',
    place: { file, row, column: 'quantity' },
    found: `${quoted(written)} is no number of things that can be read. It is kept in the notes; the things of this row are counted nowhere, and the room they take is a guess.`,
    advice:
      'Write a whole number, such as 12, or about 40 where it is a guess; 2 boxes of 36 and 6 sheets are understood too. Or leave the cell empty, and put the words under “note”.',
  };
}

export function badCopy(file: string, row: number, trouble: string): Finding {
  return {
    rule: 'list.copy-outside',
    weight: 'must',
    place: { file, row, column: 'copy' },
    found: trouble,
    advice: 'Put the file into the catalogue folder and write its path from there, such as copies/ferry.jpg.',
  };
}

export function tooLong(file: string, row: number, columns: number, beyond: Thing['extra']): Finding {
  return {
    rule: 'list.row-too-long',
    weight: 'should',
    place: { file, row },
    found: `The row has cells beyond the last heading (there are ${columns} headings), beginning with ${quoted(beyond[0]?.text ?? '')}; they are kept in the notes.`,
    advice: /\.(?:csv|tsv|txt)$/i.test(file)
      ? 'A cell that holds the separator itself, such as a comma, must stand between quotation marks.'
      : 'Write a heading over them to say what they are.',
  };
}

export function perhapsTwo(file: string, column: Column, row: number, name: string, rows: number): Finding {
  return {
    rule: 'list.names-joined',
    weight: 'consider',
    place: { file, row, column },
    found: `${quoted(name)} was read as one name${rows > 1 ? `; ${rows - 1} more such ${rows > 2 ? 'names follow' : 'name follows'} in this column` : ''}.`,
    advice:
      'If these are two people, part them with a semicolon and write each name out: Ada Quill; Nils Quill.',
  };
}

export function noThings(file: string, row: number): Finding {
  return {
    rule: 'list.no-things',
    weight: 'must',
    place: { file, row },
    found: 'The list has headings and no things yet.',
    advice: 'Write one thing in each row below them; only its title must be there.',
  };
}

export function noHeading(file: string, headingRow: number, column: string, row: number): Finding {
  return {
    rule: 'list.heading-blank',
    weight: 'should',
    place: { file, row: headingRow },
    found: `${column} has no heading, but cells are filled below it, the first in row ${row}.`,
    advice: 'They are kept in the notes; write a heading over them to say what they are.',
  };
}
