import type { EngineMessage } from './engine.ts';
import { legible } from './legible.ts';
import type { Phrase } from './phrase.ts';
import { SCHEMA_PHRASES } from './schema-phrases.ts';
import { XML_PHRASES } from './xml-phrases.ts';

/** The engine's own words are kept, but not the ten million letters that they may quote. */
const MOST_OF_ENGINE = 1000;

/** "Element '{namespace}c', attribute 'level': The value …" */
const ABOUT = /^Element '(?:\{[^}]*\})?([^']*)'(?:, attribute '(?:\{[^}]*\})?([^']*)')?: (.*)$/s;

/** A message of the engine in plain words, with its own words beside them. */
export function sayMessage({ message }: Pick<EngineMessage, 'message'>): { says: string; engine: string } {
  const engine = legible(message, MOST_OF_ENGINE);
  const [, name, attribute, complaint] = ABOUT.exec(message) ?? [];
  if (name === undefined || complaint === undefined) {
    const says = phrase(XML_PHRASES, message, { element: '', subject: '' });
    return { says: says ?? `This is not well-formed XML: ${engine}`, engine };
  }
  const element = `<${legible(name)}>`;
  const subject =
    attribute === undefined ? `The text of ${element}` : `The attribute ${legible(attribute)} of ${element}`;
  const says = phrase(SCHEMA_PHRASES, complaint, { element, subject });
  return { says: says ?? `The schema refuses ${element}: ${legible(complaint, 300)}`, engine };
}

function phrase(
  phrases: readonly Phrase[],
  message: string,
  about: { element: string; subject: string },
): string | undefined {
  for (const { engine, says } of phrases) {
    const match = engine.exec(message);
    // A list of accepted names or values may be longer than a quoted value, and comes from the schema, not the file.
    if (match !== null) return says(about, ...match.slice(1).map((found) => legible(found ?? '', 4000)));
  }
  return undefined;
}
