import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { nameByLetters } from './columns.ts';
import type { Table } from './csv.ts';
import { type Row, textAt } from './csv-rows.ts';
import type { FamilyReader } from './family-columns.ts';
import type { Layout } from './layout.ts';
import { noHeading, tooLong } from './list-findings.ts';

type Extra = Thing['extra'][number];

/**
 * Reads what goes into the notes of a thing: cells below headings that mean no column, cells beyond the last heading,
 * and what a spreadsheet keeps beside cells. What is for the family alone is left out.
 * @param findings to which is added what is to be said of them
 */
export function extraReader(
  { headings, headingRow }: Table,
  layout: Layout,
  family: FamilyReader,
  file: string,
  findings: Finding[],
): (row: Row) => Extra[] {
  const told = new Set<number>();
  return ({ row, cells, remarks = [] }) => {
    const extra: Extra[] = [];
    for (const { index, heading, made } of layout.extra) {
      const text = textAt(cells, index);
      if (text === '' || family.has(index)) continue;
      extra.push({ heading, text });
      if (made && !told.has(index)) findings.push(noHeading(file, headingRow, heading, row));
      if (made) told.add(index);
    }
    const inside = extra.length;
    for (let index = headings.length; index < cells.length; index++) {
      const text = textAt(cells, index);
      if (text !== '') extra.push({ heading: nameByLetters(index), text });
    }
    if (extra.length > inside) findings.push(tooLong(file, row, headings.length, extra.slice(inside)));
    for (const { index, what, text } of remarks) {
      if (family.has(index)) continue;
      const heading = headings[index] || nameByLetters(index);
      extra.push({ heading: what === 'comment' ? `Comment on ${heading}` : `${heading}, time of day`, text });
    }
    return extra;
  };
}
