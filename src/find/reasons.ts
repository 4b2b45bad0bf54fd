import type { Entry, Names } from './entry.ts';
import { FIELDS, type FieldName, WEIGHTS } from './fields.ts';
import type { Unit } from './question.ts';
import { codeTerm, kindTerm, withinTerm } from './special-terms.ts';
import { type Word, wordsOf } from './words.ts';

/** Why a thing was found. */
export interface Reason {
  /** Where it was found; `number` is the reference code or the number in the list, `within` the code of a folder or group. */
  field: FieldName | 'number' | 'within';
  /** What was asked for. */
  typed: string;
  /** What is there: the word as it is written, a name, or the dates. */
  found: string;
  /** Of a running text, the words around it; of another form of a name, the name. */
  within?: string;
}

/** A unit that a thing has, with the words that count for it and how near they are. */
interface Met {
  unit: Unit;
  words: ReadonlyMap<string, number>;
}

/** For each unit that was met, the best place where it was. @param names of everybody the thing has to do with */
export function reasonsFor(entry: Entry, names: ReadonlyMap<number, Names>, met: readonly Met[]): Reason[] {
  const values = [...valuesOf(entry, names)];
  return met.flatMap(({ unit, words }) => {
    const reason = bestPlace(unit, words, values);
    const { typed, years, code } = unit;
    const dates: Reason = { field: 'dates', typed, found: entry.dates ?? '' };
    if (years !== undefined && entry.dates !== undefined && reason?.field !== 'title') return [dates];
    if (reason !== undefined) return [reason];
    if (code !== undefined && words.has(codeTerm(code))) return [{ field: 'number', typed, found: code }];
    if (code !== undefined && words.has(withinTerm(code))) return [{ field: 'within', typed, found: code }];
    const [kind] = words.has(kindTerm(unit.words)) ? (entry.texts.kind ?? []) : [];
    return kind === undefined ? [] : [{ field: 'kind', typed, found: kind }];
  });
}

interface Value {
  field: number;
  text: string;
  /** Of a form of a name, the name. */
  name?: string;
  words: readonly Word[];
}

function* valuesOf(entry: Entry, names: ReadonlyMap<number, Names>): Generator<Value> {
  for (const [field, { name }] of FIELDS.entries()) {
    if (name === 'title') yield { field, text: entry.title, words: wordsOf(entry.title) };
    else if (name === 'creators' || name === 'people' || name === 'mentioned') {
      for (const person of entry[name]) {
        const forms = names.get(person) ?? [];
        for (const text of forms) yield { field, text, name: forms[0] ?? text, words: wordsOf(text) };
      }
    } else for (const text of entry.texts[name] ?? []) yield { field, text, words: wordsOf(text) };
  }
}

function bestPlace(
  { typed, words: wanted }: Unit,
  near: ReadonlyMap<string, number>,
  values: readonly Value[],
): Reason | undefined {
  let best: { value: Value; from: Word; to: Word } | undefined;
  let strongest = 0;
  for (const value of values) {
    for (const [at, from] of value.words.entries()) {
      const strength = (near.get(from.word) ?? 0) * (WEIGHTS[value.field] ?? 0);
      const to = value.words[at + Math.max(0, wanted.length - 1)];
      if (strength <= strongest || to === undefined) continue;
      if (wanted.length > 1 && !wanted.every((word, index) => value.words[at + index]?.word === word))
        continue;
      [best, strongest] = [{ value, from, to }, strength];
    }
  }
  if (best === undefined) return undefined;
  const { value, from, to } = best;
  const field = FIELDS[value.field]?.name ?? 'other';
  if (value.name !== undefined) {
    const other = value.name !== value.text;
    return { field, typed, found: value.text, ...(other && { within: value.name }) };
  }
  const found = value.text.slice(from.at, to.end);
  return { field, typed, found, ...(field !== 'title' && excerpt(value.text, from.at, to.end)) };
}

/** In UTF-16 units on either side. */
const AROUND = 36;

/** The words around a place of a text, where these are more than the place itself. */
function excerpt(text: string, from: number, to: number): { within?: string } {
  const line = text.replace(/\s/g, ' ');
  const start = from <= AROUND ? 0 : line.indexOf(' ', from - AROUND) + 1;
  const [first, last] = [Math.min(start, from), line.lastIndexOf(' ', to + AROUND)];
  const end = to + AROUND >= line.length ? line.length : Math.max(last, to);
  if (first === from && end === to) return {};
  return { within: `${first > 0 ? '… ' : ''}${line.slice(first, end)}${end < line.length ? ' …' : ''}` };
}
