import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { lastYearIn } from './living.ts';
import { findNumbers } from './private-numbers.ts';
import { cellsOf } from './private-numbers-found.ts';
import { sayThings } from './said-together.ts';

/** For so many years somebody may still be reached under a number that a thing itself tells: from memory. */
const REACHED = 50;
/** What a person who describes the things writes today, whatever the date of the thing. */
const OF_THE_THING: ReadonlySet<string> = new Set(['title', 'description', 'occasion']);

const EMAIL =
  /(?<![\p{L}\p{N}._%+-])[\p{L}\p{N}._%+-]{1,64}@(?:[\p{L}\p{N}-]{1,63}\.)+\p{L}{2,24}(?![\p{L}\p{N}])/gu;
// E.164: at most fifteen figures, with the code of the country behind a plus sign. Without it, only beside a word.
const FIGURES = '\\(?\\d(?:[ ()./-]{0,2}\\d){6,14}';
const ABROAD = new RegExp(`(?<![\\p{L}\\p{N}])\\+${FIGURES}(?!\\d)`, 'gu');
const NAMED = new RegExp(
  `\\b(?:tel|phone|telephone|mobile|mob|cell|cellphone|ring|call|fax|ask|contact)\\b(?! (?:no|number|mark|slip)\\b)[^\\d\\n+]{0,30}?(\\+?${FIGURES})(?![\\d/.-]*\\d)`,
  'giu',
);
// 1952-1954, 1952-05-14, 14.5.1952.
const DATE = /^(?:(?:1[4-9]|20)\d\d(?:[-/. ]|$)|\d{1,2}[-/. ]\d{1,2}[-/. ](?:1[4-9]|20)?\d\d$)/;

interface Place {
  at: number;
  end: number;
}

/** Telephone numbers and e-mail addresses in a text, where they stand. */
function findContacts(text: string): Place[] {
  if (!text.includes('@') && !/\d[ ()./-]{0,2}\d[ ()./-]{0,2}\d/.test(text)) return [];
  const whole = (match: RegExpMatchArray, written = match[0]): Place & { written: string } => {
    const at = (match.index ?? 0) + match[0].lastIndexOf(written);
    return { at, end: at + written.length, written };
  };
  const numbers = [
    ...[...text.matchAll(ABROAD)].map((match) => whole(match)),
    ...[...text.matchAll(NAMED)].map((match) => whole(match, match[1])),
  ].filter(({ written }) => !DATE.test(written));
  const known = findNumbers(text);
  return [...[...text.matchAll(EMAIL)].map((match) => whole(match)), ...numbers].filter(({ at, end }) =>
    known.every((other) => end <= other.at || at >= other.end),
  );
}

// From the last on, since a letter that is masked may be shorter than it was.
const masked = (text: string): string =>
  findContacts(text)
    .sort((a, b) => b.at - a.at)
    .reduce(
      (all, { at, end }) =>
        all.slice(0, at) + all.slice(at, end).replace(/[\p{L}\p{N}]/gu, '•') + all.slice(end),
      text,
    );

/**
 * Telephone numbers and e-mail addresses that stand in the list and may be those of somebody who lives. No finding
 * repeats them.
 * @param today YYYY-MM-DD
 */
export function reviewContacts(things: readonly Thing[], today: string): Finding[] {
  const year = Number(today.slice(0, 4));
  const found = things.flatMap((thing) => {
    const written = lastYearIn(thing.date);
    const isOld = written !== undefined && year - written > REACHED;
    const cell = [...cellsOf(thing)].find(
      ([column, text]) => !(isOld && OF_THE_THING.has(column)) && findContacts(text).length > 0,
    );
    return cell === undefined ? [] : [{ thing, column: cell[0] }];
  });
  const [first] = found;
  if (first === undefined) return [];
  return [
    {
      rule: 'private.contact',
      weight: 'consider',
      place: { file: 'list.csv', row: first.thing.row, column: first.column },
      found: `A telephone number or an e-mail address stands in the list, perhaps of somebody who is living: ${sayThings(
        found.map(({ thing, column }) => ({
          ...thing,
          title: masked(thing.title),
          beside: `column ${column}`,
        })),
      )}.`,
      advice:
        'Take it out, or move it to the column “family note”, which no finding aid has; the list goes to whoever reads the finding aid.',
      source: 'common practice',
    },
  ];
}
