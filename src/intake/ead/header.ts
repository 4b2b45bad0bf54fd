import { countryCode, isil, type Repository } from '../../catalogue/component.ts';
import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import {
  dateAloneIn,
  dayIn,
  fileDescription,
  type Missing,
  NO_RULES,
  NOBODY,
  PUBLICATION_STATUS,
  UNDETERMINED,
  unknownEvent,
} from './control.ts';
import { at, elementsOf, type Found } from './found.ts';
import { languageInWords, languagesIn } from './languages.ts';
import { isSeen, lineOf, words } from './text.ts';

/** Reads `eadheader` of EAD 2002: the record of the description itself. */
export function readHeader(header: Found, missing: Missing): Control {
  const eadid = at(header, 'eadid');
  const profile = at(header, 'profiledesc');
  const usage = at(profile, 'langusage');
  const { languages } = languagesIn(usage === undefined ? [] : [usage]);
  const notes = (type: string) =>
    elementsOf(at(header, 'filedesc', 'notestmt') ?? NOTHING, 'note').find(
      (note) => note.attributes.type === type,
    );
  const creation = at(profile, 'creation');
  const changes = elementsOf(at(header, 'revisiondesc') ?? NOTHING, 'change');
  const days = [...(creation === undefined ? [] : [dayOfCreation(creation)]), ...changes.map(dayOfChange)];
  const date = days.find((day) => day !== undefined) ?? missing.date;
  const history = [
    ...(creation === undefined ? [] : [created(creation, date)]),
    ...changes.map((change) => changed(change, date)),
  ];
  const sources = notes('sources');
  return {
    recordId: [lineOf(eadid), eadid?.attributes.identifier].find(isSeen) ?? 'unnumbered',
    ...fileDescription(header, missing),
    maintenanceStatus: changes.length > 0 ? 'revised' : 'new',
    publicationStatus: PUBLICATION_STATUS.find((one) => one === header.attributes.findaidstatus),
    maintenanceAgency: agencyOf(eadid, notes('maintenance agency'), header, missing),
    languages: languages.length > 0 ? languages : [languageInWords(usage) ?? UNDETERMINED],
    conventions: conventions(at(profile, 'descrules')),
    rights: rightsOf(at(header, 'filedesc', 'publicationstmt')),
    sources: sources === undefined ? [] : elementsOf(sources).flatMap((source) => lineOf(source) ?? []),
    history: history.length > 0 ? history : [unknownEvent(missing)],
  };
}

const NOTHING: Found = { name: '', attributes: {}, children: [] };

/** The name of the agency stands in a note; else it is the publisher, or whoever keeps the collection. */
function agencyOf(
  eadid: Found | undefined,
  note: Found | undefined,
  header: Found,
  missing: Missing,
): Repository {
  const { countrycode, mainagencycode } = eadid?.attributes ?? {};
  const code = isil.safeParse(mainagencycode).success ? mainagencycode : undefined;
  const said = lineOf(note);
  const [name, ...address] =
    said === undefined ? [] : said.replace(code === undefined ? '' : ` (${code})`, '').split(', ');
  const publisher = lineOf(at(header, 'filedesc', 'publicationstmt', 'publisher'));
  return {
    name: name || (missing.keeper?.name ?? publisher ?? 'Not stated'),
    ...(address.length > 0 && { address }),
    ...(countryCode.safeParse(countrycode).success && { country: countrycode }),
    ...(code !== undefined && { isil: code }),
  };
}

/** `descrules` is one text; rules that it tells apart are parted by semicolons, each with its abbreviation at the end. */
function conventions(element: Found | undefined): Control['conventions'] {
  const said = lineOf(element);
  if (said === undefined) return [NO_RULES];
  // A semicolon more, or one after a blank, parts nothing.
  const rules = said.split('; ').filter(isSeen);
  if (rules.length === 0) return [NO_RULES];
  return rules.map((rule) => {
    const [, citation, abbreviation] = /^(.+?) ?\( ?([^()\s]+) ?\)$/.exec(rule) ?? [];
    return citation === undefined || abbreviation === undefined
      ? { citation: rule }
      : { abbreviation, citation };
  });
}

function rightsOf(statement: Found | undefined): Control['rights'] {
  if (statement === undefined) return [];
  return elementsOf(statement, 'p').flatMap((paragraph) => {
    if (dateAloneIn(paragraph).length > 0) return [];
    const citation = lineOf(paragraph);
    const address = at(paragraph, 'extref')?.attributes['xlink:href'];
    return citation === undefined ? [] : [{ citation, ...(isSeen(address) && { address }) }];
  });
}

const DEEDS: Readonly<Record<string, MaintenanceEvent['type']>> = {
  ...{
    Created: 'created',
    Revised: 'revised',
    Derived: 'derived',
    Updated: 'updated',
    'Worked on': 'unknown',
  },
};
const DEED = /^(Created|Revised|Derived|Updated|Worked on) by (the program )?(.+)$/s;

const dayOfCreation = (creation: Found) => dayIn([...datesIn(creation), words(creation)]);
const dayOfChange = (change: Found) => dayIn(datesIn(change));

function datesIn(element: Found): (string | undefined)[] {
  const date = at(element, 'date');
  return [date && words(date), date?.attributes.normal];
}

/** "Created by Ada Quill, 2026. In haste." and any other sentence, which then is the description of the event. */
function created(element: Found, otherwise: string): MaintenanceEvent {
  const date = at(element, 'date');
  const day = dayOfCreation(element) ?? otherwise;
  const [first, second, ...rest] = element.children;
  const [, type, program, agent] = DEED.exec(typeof first === 'string' ? first : '') ?? [];
  if (type === undefined || agent === undefined || second !== date || !/, $/.test(agent))
    return event('created', day, lineOf(element));
  const description = words({ ...element, children: rest }).replace(/^\. ?/, '');
  return {
    type: DEEDS[type] ?? 'unknown',
    date: day,
    agent: agent.slice(0, -2),
    agentType: program === undefined ? 'human' : 'machine',
    ...(description !== '' && { description }),
  };
}

/** A later change. */
function changed(element: Found, otherwise: string): MaintenanceEvent {
  const day = dayOfChange(element) ?? otherwise;
  const text = elementsOf(element, 'item').map(words).join(' ');
  const [, type, program, said] = DEED.exec(text) ?? [];
  if (type === undefined || said === undefined) return event('revised', day, text || lineOf(element));
  const [agent = said, ...description] = said.split(/\. /);
  return {
    type: DEEDS[type] ?? 'unknown',
    date: day,
    agent,
    agentType: program === undefined ? 'human' : 'machine',
    ...(description.length > 0 && { description: description.join('. ') }),
  };
}

const event = (
  type: MaintenanceEvent['type'],
  date: string,
  description: string | undefined,
): MaintenanceEvent => ({
  ...{ type, date, agent: NOBODY, agentType: 'human' },
  ...(description !== undefined && { description }),
});
