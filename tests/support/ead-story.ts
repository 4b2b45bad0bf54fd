import { elementsOf, type Tree, textOf } from './xml-tree.ts';

/** What a component of a finding aid says, whichever version of EAD says it. */
export interface Story {
  id: string | undefined;
  level: string | undefined;
  titles: string[];
  identifiers: [kind: string | undefined, value: string][];
  dates: StoryDate[];
  extents: string[];
  creators: string[];
  keeper: string[];
  abstract: string[];
  languages: string[];
  languageNote: string;
  containers: Record<string, string | undefined>[];
  locations: string[];
  copies: Record<string, string | undefined>[];
  didNotes: string[];
  /** By element, with its kind where two kinds share one. */
  notes: Record<string, string[]>;
  accessPoints: string[];
  children: Story[];
}

/** A statement of date; for EAD3 `words` may be missing, where the structure says it all. */
export interface StoryDate {
  type: string | undefined;
  words: string | undefined;
  normal: string | undefined;
  /** A date in several parts: only its outer years can be compared. */
  several: boolean;
  certainty: string | undefined;
}

export const child = (tree: Tree, name: string): Tree => {
  const [found] = elementsOf(tree, name);
  if (found === undefined) throw new Error(`<${tree.name}> has no <${name}>`);
  return found;
};

export const texts = (tree: Tree, name: string): string[] => elementsOf(tree, name).map(textOf);

const ACCESS = /^(?:persname|famname|corpname|geogname|subject|genreform|occupation|function|title)$/;

/** The notes among the children of a component: paragraphs, with heads, and with what is nested in them. */
export function notesOf(component: Tree, kind: string): Record<string, string[]> {
  const notes: Record<string, string[]> = {};
  const tell = (key: string, said: readonly string[]) => {
    if (said.length > 0) notes[key] = [...(notes[key] ?? []), ...said];
  };
  for (const note of elementsOf(component)) {
    if (['did', 'c', 'dsc', 'controlaccess'].includes(note.name)) continue;
    const key = [note.name, note.attributes[kind]].filter((part) => part !== undefined).join(' ');
    // EAD 2002 has the legal status within the conditions governing access.
    const apart = note.name === 'accessrestrict' ? elementsOf(note, 'legalstatus') : [];
    tell(
      'legalstatus',
      apart.map((status) => `p: ${textOf(status)}`),
    );
    tell(
      key,
      elementsOf(note).flatMap((part) => (apart.includes(part) ? [] : paragraphsOf(part))),
    );
  }
  return notes;
}

const paragraphsOf = (part: Tree): string[] =>
  part.name === 'bioghist' ? elementsOf(part).flatMap(paragraphsOf) : [`${part.name}: ${textOf(part)}`];

/** Each access point as its element, its words, and where it is registered. */
export const accessPointsOf = (component: Tree, told: (point: Tree) => string): string[] =>
  elementsOf(component, 'controlaccess')
    .flatMap((list) => elementsOf(list))
    .filter(({ name }) => ACCESS.test(name))
    .map(told);

export const pair = (from: string | undefined, to: string | undefined) => {
  if (from === undefined || to === undefined) return undefined;
  return from === to ? from : `${from}/${to}`;
};
