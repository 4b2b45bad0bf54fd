import type {
  AccessConditions,
  AccessPoint,
  DateStatement,
  DigitalCopy,
  Extent,
  LanguageUse,
  Repository,
} from '../catalogue/component.ts';
import { sayContainer } from '../catalogue/say-container.ts';
import { sayExtent } from '../housing/extent.ts';
import { keyOfValue } from './same.ts';

type Words = (value: never) => string;

const within = (words: string, ...more: readonly (string | false | undefined)[]): string => {
  const said = more.filter((part) => part !== undefined && part !== false && part !== '');
  return said.length === 0 ? words : `${words} (${said.join('; ')})`;
};

const date = ({ type, expression, written, note }: DateStatement): string =>
  within(
    type === 'bulk' && !/^bulk\b/i.test(expression) ? `bulk ${expression}` : expression,
    written !== undefined && `in the list: ${written}`,
    note,
  );

const extent = (one: Extent): string =>
  within(sayExtent([one]), one.coverage === 'part' && 'a part', one.dimensions, one.facets?.join(', '));

const language = ({ name, script }: LanguageUse): string =>
  script === undefined ? name : `${name}, in ${script.name} script`;

const repository = ({ name, address = [], country, isil }: Repository): string =>
  within([name, ...address].join(', '), country, isil);

const access = ({ statement, until, restricted }: AccessConditions): string =>
  within(statement, until !== undefined && `until ${until}`, restricted && 'restricted');

const copy = ({ file, title, note, origin }: DigitalCopy): string =>
  within(file, title, note, origin === 'borndigital' && 'digital from the start');

const accessPoint = ({ type, term, source, identifier }: AccessPoint): string =>
  within(term, type, source, identifier);

/** A link to an agent, or a relation: by name. */
const link = ({ name, role, as }: { name: string; role?: string; as?: string }): string =>
  within(name, role ?? as);

/** The words for the values of a field; a field that is not here holds a text. */
const WORDS: Readonly<Record<string, Words>> = {
  otherIdentifiers: ({ type, value }: { type: string; value: string }) => within(value, type),
  dates: date,
  extents: extent,
  creators: link,
  people: link,
  relations: link,
  repository,
  maintenanceAgency: repository,
  recipient: ({ name }: { name: string }) => name,
  languages: language,
  containers: ({ type, number, in: outer }: { type: string; number: string; in?: string }) =>
    [outer, sayContainer({ type, number })].filter((part) => part !== undefined).join(', '),
  digitalCopies: copy,
  accessConditions: access,
  generalNotes: ({ head, text }: { head?: string; text: string }) =>
    head === undefined ? text : `${head}: ${text}`,
  accessPoints: accessPoint,
  nameParts: ({ type, text }: { type: string; text: string }) => within(text, type),
  places: ({ name, role }: { name: string; role: string }) => within(name, role),
  conventions: ({ abbreviation, citation }: { abbreviation?: string; citation: string }) =>
    within(citation, abbreviation),
  rights: ({ citation, address, statement }: { citation: string; address?: string; statement?: string }) =>
    within(citation, address, statement),
  history: (event: { date: string; type: string; agent: string; description?: string }) =>
    typeof event === 'string'
      ? event
      : within(`${event.date} ${event.type} by ${event.agent}`, event.description),
  kept: () => 'in markup only',
};

/** A value in words for a reader: what the model says of it, without the names of its fields. */
export function sayValue(field: string, value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  if (Array.isArray(value)) return value.map((one) => sayValue(field, one)).join('; ');
  const words = WORDS[field];
  return words === undefined ? sayWhole(value) : words(value as never);
}

/** A value before and after in words; where the words for a reader would be the same, with all that the model says. */
export function sayBoth(field: string, was: unknown, now: unknown): [was: string, now: string] {
  const said: [string, string] = [sayValue(field, was), sayValue(field, now)];
  if (said[0] !== said[1] || field === 'kept') return said;
  return [sayWhole(was), sayWhole(now)];
}

const sayWhole = (value: unknown): string =>
  typeof value === 'object' && value !== null
    ? Object.entries(value)
        .map(([key, inner]) => `${key}: ${typeof inner === 'object' ? keyOfValue(inner) : String(inner)}`)
        .join(', ')
    : String(value);
