import type { Finding } from '../catalogue/finding.ts';
import { LIST_FILE } from '../catalogue/load-findings.ts';

const HEADING = 'number';

/** Whether numbers can be written into a list without touching what else is in its file. */
export const canTakeNumbers = (listFile: string): boolean => listFile === LIST_FILE;

/** Numbers as they are written down a column: `31`; `31, 32`; `31, 32 and so on to 60`. */
export function sayNumbersDown(numbers: readonly string[]): string {
  const [first = '', second = ''] = numbers;
  return numbers.length < 3 ? numbers.join(', ') : `${first}, ${second} and so on to ${numbers.at(-1)}`;
}

/**
 * What to say where they cannot, and things have no number.
 * @param free the numbers that these would get
 */
export function noNumbersInto(listFile: string, free: readonly string[]): Finding {
  const things = free.length === 1 ? '1 thing has no number' : `${free.length} things have no number`;
  return {
    rule: 'list.numbers-not-written',
    weight: 'must',
    place: { file: listFile },
    found: `${things}, and numbers are written only into ${LIST_FILE}: in another file the program would have to rewrite more than them. Nothing was settled.`,
    advice: `Give each thing that has none its number in the column “${HEADING}”: downwards ${sayNumbersDown(free)}; or save the list as “CSV UTF-8” under the name ${LIST_FILE}, which may replace the empty ${LIST_FILE} that begin made, and take ${listFile} out of the folder. Then settle again.`,
  };
}

/** What to say where the numbers would change what else the list says. */
export function numbersNotWritten(): Finding {
  const found = 'The numbers cannot be written into the list without changing what else it says.';
  const advice = `In a spreadsheet program, put a column headed “${HEADING}” before the others and save the list as “CSV UTF-8”.`;
  return { rule: 'list.numbers-not-written', weight: 'must', place: { file: LIST_FILE }, found, advice };
}
