import type { Finding, Place } from '../catalogue/finding.ts';
import type { NumberColumn } from '../catalogue/numbers-file.ts';
import { quoted } from '../catalogue/quoted.ts';

const SAVE_AS =
  'Open it in a spreadsheet program and save it as “CSV UTF-8” under the name numbers.csv, or put it back from a copy.';
const PUT_BACK = 'Put the file back from a copy, or mend what was changed.';
const ON_THE_FOLDER = 'See what is written on the folder or the box, and mend the row that is wrong.';

/** A finding about any table, as one about the settled numbers. */
export function aboutNumbers(finding: Finding): Finding {
  const rule = finding.rule.replace(/^list\./, 'numbers.');
  if (rule === 'numbers.empty') {
    const found = 'The file is empty, though it is there to keep the numbers that are settled.';
    const advice =
      'Put it back from a copy. Only if no number has been written on a folder yet, delete it and settle again.';
    return { ...finding, rule, found, advice };
  }
  if (rule.startsWith('file.')) return { ...finding, rule, advice: SAVE_AS };
  if (rule === 'numbers.forbidden-character')
    return { ...finding, rule, advice: 'Retype the words around it: it is invisible.' };
  return { ...finding, rule };
}

const must = (rule: string, place: Place, found: string, advice: string): Finding => ({
  rule: `numbers.${rule}`,
  weight: 'must',
  place,
  found,
  advice,
});

export function missingColumns(place: Place, missing: readonly NumberColumn[]): Finding {
  const names = missing.map((name) => `“${name}”`).join(', ');
  const found = `No column is headed ${names}.`;
  return must('column-missing', place, found, `Write the heading over its column again. ${PUT_BACK}`);
}

export function columnTwice(place: Place, column: NumberColumn): Finding {
  return must('column-twice', { ...place, column }, 'Two columns have this heading.', PUT_BACK);
}

export function unknownColumn(place: Place, heading: string): Finding {
  const found = `${quoted(heading)} is no heading of this file; what stands below it is lost when numbers are settled again.`;
  const advice = 'Keep notes in a column of list.csv.';
  return { rule: 'numbers.column-unknown', weight: 'should', place, found, advice };
}

export function noNumber(place: Place): Finding {
  return must(
    'no-number',
    place,
    'The row has no number.',
    `Write the number that the thing has in list.csv. ${PUT_BACK}`,
  );
}

export function noPlace(place: Place, written: string): Finding {
  const found =
    written === ''
      ? 'The row says no place.'
      : `${quoted(written)} is no place: group, folder and thing are numbers from 1 up, such as /2/5/13.`;
  const advice = 'Write the place again; the end of the reference code says it.';
  return must('place-unreadable', place, found, advice);
}

export function groupsAndPlace(place: Place, groups: number, written: string): Finding {
  const titles =
    groups === 0 ? 'no group is named' : groups === 1 ? 'one group is named' : `${groups} groups are named`;
  const found = `For the place ${written}, ${titles}; before the last two numbers, each number stands for one group.`;
  return must(
    'groups-and-place',
    place,
    found,
    `Part the titles of groups with “ > ”, one for each. ${PUT_BACK}`,
  );
}

export function placeAndCode(place: Place, written: string, code: string): Finding {
  const found = `The place ${written} is not the one at the end of the reference code ${quoted(code)}.`;
  const advice =
    'Write both again as they are on the folder, or leave the reference code empty; a spreadsheet may have taken one for a date.';
  return must('place-and-code', place, found, advice);
}

export function noFolder(place: Place, written: string): Finding {
  const found = `${quoted(written)} is no number of a folder: a whole number from 1 up, or two such as 3 to 5.`;
  return must('folder-unreadable', place, found, ON_THE_FOLDER);
}

export function rowTooLong(place: Place, columns: number): Finding {
  const found = `The row has cells beyond the last heading (there are ${columns} headings).`;
  const advice =
    'A cell that holds the separator itself, such as a comma, must stand between quotation marks.';
  return must('row-too-long', place, found, advice);
}

/** What a row says. */
export interface Said {
  row: number;
  value: string;
}

/** Two rows say of one thing, group, folder or box what cannot both be so. */
export function disagree(place: Place, about: string, here: Said, there: Said): Finding {
  const value = ({ value }: Said) => (value === '' ? 'nothing' : quoted(value));
  const found = `${about} is ${value(here)} here and ${value(there)} in row ${there.row}.`;
  return must(`${place.column?.replaceAll(' ', '-')}-disagrees`, place, found, ON_THE_FOLDER);
}

export function groupAndFolder(place: Place, at: string, group: Said): Finding {
  const found = `${at} is a folder here, and in row ${group.row} the group ${quoted(group.value)}.`;
  return must('group-and-folder', place, found, PUT_BACK);
}

export function foldersShared(file: string, folder: number, here: Said, there: Said): Finding {
  const found = `Folder ${folder} is the one at ${here.value} here, and the one at ${there.value} in row ${there.row}.`;
  return must('folder-shared', { file, row: here.row, column: 'folder' }, found, ON_THE_FOLDER);
}
