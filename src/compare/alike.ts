import { plainWords } from '../review/plain-words.ts';
import type { Unit } from './units.ts';

/** A unit of the second side, and how alike it is to one of the first. */
interface Near {
  b: Unit;
  /** From 0 to 1: the share of what is told of both that is the same; a rare word counts more than a common one. */
  likeness: number;
}

/** So many of the rarest words of a unit are looked up; a word that more units have than this tells too little. */
const RAREST = 6;
const COMMON = 40;
/** So many of the units found by them are held against it. */
const HELD = 4;
/** In UTF-16 units: as much of a long text as is compared. */
const LONG = 120;

/** Of so many units it is counted how often a word occurs; of more, every second or third. */
const COUNTED = 20_000;

/** How much it says that two units have a word in common: the rarer it is, the more. */
export type WeightOf = (word: string) => number;

/** @param all the units of both sides, by which it is known how rare a word is */
export function weightsFrom(all: readonly Unit[]): WeightOf {
  const times = new Map<string, number>();
  const step = Math.ceil(all.length / COUNTED);
  const counted = all.filter((_, at) => at % step === 0);
  for (const unit of counted)
    for (const word of featuresOf(unit)) times.set(word, (times.get(word) ?? 0) + 1);
  return (word) => Math.log2(1 + counted.length / (times.get(word) ?? 1));
}

/** @returns for a unit of the first side, those of the second that are likest at first glance, with their likeness */
export function nearestAmong(bs: readonly Unit[], weight: WeightOf): (a: Unit) => Near[] {
  const total = (words: readonly string[]) => words.reduce((sum, word) => sum + weight(word), 0);
  const told = new Map<Unit, { words: readonly string[]; total: number }>();
  const holders = new Map<string, Unit[]>();
  for (const b of bs) {
    const words = featuresOf(b);
    told.set(b, { words, total: total(words) });
    for (const word of words) {
      const list = holders.get(word);
      if (list === undefined) holders.set(word, [b]);
      else if (list.length <= COMMON) list.push(b);
    }
  }
  return (a) => {
    const words = featuresOf(a);
    const lists = words.map((word) => holders.get(word) ?? []).filter(({ length }) => length <= COMMON);
    const found = new Map<Unit, number>();
    for (const list of lists.sort((one, other) => one.length - other.length).slice(0, RAREST))
      for (const b of list) found.set(b, (found.get(b) ?? 0) + 1 / list.length);
    const likest = [...found].sort((one, other) => other[1] - one[1]).slice(0, HELD);
    const [these, sum] = [new Set(words), total(words)];
    return likest.map(([b]) => {
      const its = told.get(b);
      const common = total(its?.words.filter((word) => these.has(word)) ?? []);
      return { b, likeness: (2 * common) / (sum + (its?.total ?? 0)) };
    });
  };
}

/** What is told of a unit, word by word, each once. */
function featuresOf({ component }: Unit): string[] {
  const { title, dates, otherIdentifiers, accessPoints, scopeAndContent, generalNotes, digitalCopies } =
    component;
  const features = new Set<string>(plainWords(title).split(' '));
  features.add(`level ${component.level}`);
  for (const { edtf, expression } of dates) features.add(`date ${edtf ?? expression}`);
  for (const { value } of otherIdentifiers) features.add(`number ${value}`);
  for (const { type, term } of accessPoints) features.add(`${type} ${term}`);
  for (const { file } of digitalCopies) features.add(`copy ${file}`);
  for (const text of [scopeAndContent, generalNotes[0]?.text]) {
    if (text === undefined) continue;
    for (const word of plainWords(text.slice(0, LONG)).split(' ')) features.add(`said ${word}`);
  }
  return [...features];
}
