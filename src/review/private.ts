import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { localDay } from '../catalogue/local-day.ts';
import type { Thing } from '../catalogue/thing.ts';
import { endInAccess } from './access-ends.ts';
import { isAnswered } from './answers.ts';
import { codesByRow } from './codes-by-row.ts';
import { livesOf } from './living.ts';
import { reviewLiving } from './living-unnoted.ts';
import { wordTables } from './own-words.ts';
import { reviewContacts } from './private-contacts.ts';
import { coverFrom } from './private-cover.ts';
import { reviewEnded } from './private-ended.ts';
import { MATTERS } from './private-matters.ts';
import { reviewNumbers } from './private-numbers-found.ts';
import { type PrivateRow, privateRows } from './private-rows.ts';
import { PRIVATE_WORDS, type PrivateWord } from './private-words.ts';
import { type SaidRow, sayThings } from './said-together.ts';

/**
 * What is private as long as somebody may be living, and is not held back; and numbers by which people can be got at.
 * @param today YYYY-MM-DD
 */
export function reviewPrivate(
  catalogue: Catalogue,
  aid: FindingAid,
  today = localDay(),
  words: readonly PrivateWord[] = PRIVATE_WORDS,
): Finding[] {
  const { lives, rows, coverOf } = privateIn(catalogue, aid, today, words);
  return [
    ...reviewNumbers(catalogue.things),
    ...reviewContacts(catalogue.things, today),
    ...reviewMatters(rows, coverOf, today),
    ...reviewEnded(catalogue.things, today, new Set(rows.map(({ thing }) => thing))),
    ...reviewLiving(lives, today),
  ];
}

/**
 * The things that are private by what `check` finds and that nothing holds back, in the order of the list. What
 * `collection.yaml` answers has been decided, and is left out.
 * @param today YYYY-MM-DD
 */
export function privateAndOpen(
  catalogue: Catalogue,
  { aid, groups }: Pick<Arrangement, 'aid' | 'groups'>,
  today = localDay(),
): Thing[] {
  const { settings, things } = catalogue;
  const { rows, coverOf } = privateIn(catalogue, aid, today, wordTables(settings).private);
  const codes = codesByRow(groups, settings);
  const open = rows.filter(
    ({ thing, matter }) =>
      coverOf(thing) === undefined && !isAnswered(settings, `private.${matter}`, thing, codes.get(thing.row)),
  );
  const found = new Set(open.map(({ thing }) => thing));
  return things.filter((thing) => found.has(thing));
}

/** The rows on private matters, and what holds a thing back. */
function privateIn(catalogue: Catalogue, aid: FindingAid, today: string, words: readonly PrivateWord[]) {
  const lives = livesOf(catalogue, aid, today);
  const rows = privateRows(catalogue, aid, lives, { today, words });
  return { lives, rows, coverOf: coverFrom(catalogue, aid) };
}

function reviewMatters(
  rows: readonly PrivateRow[],
  coverOf: ReturnType<typeof coverFrom>,
  today: string,
): Finding[] {
  const judged = rows.map((row) => ({ ...row, cover: coverOf(row.thing) }));
  const open = judged.filter(({ cover }) => cover === undefined);
  const endless = judged.filter(
    ({ thing, cover, matter }) =>
      cover !== undefined &&
      cover.until === undefined &&
      !KEPT_OUT.has(matter) &&
      // Of an end that stands under “access” only another rule speaks.
      endInAccess(thing, today) === undefined,
  );
  const short = judged.filter(
    ({ cover, until }) => cover?.until !== undefined && until !== undefined && cover.until < until,
  );
  return [
    ...MATTERS.flatMap(({ name, says, advice, source }): Finding[] => {
      const of = open.filter(({ matter }) => matter === name);
      return finding(of, {
        rule: `private.${name}`,
        weight: 'should',
        found: `${says}, perhaps of people who are living, and not held back: ${sayThings(of.map(saidOpen))}.`,
        advice,
        source,
      });
    }),
    ...finding(endless, {
      rule: 'private.no-end',
      weight: 'consider',
      found: `Private matter that is held back, but nobody has said until when: ${sayThings(endless.map(saidOpen))}.`,
      advice:
        'Put a year into the column “until”; the year named is a hundred years after the latest birth that can be, as is usual.',
      source: 'DACS 4.1.5, from memory; common practice for the years',
    }),
    ...finding(short, {
      rule: 'private.end-too-early',
      weight: 'consider',
      found: `Private matter that opens while somebody may still be living: ${sayThings(
        short.map((row) => ({ ...saidOpen(row), beside: `closed to ${row.cover?.until}; ${besideOf(row)}` })),
      )}.`,
      advice:
        'Put a later year into the column “until”, or leave it if the people have agreed; the second year named is a hundred years after the latest birth that can be, as is usual.',
      source: 'common practice',
    }),
  ];
}

const KEPT_OUT: ReadonlySet<string> = new Set(
  MATTERS.filter(({ keptOut }) => keptOut === true).map(({ name }) => name),
);

type Said = Omit<Finding, 'place'>;

/** One finding for all the rows, at the first of them; none where there are none. */
function finding(rows: readonly PrivateRow[], said: Said): Finding[] {
  const [first] = rows;
  if (first === undefined) return [];
  const place = { file: 'list.csv', row: first.thing.row, column: first.column };
  const { rule, weight, ...rest } = said;
  return [{ rule, weight, place, ...rest }];
}

const saidOpen = (row: PrivateRow): SaidRow => ({
  ...row.thing,
  beside: besideOf(row),
});

function besideOf({ living, until, since }: PrivateRow): string {
  const who = living.length === 0 ? 'nobody is named' : living.join(', ');
  return until === undefined ? who : `${who}, usually closed to ${until}: ${since}`;
}
