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
import { at, byName, elementsOf, type Found, within } from './found.ts';
import { isId } from './ids.ts';
import { languagesIn } from './languages.ts';
import { PHYSICAL, physicalDescription } from './physical-description.ts';
import { isSeen, lineOf, proseOf, words } from './text.ts';

/** What a `did` says of a unit; what has no field of its own goes to the general notes. */
export type Identified = Pick<
  Component,
  'otherIdentifiers' | 'dates' | 'extents' | 'creators' | 'languages' | 'containers' | 'digitalCopies'
> &
  Partial<
    Pick<
      Component,
      | 'referenceCode'
      | 'title'
      | 'physicalDescription'
      | 'repository'
      | 'abstract'
      | 'languageNote'
      | 'physicalLocation'
    >
  > & { notes: Component['generalNotes'] };

/** Elements whose names say what they hold; a `did` is asked for each of them by name. */
const NOTES = new Set(['didnote', 'note', 'footnote']);

/** Reads a `did`. */
export function identified(did: Found, people: People): Identified {
  const named = byName(did);
  const lines = (name: string, between: string) =>
    named(name)
      .map(words)
      .filter((text) => text !== '')
      .join(between) || undefined;
  const title = lines('unittitle', '; ');
  const abstract = lines('abstract', '\n\n');
  const physicalLocation = lines('physloc', '; ');
  const keeper = repositoryOf(named('repository')[0], named('unitid'));
  return {
    ...identifiers(named('unitid')),
    ...(title !== undefined && { title }),
    dates: dates(within(did, DATES)),
    ...physicalDescription(elementsOf(did).filter(({ name }) => PHYSICAL.has(name))),
    creators: named('origination').flatMap((element) => makers(element, people)),
    ...(keeper !== undefined && { repository: keeper }),
    ...(abstract !== undefined && { abstract }),
    ...languagesIn(named('langmaterial')),
    containers: named('container').flatMap(container),
    ...(physicalLocation !== undefined && { physicalLocation }),
    digitalCopies: within(did, COPIES).flatMap(digitalCopy),
    notes: elementsOf(did)
      .filter(({ name }) => NOTES.has(name))
      .flatMap((element) => {
        const text = proseOf(element);
        const head = lineOf(at(element, 'head')) ?? element.attributes.label;
        return text === undefined ? [] : [{ ...(isSeen(head) && { head }), text }];
      }),
  };
}

/** The first that is of no special type is the reference code: ISAD(G) 3.1.1. */
function identifiers(elements: readonly Found[]): Pick<Component, 'otherIdentifiers' | 'referenceCode'> {
  const said = elements.flatMap((element) => {
    const { localtype, type = localtype } = element.attributes;
    const value = words(element);
    return value === '' ? [] : [{ type: isSeen(type) ? type : undefined, value }];
  });
  const main = said.find(({ type }) => type === undefined) ?? (said.length === 1 ? said[0] : undefined);
  return {
    ...(main !== undefined && { referenceCode: main.value }),
    otherIdentifiers: said
      .filter((one) => one !== main)
      .map(({ type = 'other', value }) => ({ type, value })),
  };
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

function container(element: Found): Container[] {
  const { localtype, type = localtype, label, id: own, parent, containerid } = element.attributes;
  const number = words(element) || containerid;
  if (!isSeen(number)) return [];
  // EAD 2002 allows a type of one word only; its label may have it in full.
  const inFull = label !== undefined && label.replace(/\s+/g, '-') === type ? label : type;
  const inside = parent?.trim().split(/\s+/)[0];
  return [
    {
      ...(isId(own) && { id: own }),
      type: [inFull, label].find(isSeen) ?? 'container',
      number,
      ...(isId(inside) && { parent: inside }),
    },
  ];
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
