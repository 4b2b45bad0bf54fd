import { isOpen, KINDS, readKind } from '../arrange/index.ts';
import { addTo } from '../catalogue/add-to.ts';
import type { Finding } from '../catalogue/finding.ts';
import { languageUse } from '../catalogue/languages.ts';
import { nearest } from '../catalogue/nearest.ts';
import { sayMoreRows } from '../catalogue/say-count.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { Form } from '../housing/model.ts';
import { pieceOf } from '../housing/piece.ts';
import { FURTHER_WORDS } from '../kinds/further-words.ts';
import { OBJECT_WORDS } from '../kinds/object-words.ts';
import type { Rules } from './index.ts';
import { maskNumbers } from './private-numbers.ts';

/** Words of the list and of the settings that the program does not know, or has to guess at; each is said once. */
export const reviewWords: Rules = ({ settings, things }, aid) => [
  ...unknownKinds(things),
  ...unknownLanguages(things),
  ...[settings.language, ...settings.languages]
    .filter((word) => languageUse(word) === undefined)
    .map(unknownInSettings),
  ...peopleInTheListOnly(aid.people.slice(settings.people.length)),
  ...openYetEnding(things),
];

/** A word with the rows it stands in, for each word that `of` finds in the things. */
function rowsByWord(
  things: readonly Thing[],
  of: (thing: Thing) => readonly string[],
): Map<string, number[]> {
  const found = new Map<string, number[]>();
  for (const thing of things) {
    for (const word of of(thing)) {
      addTo(found, word, thing.row);
    }
  }
  return found;
}

function unknownKinds(things: readonly Thing[]): Finding[] {
  const unknown = things.filter(({ kind }) => kind !== undefined && !readKind(kind));
  const words = new Map<string, Thing[]>();
  for (const thing of unknown) addTo(words, thing.kind ?? '', thing);
  return [...words].map(([word, those]) => {
    const meant = nearest(word, KIND_NAMES);
    const treated = [...new Set(those.map((thing) => pieceOf(thing).form))];
    const maybeObject = treated.some((form) => ON_PAPER.has(form)) ? OR_AN_OBJECT : undefined;
    const advice = meant === undefined ? maybeObject : `Is “${meant}” meant?`;
    return {
      rule: 'words.unknown-kind',
      weight: 'consider',
      place: { file: 'list.csv', row: those[0]?.row ?? 0, column: 'kind' },
      found: `“${word}”${sayMoreRows(those.length)} is not a kind that is known; it makes a group of its own and is treated as ${treated.map((form) => TREATED[form]).join(' or ')}.`,
      ...(advice !== undefined && { advice }),
    };
  });
}

const KIND_NAMES = [
  ...KINDS.flatMap(({ one, many, also }) => [one, many, ...also]),
  ...[...OBJECT_WORDS, ...FURTHER_WORDS].flatMap(({ things }) =>
    things.flatMap(({ one, many }) => [one, many]),
  ),
];
const OR_AN_OBJECT = 'If it is a thing rather than a paper, write the kind object.';
const ON_PAPER: ReadonlySet<Form> = new Set(['sheet', 'rolled']);

/** How what lies so is called. */
const TREATED: Readonly<Record<Form, string>> = {
  sheet: 'a sheet of paper',
  photograph: 'a photograph',
  mounted: 'a mounted photograph',
  framed: 'a frame',
  bound: 'a volume',
  negative: 'a negative',
  slide: 'a slide',
  glass: 'a glass plate',
  disc: 'a gramophone record',
  film: 'a film reel',
  tape: 'a tape',
  textile: 'a textile',
  object: 'an object',
  rolled: 'a sheet that is rolled',
  digital: 'a data carrier',
};

const LANGUAGE_ADVICE = 'Write its English name or its code, such as Norwegian or nor.';

function unknownLanguages(things: readonly Thing[]): Finding[] {
  const words = rowsByWord(things, ({ languages }) =>
    languages.filter((word) => languageUse(word) === undefined),
  );
  return [...words].map(([word, rows]) => ({
    rule: 'words.unknown-language',
    weight: 'should',
    place: { file: 'list.csv', row: rows[0] ?? 0, column: 'language' },
    found: `“${word}”${sayMoreRows(rows.length)} is not a language that ISO 639 knows by this name or code, so it is kept in the notes.`,
    advice: LANGUAGE_ADVICE,
    source: 'ISO 639-2',
  }));
}

const unknownInSettings = (word: string): Finding => ({
  rule: 'words.unknown-language-of-all',
  weight: 'should',
  place: { file: 'collection.yaml' },
  found: `“${word}” is not a language that ISO 639 knows by this name or code, so it is left out.`,
  advice: LANGUAGE_ADVICE,
  source: 'ISO 639-2',
});

/** What kind of agent a name stands for is a guess where `collection.yaml` does not say it. */
function peopleInTheListOnly(agents: readonly { name: string; type: string }[]): Finding[] {
  return (['person', 'corporateBody'] as const).flatMap((type): Finding[] => {
    const names = agents.filter((agent) => agent.type === type).map(({ name }) => `“${name}”`);
    if (names.length === 0) return [];
    const listed = `${names.slice(0, 8).join(', ')}${names.length > 8 ? ` and ${names.length - 8} more` : ''}`;
    return [
      {
        rule: `words.taken-for-${type === 'person' ? 'people' : 'organisations'}`,
        weight: 'consider',
        place: { file: 'list.csv', column: 'people' },
        found: `These names of the list are taken for ${type === 'person' ? 'persons' : 'organisations'}: ${listed}.`,
        advice: 'Where that is wrong, or more is known, add the name under “people” in collection.yaml.',
      },
    ];
  });
}

function openYetEnding(things: readonly Thing[]): Finding[] {
  return things
    .filter(({ access, until }) => access !== undefined && until !== undefined)
    .filter((thing) => isOpen(thing.access))
    .map(({ row, title, access, until }) => ({
      rule: 'words.open-yet-ending',
      weight: 'should',
      place: { file: 'list.csv', row, column: 'until' },
      found: `Anybody may see “${maskNumbers(title)}” (“${access}”), and yet a restriction is to end (“${until?.written}”).`,
      advice: 'Say in the column “access” who may see it until then.',
      source: 'DACS 4.1',
    }));
}
