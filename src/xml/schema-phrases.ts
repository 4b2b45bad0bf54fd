import { sayList } from '../catalogue/say-list.ts';
import { legible } from './legible.ts';
import type { Phrase } from './phrase.ts';
import { isName } from './safe.ts';

/** What the simple types of W3C XML Schema, part 2, take. */
const TYPES: Readonly<Record<string, string>> = {
  'xs:IDREF': 'the id of an element of this file',
  'xs:IDREFS': 'ids of elements of this file, parted by spaces',
  'xs:NMTOKEN': 'one word of letters, digits, . - _ and :',
  'xs:NMTOKENS': 'words of letters, digits, . - _ and :, parted by spaces',
  'xs:anyURI': 'an address',
  'xs:boolean': 'true or false',
  'xs:date': 'a day such as 1952-05-14',
  'xs:dateTime': 'an instant such as 1952-05-14T12:00:00',
  'xs:gYear': 'a year such as 1952',
  'xs:decimal': 'a number such as 2 or 2.5',
  'xs:integer': 'a whole number',
  'xs:nonNegativeInteger': 'a whole number, 0 or above',
  'xs:positiveInteger': 'a whole number, 1 or above',
  'xs:language': 'a language tag such as en or de-CH',
  'xs:NCName': 'a name that begins with a letter and holds only letters, digits, . - and _',
};

/** How many of the elements that would be accepted are named: a paragraph may hold forty. */
const NAMED = 8;
/** In UTF-16 units: a longer pattern tells nobody anything. */
const LONGEST = 40;

/** `{namespace}a, {namespace}b` as `<a> or <b>`. */
function anyOf(expected: string): string {
  const names = expected.split(/,\s+/).map((name) => {
    if (name.startsWith('##other')) return 'an element of another namespace';
    return name.startsWith('##any') ? 'any element' : `<${name.replace(/^\{[^}]*\}\*?/, '')}>`;
  });
  if (names.length > NAMED)
    return `${names.slice(0, NAMED).join(', ')} or one of ${names.length - NAMED} others`;
  return sayList(names, 'or');
}

const quoted = (value: string) => `“${legible(value)}”`;

function wrongType(subject: string, value: string, type: string): string {
  if (type === 'xs:ID') {
    return isName(value) && !value.includes(':')
      ? `${subject} is ${quoted(value)}, which is the id of another element already; every id may occur once only.`
      : `${subject} is ${quoted(value)}; an id begins with a letter and holds only letters, digits, . - and _.`;
  }
  const accepted = TYPES[type];
  if (accepted !== undefined) return `${subject} is ${quoted(value)}; it must be ${accepted}.`;
  return `${subject} is ${quoted(value)}, which is not of the kind that the schema asks for here.`;
}

/** A key of several values, each of which the engine has between apostrophes. */
const inQuotes = (key: string) => key.replace(/'([^']*)'/g, '“$1”');

/** What a schema has against a file. The names are those of W3C XML Schema 1.0, as libxml2 puts them. */
export const SCHEMA_PHRASES: readonly Phrase[] = [
  {
    engine: /^This element is not expected\. Expected is (?:one of )?\( (.*) \)\.$/s,
    says: ({ element }, expected = '') =>
      `${element} may not stand here. What may stand here is ${anyOf(expected)}.`,
  },
  {
    engine: /^This element is not expected\.$/,
    says: ({ element }) =>
      `${element} may not stand here: the element around it does not allow it in this place.`,
  },
  {
    engine: /^Missing child element\(s\)\. Expected is (?:one of )?\( (.*) \)\.$/s,
    says: ({ element }, expected = '') => `${element} is not complete. It still needs ${anyOf(expected)}.`,
  },
  {
    engine: /^Missing child element\(s\)\.$/,
    says: ({ element }) => `${element} is not complete: an element is missing in it.`,
  },
  {
    engine: /^The attribute '(.*)' is not allowed\.$/s,
    says: ({ element }, name = '') => `${element} may not have the attribute ${name}.`,
  },
  {
    engine: /^The attribute '(.*)' is required but missing\.$/s,
    says: ({ element }, name = '') => `${element} must have the attribute ${name}, and has not.`,
  },
  {
    engine: /^\[facet 'enumeration'\] The value '(.*)' is not an element of the set \{(.*)\}\.$/s,
    says: ({ subject }, value = '', set = '') =>
      `${subject} is ${quoted(value)}; it must be one of ${set.replaceAll("'", '')}.`,
  },
  {
    engine: /^\[facet 'pattern'\] The value '(.*)' is not accepted by the pattern '(.*)'\.$/s,
    says: ({ subject }, value = '', pattern = '') =>
      `${subject} is ${quoted(value)}, which has not the form that is asked for${pattern.length > LONGEST ? '' : ` (${pattern})`}.`,
  },
  {
    engine: /^\[facet '(?:minLength|length)'\].* has a length of '0'/s,
    says: ({ subject }) => `${subject} is empty; it must not be.`,
  },
  {
    engine: /^\[facet '(\w+)'\] The value '(.*)' (.*)$/s,
    says: ({ subject }, facet = '', value = '') =>
      `${subject} is ${quoted(value)}, which is beyond the limit set for it (${facet}).`,
  },
  {
    engine: /^'(.*)' is not a valid value of the (?:local )?(?:atomic|list|union) type(?: '(.*)')?\.$/s,
    says: ({ subject }, value = '', type = '') => wrongType(subject, value, type),
  },
  {
    engine: /^Character content other than whitespace is not allowed/,
    says: ({ element }) =>
      `${element} holds text of its own; only elements may stand in it, and the text in those.`,
  },
  {
    engine: /^Character content is not allowed/,
    says: ({ element }) => `${element} holds text; it must be empty.`,
  },
  {
    engine: /^Element content is not allowed, because the content type is empty/,
    says: ({ element }) => `${element} holds an element; it must be empty.`,
  },
  {
    engine: /^Element content is not allowed/,
    says: ({ element }) => `${element} holds an element; only text may stand in it.`,
  },
  {
    engine: /^Duplicate key-sequence \[(.*)\]/s,
    says: ({ element }, key = '') => `${element} repeats ${inQuotes(key)}, which may occur once only.`,
  },
  {
    engine: /^No match found for key-sequence \[(.*)\]/s,
    says: ({ element }, key = '') => `${element} points to ${inQuotes(key)}, which is nowhere in this file.`,
  },
  {
    engine: /^No matching global (?:element )?declaration available/,
    says: ({ element }) => `${element} is not known to the schema.`,
  },
];
