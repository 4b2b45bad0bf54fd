import type { Finding } from '../catalogue/finding.ts';
import type { CopyFacts } from '../copies/facts.ts';
import { caseless, nearestFile } from './copies-nearest.ts';
import { type Copy, type CopyRule, caseOf, say } from './copies-said.ts';

const P = 'common practice';

const MISSING: CopyRule = {
  rule: 'copies.missing',
  weight: 'must',
  one: (name) => `There is no file ${name} in the catalogue folder.`,
  many: (count) => `${count} copies that the list names are not in the catalogue folder`,
  advice: 'Put the file there, or mend its name in the list, to the letter and with its ending.',
  source: P,
};

const UNLISTED: CopyRule = {
  rule: 'copies.not-in-list',
  weight: 'should',
  one: (name) => `No row of the list names the file ${name}.`,
  many: (count) => `${count} files lie among the copies and are named by no row of the list`,
  advice: 'Name each in the row of the thing that it shows, or take it out of the folder.',
  source: P,
};

/** One rule for each trouble of a file, but for those that need more than that to be said. */
const TROUBLES: Readonly<Record<Exclude<NonNullable<CopyFacts['trouble']>, 'missing'>, CopyRule>> = {
  empty: {
    rule: 'copies.empty',
    weight: 'must',
    one: (name) => `The file ${name} is empty.`,
    many: (count) => `${count} copies are empty files`,
    advice: 'Look for another copy of it, or scan the thing again.',
    source: P,
  },
  unreadable: {
    rule: 'copies.unreadable',
    weight: 'must',
    one: (name) => `The file ${name} is there and cannot be read.`,
    many: (count) => `${count} copies are there and cannot be read`,
    advice:
      'See whether you are permitted to read it. If you are, the disk may be failing: copy what you can to another one first.',
    source: P,
  },
  'not a file': {
    rule: 'copies.not-a-file',
    weight: 'must',
    one: (name) => `${name} is no file: it is a folder, a device, or a link that leads nowhere.`,
    many: (count) => `${count} copies are no files, but folders, devices or links that lead nowhere`,
    advice: 'Name the file itself; where a thing has several, name each, parted by semicolons.',
    source: P,
  },
  'leads out': {
    rule: 'copies.leads-out',
    weight: 'must',
    one: (name) => `${name} is a link to something outside the catalogue folder, and is not followed.`,
    many: (count) => `${count} copies are links to something outside the catalogue folder`,
    advice: 'Put the file itself there: a catalogue must be complete in itself.',
    source: P,
  },
  damaged: {
    rule: 'copies.damaged',
    weight: 'should',
    one: (name) =>
      `The file ${name} is damaged: it breaks off before its end, or its beginning makes no sense.`,
    many: (count) =>
      `${count} copies are damaged: they break off before their end, or their beginning makes no sense`,
    advice: 'Open it and look. If a part is missing, look for another copy, or scan the thing again.',
    source: 'The specification of each format, on how a file ends',
  },
};

/** Whether every copy of the list is there and whole, and every file that is there is in the list. */
export function reviewPresence(copies: readonly Copy[], unlisted: readonly string[]): Finding[] {
  const there = copies.filter(({ facts }) => facts !== undefined && facts.trouble !== 'missing');
  // A file that is in no row is the likelier one: each row has a file of its own.
  const find = [nearestFile(unlisted), nearestFile(there.map(({ path }) => path))];
  const named = new Set(there.map(({ path }) => caseless(path)));
  const missing = copies
    .filter(({ facts }) => facts?.trouble === 'missing')
    .map((copy) => {
      const meant = find[0]?.(copy.path) ?? find[1]?.(copy.path);
      if (meant === undefined) return caseOf(copy);
      named.add(caseless(meant));
      return caseOf(copy, {
        what: `perhaps “${meant}”`,
        advice: `Is “${meant}” meant? Otherwise put the file there.`,
      });
    });
  const ofTrouble = Object.entries(TROUBLES).flatMap(([trouble, rule]) =>
    say(
      rule,
      copies.filter(({ facts }) => facts?.trouble === trouble).map((copy) => caseOf(copy)),
    ),
  );
  // What differs from a name of the list only in its capitals, or is proposed for one, is said there.
  const alone = unlisted.filter((path) => !named.has(caseless(path)));
  return [
    ...say(MISSING, missing),
    ...ofTrouble,
    ...say(
      UNLISTED,
      alone.map((path) => ({ path })),
    ),
  ];
}
