import { fold } from '../catalogue/fold.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { DateContext } from '../dates/index.ts';
import { readKind } from '../kinds/kind-words.ts';

type Person = NonNullable<DateContext['people']>[number];

/**
 * Whose an age is that stands in a row without a name: that of the only creator, or where there is none of the only
 * person. Of a photograph it is that of who is shown, before whoever took it (common practice).
 * @param known whom collection.yaml names, with their births
 * @returns the person, or why it is nobody's and how to write it
 */
export function whoseAge(
  { kind = '', creators, people }: Pick<Thing, 'kind' | 'creators' | 'people'>,
  known: readonly Person[],
): Person | { reason: string } {
  const isPhotograph = readKind(kind)?.kind.group === 'Photographs';
  const named = isPhotograph ? [people, creators] : [creators, people];
  const [first, ...others] = named.find((names) => names.length > 0) ?? [];
  if (first === undefined)
    return {
      reason:
        'It tells an age, but not whose; write it with a name whose birth date stands under people in collection.yaml, as in “Pip Rook aged 7”.',
    };
  const bornOf = (name: string) =>
    known.find(
      (one) => one.born !== undefined && [one.name, ...(one.also ?? [])].map(fold).includes(fold(name)),
    );
  const likely = named.flat().find((name) => bornOf(name) !== undefined);
  const example = `as in “${likely ?? first} aged 7”`;
  if (others.length > 0)
    return { reason: `It tells an age, but not whose of several; write it with the name, ${example}.` };
  const person = bornOf(first);
  if (person !== undefined) return person;
  const unknown = `It tells an age, as it seems of ${first}, whose birth date does not stand under people in collection.yaml`;
  return { reason: likely === undefined ? `${unknown}.` : `${unknown}; if not, write the name, ${example}.` };
}
