import { addTo } from '../catalogue/add-to.ts';
import type { Finding, Place } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import type { Thing } from '../catalogue/thing.ts';
import { unitsFrom } from '../catalogue/units.ts';
import type { Given } from './given.ts';
import { textsInAid } from './taken-in/texts.ts';
import { textsIn } from './texts-in.ts';

/**
 * Texts that go and name what stays. A title or the name of a copy is a mention that must not go; the name of somebody
 * whom only staying things mention may be right where it stands, and is said for the owner to decide. Titles of fewer
 * than four words are not looked for, since they are found anywhere. In a finding aid that was taken in, the reference
 * codes of what stays are looked for too, if they have three parts or more: others refer to it by them.
 * @param reason why the package is made despite findings, which goes into it too
 */
export function mentions({ catalogue, held, unitsAsThings, units }: Given, reason = ''): Finding[] {
  const staying = [...held.map(({ thing }) => thing), ...unitsAsThings.staying];
  const given = [...catalogue.things, ...unitsAsThings.given];
  const titles = lessOf(staying, given, ({ title }) => [title]).filter((title) => plain(title).length > 3);
  const files = lessOf(staying, given, ({ copies }) => copies.map((path) => path.split('/').at(-1) ?? path));
  const names = lessOf(staying, given, ({ people, creators }) => [...people, ...creators]);
  const marks = [
    ...[...titles, ...files.filter((file) => file.length > 5), ...codesOf(units)].map((mark) => ({
      mark,
      isName: false,
    })),
    ...names.filter((name) => plain(name).length > 1).map((mark) => ({ mark, isName: true })),
  ].map((one) => ({ ...one, words: plain(one.mark), places: [] as Place[] }));
  if (marks.length === 0) return [];
  const find = finder(marks);
  const look = (text: string, place: Place) => {
    for (const one of find(plain(text))) one.places.push(place);
  };
  // What these three say is for the program and goes nowhere.
  const { check, list, housing, ...said } = catalogue.settings;
  for (const [text, column] of textsIn(said)) look(text, { file: 'collection.yaml', column });
  for (const { row, people, creators, ...thing } of catalogue.things) {
    for (const [text, column] of textsIn(thing)) look(text, { file: 'list.csv', row, column });
  }
  if (catalogue.base !== undefined) for (const [text, place] of textsInAid(catalogue.base)) look(text, place);
  look(reason, { file: '--despite' });
  return marks.flatMap(({ mark, isName, places }) => {
    const [place] = places;
    if (place === undefined) return [];
    const more = places.length === 1 ? '' : ` It is said in ${places.length} places; this is the first.`;
    return [isName ? named(mark, place, more) : mentioned(mark, place, more)];
  });
}

/** Of marks, those that a text has as words in a row; by their first words, since there may be thousands. */
function finder<Mark extends { words: readonly string[] }>(
  marks: readonly Mark[],
): (words: readonly string[]) => Set<Mark> {
  const byFirst = new Map<string, Mark[]>();
  for (const mark of marks) {
    const [first = ''] = mark.words;
    addTo(byFirst, first, mark);
  }
  return (words) =>
    new Set(
      words.flatMap((word, at) =>
        (byFirst.get(word) ?? []).filter((mark) => mark.words.every((one, next) => words[at + next] === one)),
      ),
    );
}

/** Codes that can be told from any other numbers. */
const codesOf = (units: Given['units']): string[] =>
  units.flatMap(({ unit }) =>
    [...unitsFrom(unit)].flatMap(({ referenceCode: code }) =>
      code === undefined || plain(code).length < 3 ? [] : [code],
    ),
  );

const plain = (text: string): string[] => fold(text).match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];

/** What staying things have and no given one. */
function lessOf(
  staying: readonly Thing[],
  given: readonly Thing[],
  of: (thing: Thing) => readonly string[],
): string[] {
  const known = new Set(given.flatMap(of).map(fold));
  return [...new Set(staying.flatMap(of))].filter((text) => !known.has(fold(text)));
}

const mentioned = (mark: string, place: Place, more: string): Finding => ({
  rule: 'hand-over.mention',
  weight: 'must',
  place,
  found: `This text names “${mark}”, which stays with the family.${more}`,
  advice: 'Take the words out, or give the thing too: the text would go into the package as it is.',
});

const named = (mark: string, place: Place, more: string): Finding => ({
  rule: 'hand-over.name',
  weight: 'consider',
  place,
  found: `This text names ${mark}, whom only things mention that stay with the family.${more}`,
  advice: 'Decide whether the name may go. The text goes into the package as it is.',
});
