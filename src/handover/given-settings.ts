import { gatherAgents } from '../arrange/agents.ts';
import { datesOfThings } from '../arrange/statements-of-date.ts';
import { fold } from '../catalogue/fold.ts';
import { languageUse } from '../catalogue/languages.ts';
import type { PersonSettings, Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';

/**
 * The settings for what is given. Whatever names something that only staying things have goes from the lists of people,
 * creators, languages and subjects; what no thing mentions stays, for it was said of the whole. Running texts are left
 * as they are: `mentions` looks them through.
 */
export function givenSettings(
  settings: Settings,
  things: readonly Thing[],
  staying: readonly Thing[],
): Settings {
  if (staying.length === 0) return { ...settings, handOver: { keep: [] } };
  const agents = gatherAgents(settings);
  const namesIn = ({ creators, people }: Thing) => [...creators, ...people];
  const hasPerson = leftBy(things, staying, (thing) => namesIn(thing).map((name) => agents.idOf(name)));
  const hasName = leftBy(things, staying, (thing) => namesIn(thing).map(fold));
  const hasLanguage = leftBy(things, staying, ({ languages }) => languages.map(languageKey));
  const hasSubject = leftBy(things, staying, subjectsOf);

  const kept = settings.people.filter(({ name }) => hasPerson(agents.idOf(name)));
  const keptIds = new Set(kept.map(({ name }) => agents.idOf(name)));
  const people = kept.map(
    (person): PersonSettings => ({
      ...person,
      also: person.also.filter((name) => hasName(fold(name))),
      relations: person.relations.filter(({ to }) => keptIds.has(agents.idOf(to))),
    }),
  );
  const { dates, extent, ...rest } = settings;
  // Stated of the whole; where what stays has no part in the dates, the statement is still right.
  const isSame = datesIn([...things, ...staying]) === datesIn(things);
  return {
    ...rest,
    ...(isSame && dates !== undefined && { dates }),
    creators: settings.creators.filter((name) => hasPerson(agents.idOf(name))),
    languages: settings.languages.filter((word) => hasLanguage(languageKey(word))),
    subjects: settings.subjects.filter((term) => hasSubject(fold(term))),
    people,
    check: { ...settings.check, answers: answersLeft(settings, things, staying) },
    handOver: { keep: [] },
  };
}

const datesIn = (things: readonly Thing[]) => JSON.stringify(datesOfThings(things));

const languageKey = (word: string) => languageUse(word)?.name ?? fold(word);

const subjectsOf = ({ occasion, places, kind, series }: Thing) =>
  [occasion, ...places, kind, series].flatMap((term) => (term === undefined ? [] : [fold(term)]));

/** Whether something is left: not, where staying things have it and no given one does. */
function leftBy<Key>(
  things: readonly Thing[],
  staying: readonly Thing[],
  keysOf: (thing: Thing) => readonly Key[],
): (key: Key) => boolean {
  const given = new Set(things.flatMap(keysOf));
  const gone = new Set(staying.flatMap(keysOf));
  return (key) => given.has(key) || !gone.has(key);
}

/** Answers about staying things would only be said to be unused, by the names of those. */
function answersLeft({ check }: Settings, things: readonly Thing[], staying: readonly Thing[]) {
  const isLeft = leftBy(things, staying, ({ number, title }) =>
    number === undefined ? [fold(title)] : [number, fold(title)],
  );
  return check.answers.filter(({ of }) => of === undefined || (isLeft(of) && isLeft(fold(of))));
}
