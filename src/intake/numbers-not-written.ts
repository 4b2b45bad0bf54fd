import type { Finding } from '../catalogue/finding.ts';
import { LIST_FILE } from '../catalogue/load-findings.ts';

const HEADING = 'number';

/** Whether numbers can be written into a list without touching what else is in its file. */
export const canTakeNumbers = (listFile: string): boolean => listFile === LIST_FILE;

/** What to say where they cannot, and things have no number. */
export function noNumbersInto(listFile: string, missing: number): Finding {
  const things = missing === 1 ? '1 thing has no number' : `${missing} things have no number`;
  return {
    rule: 'list.numbers-not-written',
    weight: 'must',
    place: { file: listFile },
    found: `${things}, and numbers are written only into ${LIST_FILE}: in another file the program would have to rewrite more than them. Nothing was settled.`,
    advice: `Give each thing a number in the column “${HEADING}” (a spreadsheet program fills a column downwards with 1, 2, 3); or save the list as “CSV UTF-8” under the name ${LIST_FILE}, take ${listFile} out of the folder, and settle again.`,
  };
}

/** What to say where the numbers would change what else the list says. */
export function numbersNotWritten(): Finding {
  const found = 'The numbers cannot be written into the list without changing what else it says.';
  const advice = `In a spreadsheet program, put a column headed “${HEADING}” before the others and save the list as “CSV UTF-8”.`;
  return { rule: 'list.numbers-not-written', weight: 'must', place: { file: LIST_FILE }, found, advice };
}
