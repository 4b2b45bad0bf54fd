import {
  type Component,
  type Container,
  countryCode,
  type DigitalCopy,
  isil,
  type Repository,
} from '../../catalogue/component.ts';
import { NAMES, type People } from './agents.ts';
import { DATES, dates } from './dates.ts';
import { at, elementsOf, type Found, named, within } from './found.ts';
import { isId } from './ids.ts';
import { languagesIn } from './languages.ts';
import { PHYSICAL, physicalDescription } from './physical-description.ts';
import { isSeen, lineOf, proseOf, words } from './text.ts';

/** Elements of which each is a general note of the unit. */
const NOTES = new Set(['didnote', 'note', 'footnote']);

/** Reads a `did` into the unit; what has no field of its own goes to the general notes. */
export function identify(unit: Component, did: Found, people: People): void {
  const unitIds = named(did, 'unitid');
  setIdentifiers(unit, unitIds);
  unit.title = lines(named(did, 'unittitle'), '; ');
  unit.dates = dates(within(did, DATES));
  setPhysicalDescription(unit, did);
  for (const element of named(did, 'origination')) unit.creators.push(...makers(element, people));
  const keeper = repositoryOf(named(did, 'repository')[0], unitIds);
  if (keeper !== undefined) unit.repository = keeper;
  const abstract = lines(named(did, 'abstract'), '\n\n');
  if (abstract !== '') unit.abstract = abstract;
  const languages = named(did, 'langmaterial');
  if (languages.length > 0) setLanguages(unit, languages);
  for (const element of named(did, 'container')) addContainer(unit, element);
  const physicalLocation = lines(named(did, 'physloc'), '; ');
  if (physicalLocation !== '') unit.physicalLocation = physicalLocation;
  for (const element of within(did, COPIES)) unit.digitalCopies.push(...digitalCopy(element));
  for (const child of did.children)
    if (typeof child !== 'string' && NOTES.has(child.name)) addNote(unit, child);
}

/** The texts of elements that tell one thing together; blank where there is none. */
function lines(elements: readonly Found[], between: string): string {
  const [first] = elements;
  if (first === undefined || elements.length === 1) return first === undefined ? '' : words(first);
  return elements
    .map(words)
    .filter((text) => text !== '')
    .join(between);
}

function addNote(unit: Component, element: Found): void {
  const text = proseOf(element);
  const head = lineOf(at(element, 'head')) ?? element.attributes.label;
  if (text !== undefined) unit.generalNotes.push({ ...(isSeen(head) && { head }), text });
}

function setPhysicalDescription(unit: Component, did: Found): void {
  const elements = elementsOf(did).filter(({ name }) => PHYSICAL.has(name));
  if (elements.length === 0) return;
  const { extents, physicalDescription: inWords } = physicalDescription(elements);
  unit.extents = extents;
  if (inWords !== undefined) unit.physicalDescription = inWords;
}

function setLanguages(unit: Component, elements: readonly Found[]): void {
  const { languages, languageNote } = languagesIn(elements);
  unit.languages = languages;
  if (languageNote !== undefined) unit.languageNote = languageNote;
}

/** The first that is of no special type is the reference code: ISAD(G) 3.1.1. */
function setIdentifiers(unit: Component, elements: readonly Found[]): void {
  if (elements.length === 0) return;
  const said = elements.flatMap((element) => {
    const { localtype, type = localtype } = element.attributes;
    const value = words(element);
    return value === '' ? [] : [{ type: isSeen(type) ? type : undefined, value }];
  });
  const main = said.find(({ type }) => type === undefined) ?? (said.length === 1 ? said[0] : undefined);
  if (main !== undefined) unit.referenceCode = main.value;
  unit.otherIdentifiers = said
    .filter((one) => one !== main)
    .map(({ type = 'other', value }) => ({ type, value }));
}

/** Who keeps the unit; its codes may stand with the reference code. */
function repositoryOf(element: Found | undefined, unitIds: readonly Found[]): Repository | undefined {
  if (element === undefined) return undefined;
  const names = within(element, NAMES);
  const own = { ...element, children: element.children.filter((child) => typeof child === 'string') };
  const name = names.map(words).find((text) => text !== '') ?? (words(own) || words(element));
  if (name === '') return undefined;
  const lines = elementsOf(element, 'address').flatMap((address) => elementsOf(address).map(words));
  const address = lines.filter((text) => text !== '');
  const codes = unitIds.map(({ attributes }) => attributes);
  const country = codes
    .map(({ countrycode }) => countrycode)
    .find((one) => one !== undefined && countryCode.safeParse(one).success);
  const code = [
    ...codes.map(({ repositorycode }) => repositorycode),
    ...names.map(({ attributes }) => attributes.authfilenumber),
  ].find((one) => one !== undefined && isil.safeParse(one).success);
  return {
    name,
    ...(address.length > 0 && { address }),
    ...(country !== undefined && { country }),
    ...(code !== undefined && { isil: code }),
  };
}

/** Who made the unit: names, or a text that is one. */
function makers(element: Found, people: People): Component['creators'] {
  const names = within(element, NAMES);
  const text = words({ ...element, children: element.children.filter((child) => typeof child === 'string') });
  const links =
    names.length > 0 ? names : text === '' ? [] : [{ ...element, name: 'name', children: [text] }];
  return links.map(people.link).filter((link) => link !== undefined);
}

function addContainer(unit: Component, element: Found): void {
  const { localtype, type = localtype, label, id: own, parent, containerid } = element.attributes;
  const number = words(element) || containerid;
  if (!isSeen(number)) return;
  // EAD 2002 allows a type of one word only; its label may have it in full.
  const inFull = label !== undefined && label.replace(/\s+/g, '-') === type ? label : type;
  const said = isSeen(inFull) ? inFull : isSeen(label) ? label : 'container';
  const container: Container = { type: said, number };
  if (isId(own)) container.id = own;
  const inside = parent?.trim().split(/\s+/)[0];
  if (isId(inside)) container.parent = inside;
  unit.containers.push(container);
}

const COPIES: ReadonlySet<string> = new Set(['dao', 'daoloc']);
const ORIGINS = ['derived', 'borndigital', 'unknown'] as const;

function digitalCopy(element: Found): DigitalCopy[] {
  const { attributes } = element;
  const href = attributes.href ?? attributes['xlink:href'];
  if (!isSeen(href)) return [];
  const title = attributes.linktitle ?? attributes['xlink:title'];
  const origin = attributes.daotype ?? attributes['xlink:role'];
  const described = at(element, 'descriptivenote') ?? at(element, 'daodesc');
  const note = described && proseOf(described);
  return [
    {
      file: fileOf(href),
      origin:
        ORIGINS.find((known) => known === origin) ??
        (attributes.daotype === undefined ? 'derived' : 'unknown'),
      ...(isSeen(title) && { title }),
      ...(note !== undefined && { note }),
    },
  ];
}

/** An address as it is; a path with the letters that were percent-encoded in it. */
function fileOf(href: string): string {
  if (/^[a-z][a-z0-9+.-]*:\/\//i.test(href)) return href;
  try {
    return decodeURIComponent(href);
  } catch {
    return href;
  }
}
