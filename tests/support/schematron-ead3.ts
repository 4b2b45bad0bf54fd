import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { everyElement, type Placed, parseTree, type Tree, textOf } from './xml-tree.ts';

/** What a rule found: the id of its pattern in ead3.sch, the place, and what is wrong, in our words. */
export interface Breach {
  pattern: string;
  path: string;
  problem: string;
}

type LanguageList = 'iso639-1' | 'iso639-2b' | 'iso639-3';

/** The lists of codes that lie beside ead3.sch, read from there. */
export interface CodeLists {
  languages: Readonly<Record<LanguageList, ReadonlySet<string>>>;
  countries: ReadonlySet<string>;
  scripts: ReadonlySet<string>;
}

/** @param folder the folder that holds ead3.sch */
export function readCodeLists(folder: string): CodeLists {
  const elements = (file: string) => everyElement(parseTree(readFileSync(join(folder, file))));
  const attributes = (file: string, name: string) =>
    new Set(elements(file).flatMap(({ element }) => element.attributes[name] ?? []));
  const texts = (file: string, name: string) =>
    new Set(elements(file).flatMap(({ element }) => (element.name === name ? [textOf(element)] : [])));
  return {
    languages: {
      'iso639-1': texts('iso639-1.rdf', 'madsrdf:code'),
      'iso639-2b': texts('iso639-2.rdf', 'madsrdf:code'),
      'iso639-3': attributes('iso_639_3.xml', 'id'),
    },
    countries: attributes('iso_3166.xml', 'alpha_2_code'),
    scripts: attributes('iso_15924.xml', 'alpha_4_code'),
  };
}

// The expressions are our own; a test holds them against those of ead3.sch. Like there, the caret binds to the first
// branch only, so that a prefix may stand in front of the others.
export const ISIL = /(?:^[A-Z]{2}|[a-zA-Z]|[a-zA-Z]{3,4})-[a-zA-Z0-9:/-]{1,11}$/;
const YEAR = '-?[012]\\d{3}';
const MONTH = '(?:0[1-9]|1[0-2])';
const DAY = '(?:0[1-9]|[12]\\d|3[01])';
export const ONE_DATE = new RegExp(`^${YEAR}(?:-?${MONTH}(?:-?${DAY})?)?$`);
const IN_RANGE = `${YEAR}(?:${MONTH}${DAY}|-${MONTH}(?:-${DAY})?)?`;
export const DATE_OR_RANGE = new RegExp(`^${IN_RANGE}(?:/${IN_RANGE})?$`);

const normalizeSpace = (text: string) => text.replace(/[ \t\r\n]+/g, ' ').replace(/^ | $/g, '');

interface Document {
  lists: CodeLists;
  languageList: LanguageList;
  /** Whether control says that repository codes are ISILs. */
  isils: boolean;
  firstDsc: Tree | undefined;
}

/** A rule: which elements it is about, and what is wrong with one, or undefined. */
interface Rule {
  about(element: Tree): boolean;
  wrong(element: Tree, document: Document): string | undefined;
}

const valuesOf = ({ attributes }: Tree, ...names: readonly string[]) =>
  names.flatMap((name) => attributes[name] ?? []);

/** An element that has any of these attributes must satisfy this with each of them. */
const each = (
  names: readonly string[],
  good: (value: string, document: Document) => boolean,
  say: string,
  about: (element: Tree) => boolean = () => true,
): Rule => ({
  about: (element) => about(element) && valuesOf(element, ...names).length > 0,
  wrong: (element, document) => {
    const bad = valuesOf(element, ...names).find((value) => !good(value, document));
    return bad === undefined ? undefined : `${element.name}: "${bad}" ${say}`;
  },
});

const together = (attribute: string, value: string, needed: string): Rule => ({
  about: ({ attributes }) => attributes[attribute] === value,
  wrong: ({ name, attributes }) =>
    normalizeSpace(attributes[needed] ?? '') === ''
      ? `${name}: ${attribute}="${value}" without ${needed}`
      : undefined,
});

