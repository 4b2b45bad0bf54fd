import type { Finding } from '../catalogue/finding.ts';
import { type Case, type Copy, type CopyRule, caseOf, say } from './copies-said.ts';

const SAME_CONTENT: CopyRule = {
  rule: 'copies.same-content',
  weight: 'should',
  one: (name, what) => `The file ${name} is to the byte the same as ${what}.`,
  many: (count) => `${count} copies are to the byte the same as others`,
  advice:
    'Look whether one was saved under the wrong name, so that a copy is missing. If not, keep one file and name it in each row.',
  source: 'The same SHA-256 (FIPS 180-4)',
};

const SHARED: CopyRule = {
  rule: 'copies.shared',
  weight: 'consider',
  one: (name, what) => `The file ${name} is named for several things, in the rows ${what}.`,
  many: (count) => `${count} files are named for several things each`,
  advice: 'That is right where one picture shows them all. If not, mend the rows.',
  source: 'common practice',
};

/** So many rows are named; the rest are counted. */
const MOST_ROWS = 5;

/** One digital copy twice: under two names, or in two rows. */
export function reviewSame(copies: readonly Copy[]): Finding[] {
  const first = new Map<string, Copy>();
  const same: Case[] = [];
  for (const copy of copies) {
    const { sha256, bytes = 0 } = copy.facts ?? {};
    if (sha256 === undefined || bytes === 0) continue;
    const other = first.get(sha256);
    if (other === undefined) first.set(sha256, copy);
    else same.push({ ...caseOf(copy, { what: `“${other.path}”${rowOf(other)}` }), rows: 1 });
  }
  const shared = copies.flatMap((copy): Case[] => {
    const rows = copy.things.map(({ row }) => row);
    if (rows.length < 2) return [];
    const more = rows.length > MOST_ROWS ? ` and ${rows.length - MOST_ROWS} more` : '';
    return [{ ...caseOf(copy, { what: `${rows.slice(0, MOST_ROWS).join(', ')}${more}` }), rows: 1 }];
  });
  return [...say(SAME_CONTENT, same), ...say(SHARED, shared)];
}

const rowOf = ({ things: [thing] }: Copy) =>
  thing === undefined ? ', which is in no row' : ` in row ${thing.row}`;
