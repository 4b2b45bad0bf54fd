import { sayCount } from '../catalogue/say-count.ts';
import type { MergedLists } from './merge-lists.ts';

/** So many rows are named; the rest are counted. */
const NAMED = 20;

/**
 * What merging two lists did, as lines of plain text.
 * @param file where the merged list was written
 * @param names what the two lists are called
 */
export function* sayMerge(
  merged: MergedLists,
  file: string,
  names: readonly [a: string, b: string],
): Generator<string> {
  const { inBoth, onlyInA, onlyInB, conflicts, withoutNumber, copiesOfB, leftOut } = merged;
  const doubles = merged.perhapsOne;
  const [a, b] = names;
  yield `${file}: ${sayCount(merged.rows.length, 'row')}, ${inBoth} in both lists, ${onlyInA} only in ${a}, ${onlyInB} only in ${b}.`;
  if (conflicts.length > 0) {
    yield `${sayCount(conflicts.length, 'row')} on which they do not agree: what ${a} says was kept, and what ${b} says stands in the column “Differs”. Decide on each, then empty that cell.`;
    for (const { row, title, cells } of conflicts.slice(0, NAMED)) {
      yield `  row ${row}  ${line(title)}`;
      for (const { column, kept, other } of cells) {
        const mine = kept === '' ? `is blank in ${a}` : `${line(kept)} in ${a}`;
        yield `    ${column}: ${mine}, ${line(other)} in ${b}`;
      }
    }
    yield* more(conflicts.length);
  }
  if (withoutNumber.length > 0) {
    yield `${sayCount(withoutNumber.length, 'row')} only in ${b} with a number that another thing has in ${a}: they have no number now, and the old one stands in the column “Differs”. If it is written on the thing, correct it there too.`;
    for (const { row, title, number } of withoutNumber.slice(0, NAMED))
      yield `  row ${row}  ${line(title)} (was ${number})`;
    yield* more(withoutNumber.length);
  }
  if (doubles.length > 0) {
    yield `${doubles.length === 1 ? 'One pair' : `${doubles.length} pairs`} of rows that may be of one thing each; both rows were kept. Where they are, keep one of them.`;
    for (const { a: one, b: other } of doubles.slice(0, NAMED)) {
      yield `  row ${one.row}  ${line(one.title)}, ${a}`;
      yield `  row ${other.row}  ${line(other.title)}, ${b}`;
    }
    yield* more(doubles.length);
  }
  if (copiesOfB.length > 0) {
    const rows = copiesOfB.length === 1 ? '1 row names' : `${copiesOfB.length} rows name`;
    yield `${rows} digital copies that only ${b} has: bring those files over from there, and see that none takes the place of another of the same name.`;
  }
  if (leftOut.length > 0) {
    yield 'Not taken over, being no row of a list:';
    for (const says of leftOut.slice(0, NAMED)) yield `  ${says}`;
    yield* more(leftOut.length);
  }
}

function* more(total: number): Generator<string> {
  if (total > NAMED) yield `  … and ${total - NAMED} more; --json shows all.`;
}

const line = (text: string) => `“${text.replace(/\s+/g, ' ')}”`;
