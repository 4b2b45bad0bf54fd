import { addTo } from '../catalogue/add-to.ts';
import type { Agent } from '../catalogue/agent.ts';
import type { Names } from './entry.ts';
import { wordsOf } from './words.ts';

/** Who is named in some texts, in the order of the list of people. */
export type PeopleMet = (texts: readonly string[]) => number[];

/** A name as people say it, then its other forms. Years in a heading are no part of a name. */
export function namesOf({ name, variants = [], nameParts = [] }: Agent): Names {
  const parts = nameParts.map(({ text }) => text).join(' ');
  const known = new Set([words(name)]);
  const others = [...variants, parts].filter((form) => {
    const key = words(form);
    if (key === '' || known.has(key)) return false;
    known.add(key);
    return true;
  });
  return [name, ...others];
}

// In whatever order: the heading of a plain name adds nothing to be found by.
const words = (name: string): string =>
  wordsOf(name)
    .map(({ word }) => word)
    .sort()
    .join(' ');

/** Finds those who are called by several names. Who has one name only is found by it in the text itself. */
export function peopleMetIn(names: readonly Names[]): PeopleMet {
  const forms = new Map<string, { words: string[]; person: number }[]>();
  for (const [person, of] of names.entries()) {
    if (of.length === 1) continue;
    for (const name of of) {
      const form = wordsOf(name).map(({ word }) => word);
      const [first] = form;
      if (first !== undefined) addTo(forms, first, { words: form, person });
    }
  }
  if (forms.size === 0) return () => [];
  return (texts) => {
    const met = new Set<number>();
    for (const text of texts) {
      const said = wordsOf(text);
      for (const [at, { word }] of said.entries()) {
        for (const { words: form, person } of forms.get(word) ?? []) {
          if (form.every((one, index) => said[at + index]?.word === one)) met.add(person);
        }
      }
    }
    return [...met].sort((a, b) => a - b);
  };
}
