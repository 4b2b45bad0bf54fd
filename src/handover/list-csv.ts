import { csvRecord } from '../catalogue/csv-cell.ts';
import { COLUMNS, type Column, type Thing } from '../catalogue/thing.ts';
import { columnOf } from '../intake/columns.ts';

type GivenColumn = Exclude<Column, 'stays' | 'family note'>;

const several = (values: readonly string[]) => values.join('; ');

/** What each column of the list holds of a thing. */
const CELLS: Readonly<Record<GivenColumn, (thing: Thing) => string | undefined>> = {
  number: ({ number }) => number,
  title: ({ title }) => title,
  date: ({ date }) => date?.written,
  kind: ({ kind }) => kind,
  people: ({ people }) => several(people),
  place: ({ places }) => several(places),
  occasion: ({ occasion }) => occasion,
  description: ({ description }) => description,
  quantity: ({ quantity, quantityApproximate, extra }) =>
    quantity === undefined
      ? // A number that could not be read is kept under its heading.
        extra.find(({ heading }) => columnOf(heading) === 'quantity')?.text
      : `${quantityApproximate === true ? 'about ' : ''}${quantity}`,
  size: ({ size }) => size,
  condition: ({ condition }) => condition,
  access: ({ access }) => access,
  until: ({ until }) => until?.written,
  note: ({ note }) => note,
  copy: ({ copies }) => several(copies),
  series: ({ series }) => series,
  folder: ({ folder }) => folder,
  box: ({ box }) => box,
  language: ({ languages }) => several(languages),
  creator: ({ creators }) => several(creators),
};

const isGiven = (column: Column): column is GivenColumn => column in CELLS;

/**
 * The list of what is given, under the proper headings of its columns and then under the owner's other headings. A
 * column in which no given thing has anything is left out: it could only tell what stays. RFC 4180, UTF-8 with a byte
 * order mark for spreadsheets.
 */
export function* listToCsv(things: readonly Thing[]): Generator<string> {
  const columns = COLUMNS.filter(isGiven).filter(
    (column) => column === 'title' || things.some((thing) => (CELLS[column](thing) ?? '') !== ''),
  );
  const headings = new Set(things.flatMap(({ extra }) => extra.map(({ heading }) => heading)));
  const others = [...headings].filter((heading) => columnOf(heading) !== 'quantity');
  // A second column of the same meaning must not be taken for the first.
  const shown = others.map((heading) =>
    columnOf(heading) === undefined ? heading : `Also in the list: ${heading}`,
  );
  yield `\uFEFF${csvRecord([...columns, ...shown])}`;
  for (const thing of things) {
    yield csvRecord([
      ...columns.map((column) => CELLS[column](thing)),
      ...others.map((heading) =>
        several(thing.extra.filter((one) => one.heading === heading).map(({ text }) => text)),
      ),
    ]);
  }
}
