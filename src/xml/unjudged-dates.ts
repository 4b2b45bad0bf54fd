import type { XmlAttribute, XmlDocument } from 'libxml2-wasm';
import { legible } from './legible.ts';
import type { ValidationMessage } from './validation.ts';

// XML Schema Part 2: date, gYear, gYearMonth and dateTime.
const DATE = /^-?\d{4}(?:-\d\d(?:-\d\d(?:T\d\d:\d\d:\d\d(?:\.\d+)?)?)?)?(?:Z|[+-]\d\d:\d\d)?$/;

/** More of them than this say nothing new. */
const MOST = 20;

/**
 * The dates on which the engine gives up: where a schema asks for a date in one of several forms with an upper bound,
 * and something that is no date stands there, libxml2 2.15 stops with an internal error and says nothing.
 * @param attributes the names of the attributes that the schema types so
 */
export function unjudgedDates(document: XmlDocument, attributes: readonly string[]): ValidationMessage[] {
  if (attributes.length === 0) return [];
  const found = document.find(attributes.map((name) => `//@${name}`).join(' | ')) as XmlAttribute[];
  return found
    .filter(({ value }) => !DATE.test(value.trim()))
    .slice(0, MOST)
    .map(({ name, value, parent }) => ({
      line: parent?.line ?? 1,
      says:
        `The attribute ${name} of <${legible(parent?.name ?? '')}> is “${legible(value)}”. What is accepted is a year, ` +
        'a month, a day or an instant: 2026, 2026-05, 2026-05-14 or 2026-05-14T09:30:00Z.',
    }));
}
