import { countryCode, isil, type Repository } from '../../catalogue/component.ts';
import { dayOrInstant } from '../../catalogue/day-or-instant.ts';
import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import { at, elementsOf, type Found, within } from './found.ts';
import { languagesIn } from './languages.ts';
import { isSeen, lineOf, paragraphsOf, proseOf, words } from './text.ts';

/** What a finding aid that says nothing of it is given, since the model must have something there. */
export interface Missing {
  /** The keeper of the collection, for the agency. */
  keeper?: Repository;
  /** The title of the collection, for that of the finding aid. */
  title: string;
  /** YYYY, YYYY-MM or YYYY-MM-DD: of events none of which tells its date. */
  date: string;
}

/** Reads `control` of EAD3: the record of the description itself. */
export function readControl(control: Found, missing: Missing): Control {
  const agency = at(control, 'maintenanceagency');
  const conventions = elementsOf(control, 'conventiondeclaration').flatMap((element) => {
    const abbreviation = lineOf(at(element, 'abbr'));
    const citation = lineOf(at(element, 'citation')) ?? abbreviation;
    return citation === undefined ? [] : [{ ...(abbreviation !== undefined && { abbreviation }), citation }];
  });
  const events = within(control, new Set(['maintenanceevent']));
  const date = events.map(dayOf).find((day) => day !== undefined) ?? missing.date;
  const history = events.map((one) => eventOf(one, date));
  const { languages } = languagesIn([{ ...control, children: elementsOf(control, 'languagedeclaration') }]);
  return {
    recordId: lineOf(at(control, 'recordid')) ?? 'unnumbered',
    ...fileDescription(control, missing),
    maintenanceStatus: choice(['new', 'revised', 'derived'], at(control, 'maintenancestatus')) ?? 'revised',
    publicationStatus: choice(PUBLICATION_STATUS, at(control, 'publicationstatus')),
    maintenanceAgency: agencyOf(agency, missing),
    languages: languages.length > 0 ? languages : [UNDETERMINED],
    conventions: conventions.length > 0 ? conventions : [NO_RULES],
    rights: elementsOf(control, 'rightsdeclaration').flatMap((element) => {
      const citation = at(element, 'citation');
      const note = at(element, 'descriptivenote');
      const statement = note && proseOf(note);
      const said = lineOf(citation) ?? lineOf(at(element, 'abbr')) ?? statement;
      const address = citation?.attributes.href;
      return said === undefined
        ? []
        : [
            {
              citation: said,
              ...(isSeen(address) && { address }),
              ...(statement !== undefined && { statement }),
            },
          ];
    }),
    sources: within(control, new Set(['source'])).flatMap((source) => lineOf(source) ?? []),
    history: history.length > 0 ? history : [unknownEvent(missing)],
  };
}

export const PUBLICATION_STATUS = ['inprocess', 'approved', 'published'] as const;

/** ISO 639-2 for what nobody has determined. */
export const UNDETERMINED = { code: 'und', name: 'Undetermined' };
/** ISAD(G) 3.7.2 asks for the rules of description. */
export const NO_RULES = { citation: 'Not stated' };

/** An event of which nothing is told. */
export const unknownEvent = ({ date }: Missing): MaintenanceEvent => ({
  ...{ type: 'unknown', date, agent: NOBODY, agentType: 'human' },
});

/** In place of the name of somebody whom the file does not name. */
export const NOBODY = 'not stated';

function choice<Name extends string>(names: readonly Name[], element: Found | undefined): Name | undefined {
  return names.find((name) => name === element?.attributes.value);
}

/** The date in a paragraph of `publicationstmt` that says nothing else: it is when the finding aid was published. */
export function dateAloneIn(paragraph: Found): string[] {
  const date = at(paragraph, 'date');
  const said = words(paragraph);
  return date !== undefined && said !== '' && said === words(date) ? [said] : [];
}

/** `filedesc`, which both versions of EAD have. */
export function fileDescription(
  holder: Found,
  { title: ofCollection }: Missing,
): Pick<
  Control,
  'title' | 'subtitle' | 'author' | 'edition' | 'publisher' | 'publisherAddress' | 'publicationDate'
> {
  const filedesc = at(holder, 'filedesc');
  const titles = at(filedesc, 'titlestmt');
  const publication = at(filedesc, 'publicationstmt');
  const all = (element: Found | undefined, name: string, between: string) =>
    (element === undefined
      ? []
      : elementsOf(element, name)
          .map(words)
          .filter((text) => text !== '')
    ).join(between) || undefined;
  const subtitle = all(titles, 'subtitle', '. ');
  const author = all(titles, 'author', '; ');
  const edition = lineOf(at(filedesc, 'editionstmt'));
  const publisher = all(publication, 'publisher', '; ');
  const dates = publication === undefined ? [] : elementsOf(publication, 'p').flatMap(dateAloneIn);
  const date = all(publication, 'date', ', ') ?? (dates.join(', ') || undefined);
  const lines = publication === undefined ? [] : within(publication, new Set(['addressline'])).map(words);
  const address = lines.filter((text) => text !== '');
  return {
    title: all(titles, 'titleproper', '; ') ?? ofCollection,
    ...(subtitle !== undefined && { subtitle }),
    ...(author !== undefined && { author }),
    ...(edition !== undefined && { edition }),
    ...(publisher !== undefined && { publisher }),
    ...(address.length > 0 && { publisherAddress: address }),
    ...(date !== undefined && { publicationDate: date }),
  };
}

function agencyOf(agency: Found | undefined, { keeper }: Missing): Repository {
  const name = lineOf(at(agency, 'agencyname')) ?? keeper?.name ?? 'Not stated';
  const code = lineOf(at(agency, 'agencycode'));
  const note = at(agency, 'descriptivenote');
  const address = note === undefined ? [] : paragraphsOf(note);
  const country = agency?.attributes.countrycode;
  return {
    name,
    ...(address.length > 0 && { address }),
    ...(countryCode.safeParse(country).success && { country }),
    ...(isil.safeParse(code).success && { isil: code }),
  };
}

const TYPES = ['created', 'revised', 'derived', 'updated', 'unknown'] as const;

function dayOf(event: Found): string | undefined {
  const time = at(event, 'eventdatetime');
  return dayIn([time?.attributes.standarddatetime, time && words(time)]);
}

/** @param otherwise the date of an event of which none can be told */
function eventOf(element: Found, otherwise: string): MaintenanceEvent {
  const description = elementsOf(element, 'eventdescription')
    .map(words)
    .filter((text) => text !== '')
    .join('\n\n');
  return {
    type: choice(TYPES, at(element, 'eventtype')) ?? 'unknown',
    date: dayOf(element) ?? otherwise,
    agent: lineOf(at(element, 'agent')) ?? NOBODY,
    agentType: choice(['human', 'machine'], at(element, 'agenttype')) ?? 'human',
    ...(description !== '' && { description }),
  };
}

/** The first of these texts that is a date, or the day or year that stands first in one of them. */
export function dayIn(texts: readonly (string | undefined)[]): string | undefined {
  const said = texts.filter((text) => text !== undefined);
  const isDate = (text: string | undefined) => dayOrInstant.safeParse(text).success;
  return (
    said.find(isDate) ??
    said.map((text) => /\b\d{4}-\d\d-\d\d\b/.exec(text)?.[0]).find(isDate) ??
    said.map((text) => /\b(?:19|20)\d\d\b/.exec(text)?.[0]).find(isDate)
  );
}
