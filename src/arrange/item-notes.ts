import type { Component } from '../catalogue/component.ts';
import { languageUse } from '../catalogue/languages.ts';
import type { Thing } from '../catalogue/thing.ts';

const none: never[] = [];

/**
 * Nothing of the list is dropped: what has no place of its own in the description becomes a note under its heading.
 * @param nobody those of some names that are the word for somebody unknown
 * @param unused columns that the way of sorting does not use
 */
export function notesOf(
  thing: Thing,
  nobody: (names: readonly string[]) => string[],
  unused: { series: string | undefined; folder: string | undefined },
): Component['generalNotes'] {
  const { note, creators, people, languages, access, until, extra } = thing;
  const unreadEnd =
    access !== undefined && until !== undefined && until.reading.kind !== 'date' ? until : undefined;
  const unknown = languages.every(languageUse)
    ? none
    : languages.filter((word) => languageUse(word) === undefined);
  const [makers, named] = [nobody(creators), nobody(people)];
  const { series, folder } = unused;
  const isSaid =
    note !== undefined || unreadEnd !== undefined || series !== undefined || folder !== undefined;
  if (!isSaid && extra.length === 0 && makers.length + named.length + unknown.length === 0) return none;
  const notes: Component['generalNotes'] = [];
  const add = (head: string, words: readonly string[]) => {
    if (words.length > 0) notes.push({ head, text: words.join('; ') });
  };
  if (note !== undefined) notes.push({ text: note });
  add('Made by', makers);
  add('People', named);
  add('Language', unknown);
  if (unreadEnd !== undefined) add('Closed until', [unreadEnd.written]);
  if (series !== undefined) add('Series in the list', [series]);
  if (folder !== undefined) add('Folder in the list', [folder]);
  for (const { heading, text } of extra) add(heading, [text]);
  return notes;
}
