import { WEIGHTS } from '../catalogue/finding.ts';
import { sayCount } from '../catalogue/say-count.ts';
import type { NextStep } from './next-step.ts';
import { sayNotBoxed } from './not-to-be-boxed.ts';
import type { Status } from './status.ts';

/** Where a catalogue stands, as lines of plain text. */
export function* sayStatus(status: Status): Generator<string> {
  yield status.title;
  yield '';
  const rows: (readonly [name: string, text: string])[] = [
    ['list', sayList(status)],
    ['order', sayShelf(status)],
    ['numbers', sayNumbers(status)],
    ['findings', sayFindings(status)],
    ...(status.notBoxed.length === 0 ? [] : [['take care', sayCare(status)] as const]),
    ['labels', sayLabels(status)],
    ['export', sayExport(status)],
    ['hand-over', sayHandOver(status)],
  ];
  for (const [name, text] of rows) yield `${name.padEnd(WIDTH)}${text}`;
  yield '';
}

/** The same of a catalogue whose list holds nothing yet; `found` says so in a sentence. */
export const sayEmpty = (found: string): string[] => [`${'list'.padEnd(WIDTH)}${found}`, ''];

/** What to do next, as lines of plain text. */
export function* sayNextStep({ command, why }: NextStep): Generator<string> {
  yield `${'Next:'.padEnd(WIDTH)}${command}`;
  yield `${' '.repeat(WIDTH)}${why}`;
}

// The longest of the names, and two blanks.
const WIDTH = 11;

function sayList({ list: { file, things, withoutKind, withoutDate } }: Status): string {
  const blanks = [
    withoutKind === 0 ? '' : `, ${withoutKind} without kind`,
    withoutDate === 0 ? '' : `, ${withoutDate} without date`,
  ];
  return `${sayCount(things, 'thing')} in ${file}${blanks.join('')}`;
}

function sayShelf({ shelf: { folders, boxes, packages } }: Status): string {
  const apart = packages === 0 ? '' : `, ${sayCount(packages, 'package')} too large for a box`;
  return `${sayCount(folders, 'folder')} in ${sayCount(boxes, 'box', 'boxes')}${apart}`;
}

function sayNumbers({ list, numbers: { settled, notSettled, notListed, toFillIn = [] } }: Status): string {
  const gone = notListed === 0 ? '' : `; ${notListed} settled before and not in the list any more`;
  const missing = toFillIn.length === 0 ? '' : `; ${toFillIn.length} still to be filled in, in ${list.file}`;
  if (settled === 0) return `not settled${gone}${missing}`;
  return `${notSettled === 0 ? 'settled' : `${settled} settled, ${notSettled} not yet`}${gone}${missing}`;
}

function sayFindings({ findings, copies }: Status): string {
  const parts = WEIGHTS.flatMap((weight) =>
    findings[weight] === 0 ? [] : [`${findings[weight]} ${weight}`],
  );
  return `${parts.length === 0 ? 'none' : parts.join(', ')}${copies === 0 ? '' : ' (kinfonds check looks at the copies too)'}`;
}

const sayCare = ({ notBoxed }: Status) =>
  `${sayNotBoxed({ has: notBoxed.join(', ') })} (kinfonds check says more)`;

function sayLabels({ labels: { fresh, changed, printed } }: Status): string {
  if (fresh + changed + printed === 0) return 'none needed';
  if (changed + printed === 0) return 'not printed';
  if (fresh + changed === 0) return 'printed';
  const parts = [
    fresh === 0 ? '' : `${fresh} new`,
    changed === 0 ? '' : `${changed} changed since they were printed`,
  ];
  return `${printed} printed, ${parts.filter((part) => part !== '').join(', ')}`;
}

function sayExport({ exported }: Status): string {
  return exported === undefined ? 'none' : `${exported.folder}, ${sayDay(exported)}`;
}

function sayHandOver({ handedOver: last }: Status): string {
  return last === undefined ? 'no package beside this folder' : `${last.path}, ${sayDay(last)}`;
}

const sayDay = ({ day, before }: { day: string; before: boolean }): string =>
  `of ${day}${before ? ', before the catalogue was last changed' : ''}`;
