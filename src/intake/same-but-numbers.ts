import type { Table } from './csv.ts';
import type { Row } from './csv-rows.ts';

/** What stands over the column of numbers where the program adds it. */
export const NUMBER_HEADING = 'number';

/** Whether a list reads as before, save for the numbers, which are all there. */
export function sameButNumbers(
  before: Table,
  after: Table,
  column: number | undefined,
  numbers: ReadonlyMap<number, string>,
): boolean {
  const moved = column === undefined ? 1 : 0;
  const at = column ?? 0;
  const alike = (one: readonly string[], other: readonly string[], number: string | undefined) => {
    for (let index = 0; index < Math.max(one.length + moved, other.length); index++) {
      const was = moved === 1 && index === 0 ? '' : (one[index - moved] ?? '');
      const is = other[index] ?? '';
      if (index === at && number !== undefined ? is.trim() !== number : is !== was) return false;
    }
    return true;
  };
  if (!alike(before.headings, after.headings, moved === 1 ? NUMBER_HEADING : undefined)) return false;
  const left = after.rows[Symbol.iterator]();
  let given = 0;
  for (const { row, cells } of before.rows) {
    const { value, done }: IteratorResult<Row, undefined> = left.next();
    const number = numbers.get(row);
    if (done === true || value.row !== row || !alike(cells, value.cells, number)) return false;
    if (number !== undefined) given++;
  }
  return left.next().done === true && given === numbers.size;
}
