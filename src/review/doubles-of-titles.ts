import { readKind } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { plainWords } from './plain-words.ts';
import { maskNumbers } from './private-numbers.ts';
import { sayRows, sayThings } from './said-together.ts';
import { emptinessOf } from './titles.ts';
import { type Pair, titlesNearlyAlike } from './titles-nearly-alike.ts';

/** A title as it is compared, the number of the date and kind that go with it, and the things with all three in common. */
interface Entry {
  title: string;
  block: number;
  things: Thing[];
}

interface Entries {
  entries: readonly Entry[];
  /** The place of the entry with this title and block. */
  find: (title: string, block: number) => number | undefined;
}

/** Things with the same title, date and kind, and things whose titles are nearly the same; the findings of each rule. */
export function titlesTwice({ settings, things }: Catalogue): Finding[][] {
  const all = entriesOf(things);
  const alike = all.entries.flatMap((entry) => mayBeOne(entry.things)).filter(({ length }) => length > 1);
  return [alike.map(sameFinding), nearlyAlike(all, settings).map(nearFinding)];
}

function entriesOf(things: readonly Thing[]): Entries {
  const kindOf = once((kind: string) => readKind(kind)?.kind.one ?? fold(kind));
  const blocks = new Map<string, number>();
  const places = new Map<string, number>();
  const entries: Entry[] = [];
  for (const thing of things) {
    const title = plainWords(thing.title);
    const common = `${dateOf(thing)}\n${thing.kind === undefined ? '' : kindOf(thing.kind)}`;
    const block = blocks.get(common) ?? blocks.size;
    blocks.set(common, block);
    const key = `${block} ${title}`;
    const at = places.get(key);
    if (at !== undefined) entries[at]?.things.push(thing);
    else places.set(key, entries.push({ title, block, things: [thing] }) - 1);
  }
  return { entries, find: (title, block) => places.get(`${block} ${title}`) };
}

function dateOf({ date }: Thing): string {
  if (date === undefined || date.reading.kind === 'undated') return '';
  return date.reading.kind === 'date' ? date.reading.edtf : fold(date.written);
}

/** Where the things of one title name so many different people or places, the title is common and tells nothing. */
const COMMON = 50;

/** Things that nothing in the list tells apart; those that name other people or other places are parted. */
function mayBeOne(things: readonly Thing[]): Thing[][] {
  const [first] = things;
  // Of titles that say nothing, nothing follows.
  if (things.length < 2 || first === undefined || emptinessOf(first) !== undefined) return [];
  const groups: Thing[][] = [];
  for (const thing of things) {
    const group = groups.find(([one]) => one !== undefined && agree(one, thing));
    if (group !== undefined) group.push(thing);
    else if (groups.push([thing]) > COMMON) return [];
  }
  return groups;
}

const agree = (one: Thing, other: Thing) =>
  (['people', 'creators', 'places'] as const).every((column) => {
    const [its, others] = [one[column], new Set(other[column].map(fold))];
    return its.length === 0 || others.size === 0 || its.some((name) => others.has(fold(name)));
  });

/** Titles a slip or two apart, or apart only by a blank, with the same date and kind; those that hang together as one. */
function nearlyAlike({ entries, find }: Entries, settings: Settings): Thing[][] {
  const beside = (title: string, at: number) => find(title, entries[at]?.block ?? -1);
  const titles = entries.map(({ title }) => title);
  const pairs = [...titlesNearlyAlike(titles, beside, knownWords(settings)), ...blankApart(entries)];
  const group = new Map<number, number[]>();
  for (const pair of pairs) {
    const [one, other] = pair.map((at) => group.get(at) ?? [at]);
    if (one === undefined || other === undefined || one === other) continue;
    const joined = [...one, ...other];
    for (const at of joined) group.set(at, joined);
  }
  return [...new Set(group.values())]
    .map((places) => places.sort((a, b) => a - b).flatMap((at) => entries[at]?.things[0] ?? []))
    .filter(([first, ...others]) => first !== undefined && others.every((other) => agree(first, other)));
}

/** Words of names that `collection.yaml` knows are right, however near another word they come. */
function knownWords({ people, creators }: Settings): (word: string) => boolean {
  const names = [...creators, ...people.flatMap(({ name, also, places }) => [name, ...also, ...places])];
  const words = new Set(names.flatMap((name) => plainWords(name).split(' ')));
  return (word) => words.has(word);
}

/** “Overbank school” and “Over bank school”. A blank between figures makes another number. */
function blankApart(entries: readonly Entry[]): Pair[] {
  const inBlock = new Map<number, number>();
  for (const { block } of entries) inBlock.set(block, (inBlock.get(block) ?? 0) + 1);
  const first = new Map<string, number>();
  const pairs: Pair[] = [];
  for (const [at, { block, title }] of entries.entries()) {
    if (inBlock.get(block) === 1) continue;
    const key = `${block} ${title.replace(/(\p{L}) (?=\p{L})/gu, '$1')}`;
    const before = first.get(key);
    if (before === undefined) first.set(key, at);
    else pairs.push([before, at]);
  }
  return pairs;
}

const ADVICE =
  'If it is one thing, take out all rows but one; if not, say in the titles what tells them apart, such as “second print”.';

function sameFinding(things: readonly Thing[]): Finding {
  const title = maskNumbers(things[0]?.title ?? '');
  return {
    rule: 'doubles.same-title',
    weight: 'consider',
    place: placeOf(things),
    found: `“${title}” stands in the list more than once (${sayRows(things.map(({ row }) => row))}), with ${shared(things)}.`,
    advice: ADVICE,
    source: 'common practice',
  };
}

function nearFinding(things: readonly Thing[]): Finding {
  return {
    rule: 'doubles.near-title',
    weight: 'consider',
    place: placeOf(things),
    found: `These titles are nearly the same, with ${shared(things)}: ${sayThings(things)}.`,
    advice: 'If one of them is mistyped, mend it; if it is one thing listed twice, take out one of the rows.',
    source: 'common practice',
  };
}

const placeOf = ([first]: readonly Thing[]): Finding['place'] => ({
  file: 'list.csv',
  ...(first !== undefined && { row: first.row }),
  column: 'title',
});

function shared([first]: readonly Thing[]): string {
  const date = first?.date === undefined ? 'no date' : `the same date (“${first.date.written}”)`;
  return `${date} and ${first?.kind === undefined ? 'no kind' : `the same kind (“${first.kind}”)`}`;
}
