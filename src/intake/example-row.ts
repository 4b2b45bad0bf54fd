import type { Finding } from '../catalogue/finding.ts';
import type { Column } from '../catalogue/thing.ts';
import type { Table } from './csv.ts';
import type { Row } from './csv-rows.ts';

/** The row with which a new list shows how it is meant; as it stands here, it is no thing of the list. */
export const EXAMPLE: Readonly<Partial<Record<Column, string>>> = {
  title: 'EXAMPLE: Ada to Nils Quill about the new ferry cable',
  date: '14 May 1962',
  kind: 'letter',
  people: 'Nils Quill',
  creator: 'Ada Quill',
  place: 'Hollin Ferry',
  description: 'Two sheets in an envelope; write over this row, or delete it',
  quantity: '1',
  condition: 'good',
  language: 'English',
};

/** The rows of a list without that example; whoever has written something else into it has made it a thing. */
export function* withoutExample(
  { rows }: Pick<Table, 'rows'>,
  said: (say: (file: string) => Finding) => void,
): Generator<Row> {
  const example = Object.values(EXAMPLE).sort().join('\n');
  for (const row of rows) {
    const isExample =
      row.cells.includes(EXAMPLE.title ?? '') &&
      row.cells
        .filter((cell) => cell !== '')
        .sort()
        .join('\n') === example;
    if (isExample) said((file) => left(file, row.row));
    else yield row;
  }
}

function left(file: string, row: number): Finding {
  const found = 'The row is the example that a new list begins with; it was left out.';
  return { rule: 'list.example', weight: 'consider', place: { file, row }, found, advice: 'Delete it.' };
}