const isOneOf =
  (...names: readonly string[]) =>
  ({ name }: Tree) =>
    names.includes(name);

/** The patterns of ead3.sch (EAD3 1.1.1) under their ids; the one about eras has none there. */
const PATTERNS: Readonly<Record<string, readonly Rule[]>> = {
  langcodes: [
    each(
      ['lang', 'langcode'],
      (code, { lists, languageList }) => lists.languages[languageList].has(normalizeSpace(code)),
      'is not in the list of language codes',
    ),
  ],
  countrycode: [
    each(
      ['countrycode'],
      (code, { lists }) => lists.countries.has(normalizeSpace(code)),
      'is not in ISO 3166-1',
    ),
  ],
  scriptcode: [
    each(['script', 'scriptcode'], (code, { lists }) => lists.scripts.has(code), 'is not in ISO 15924'),
  ],
  repositorycode: [
    each(['repositorycode'], (code, { isils }) => !isils || ISIL.test(code), 'is no ISIL (ISO 15511)'),
  ],
  agencycode: [
    {
      about: isOneOf('agencycode'),
      wrong: (element) => {
        const code = normalizeSpace(textOf(element));
        return ISIL.test(code) ? undefined : `agencycode: "${code}" is no ISIL (ISO 15511)`;
      },
    },
  ],
  'co-occurrence-constraints': [
    together('level', 'otherlevel', 'otherlevel'),
    together('physdescstructuredtype', 'otherphysdescstructuredtype', 'otherphysdescstructuredtype'),
    together('daotype', 'otherdaotype', 'otherdaotype'),
    together('dsctype', 'otherdsctype', 'otherdsctype'),
    together('relationtype', 'otherrelationtype', 'otherrelationtype'),
    together('listtype', 'unordered', 'mark'),
    together('listtype', 'ordered', 'numeration'),
  ],
  dates: [
    each(
      ['normal'],
      (date) => DATE_OR_RANGE.test(date),
      'is no date or pair of dates',
      isOneOf('unitdate', 'date'),
    ),
    each(
      ['notbefore', 'notafter', 'standarddate'],
      (date) => ONE_DATE.test(date),
      'is no date',
      isOneOf('datesingle', 'fromdate', 'todate'),
    ),
  ],
  cardinality: [
    {
      about: isOneOf('dsc'),
      wrong: (element, { firstDsc }) => (element === firstDsc ? undefined : 'dsc: there is one before it'),
    },
  ],
  era: [
    {
      about: ({ attributes }) => attributes.era !== undefined,
      // As written there: the era is ce, or the text of the element is bce.
      wrong: (element) =>
        element.attributes.era === 'ce' || textOf(element) === 'bce'
          ? undefined
          : 'era is neither ce nor bce',
    },
  ],
};

/** Names of the patterns, for tests that go through them. */
export const PATTERN_IDS: readonly string[] = Object.keys(PATTERNS);

const isLanguageList = (value: string | undefined): value is LanguageList =>
  value === 'iso639-1' || value === 'iso639-2b' || value === 'iso639-3';

/** Runs all patterns over a document; as in Schematron, an element meets only the first rule of a pattern that is about it. */
export function breachesIn(xml: string | Uint8Array, lists: CodeLists): Breach[] {
  const placed = everyElement(parseTree(xml));
  const control = placed.find(({ element }) => element.name === 'control')?.element;
  const { langencoding, repositoryencoding } = control?.attributes ?? {};
  const document: Document = {
    lists,
    languageList: isLanguageList(langencoding) ? langencoding : 'iso639-2b',
    isils: repositoryencoding === 'iso15511',
    firstDsc: placed.find(({ element }) => element.name === 'dsc')?.element,
  };
  return Object.entries(PATTERNS).flatMap(([pattern, rules]) =>
    placed.flatMap(({ element, path }: Placed) => {
      const problem = rules.find((rule) => rule.about(element))?.wrong(element, document);
      return problem === undefined ? [] : [{ pattern, path, problem }];
    }),
  );
}
