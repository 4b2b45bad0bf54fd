import type { AgentLink } from '../../catalogue/agent.ts';
import type {
  AccessConditions,
  AccessPoint,
  Component,
  DigitalCopy,
  Extent,
} from '../../catalogue/component.ts';
import { displayDate } from '../../dates/index.ts';
import { decimal } from '../ead/decimal.ts';
import { hrefOf } from '../href.ts';
import { machineCreated, machineDates, span, temporal, wordsOfCreated, wordsOfDates } from './date-values.ts';
import { dcmiType } from './type-of-unit.ts';
import { type About, identifierOf, type Value } from './value.ts';

/** What a role says of a link among the access points: DCMI terms, contributor, subject, rightsHolder. MARC relators. */
const HOLDERS = new Set(['copyright holder', 'cph', 'rights holder']);
const DEPICTED = new Set(['depicted', 'dpc', 'subject', 'associated name', 'asn']);

/** Whoever is named without a role is what the unit is about, as far as anybody can tell. */
function partOf({ role }: AgentLink): 'contributor' | 'subject' | 'holder' {
  const word = role?.trim().toLowerCase();
  if (word !== undefined && HOLDERS.has(word)) return 'holder';
  return word === undefined || DEPICTED.has(word) ? 'subject' : 'contributor';
}

const named = (part: ReturnType<typeof partOf>) => (unit: Component, about: About) =>
  namesOf(
    unit.people.filter((link) => partOf(link) === part),
    about,
  );

const namesOf = (links: readonly AgentLink[], { nameOf }: About): string[] =>
  links.map(({ agent }) => nameOf(agent)).filter((name) => name !== undefined);

/** DACS 2.5; a size stands behind what has it: `3 photographs (20 × 25 cm)`. */
function extent({ quantity, unit, approximate, dimensions }: Extent): string {
  const counted = `${approximate ? 'approximately ' : ''}${decimal(quantity)} ${unit}`;
  return dimensions === undefined ? counted : `${counted} (${dimensions})`;
}

/** Encoding schemes of DCMI terms (dcterms.xsd) by the code of the vocabulary. */
const SUBJECT_SCHEMES: Readonly<Record<string, string>> = {
  lcsh: 'LCSH',
  mesh: 'MESH',
  ddc: 'DDC',
  lcc: 'LCC',
  udc: 'UDC',
};

const terms = (type: AccessPoint['type'], schemes: Readonly<Record<string, string>>) => (unit: Component) =>
  unit.accessPoints
    .filter((point) => point.type === type)
    .map(({ term, source }): Value => {
      const scheme = Object.hasOwn(schemes, source ?? '') ? schemes[source ?? ''] : undefined;
      return scheme === undefined ? term : { text: term, scheme };
    });

/** An address in square brackets, which only a host of numbers has, is left without a scheme: readers differ on it. */
function address({ file }: DigitalCopy): Value {
  const text = hrefOf(file);
  return /[[\]]/.test(text) ? text : { text, scheme: 'URI' };
}

const bornDigital = (unit: Component, about: About) =>
  copiesOf(unit, about).filter(({ origin }) => origin === 'borndigital');

/** DACS 4.1. */
function conditions({ statement, until }: AccessConditions): string {
  if (until === undefined) return statement;
  const stop = /[.!?]$/.test(statement) ? '' : '.';
  return `${statement}${stop} End of the restriction: ${displayDate(until)}.`;
}

/** The different conditions of the restricted parts of a unit. */
function restrictedParts({ children }: Component): string[] {
  const found = children.flatMap((child) => [
    ...(child.accessConditions?.restricted ? [conditions(child.accessConditions)] : []),
    ...restrictedParts(child),
  ]);
  return [...new Set(found)];
}

/** Records of Dublin Core are made to be harvested: they do not point to the copy of a thing that is closed. */
const copiesOf = ({ digitalCopies }: Component, { isClosed }: About): readonly DigitalCopy[] =>
  isClosed ? [] : digitalCopies;

/**
 * How the values of Dublin Core are made of a unit where a field does not go there as it stands. Each is named by a
 * row of the crosswalk. An empty list means that the unit has nothing to say.
 */
export const CONVERSIONS = {
  referenceCode: ({ referenceCode }) => (referenceCode === undefined ? [] : [referenceCode]),
  idWithoutCode: ({ id, referenceCode }) => (referenceCode === undefined ? [id] : []),
  otherIdentifiers: ({ otherIdentifiers }) => otherIdentifiers.map(({ type, value }) => `${value} (${type})`),
  // EAD 2002 Tag Library, crosswalk to Dublin Core (from memory): the finding aid's own identifier names the whole too.
  recordId: (_, { parent, recordId }) => (parent === undefined ? [recordId] : []),
  parent: (_, { parent }) => (parent === undefined ? [] : [identifierOf(parent)]),

  machineDates,
  wordsOfDates,
  span,
  machineCreated,
  wordsOfCreated,
  temporal,

  dcmiType,
  extents: ({ extents }) => extents.map(extent),
  languages: ({ languages }) => languages.map(({ code }) => ({ text: code, scheme: 'ISO639-2' })),

  creators: ({ creators }, about) => namesOf(creators, about),
  contributors: named('contributor'),
  namesAsSubjects: named('subject'),
  rightsHolders: named('holder'),
  rightsHoldersInWords: (unit, about) => named('holder')(unit, about).map((name) => `Rights holder: ${name}`),

  access: (unit, { forPart }) => {
    if (unit.accessConditions !== undefined) return [conditions(unit.accessConditions)];
    // What is said of the whole does not hold where a part is closed; nor what is so in part, for another part.
    const parts = forPart ? [] : restrictedParts(unit);
    return parts.length === 0 ? [] : [`Restricted in part. ${parts.join(' ')}`];
  },

  notes: ({ generalNotes }) =>
    generalNotes.map(({ head, text }) => (head === undefined ? text : `${head}: ${text}`)),

  subjects: terms('subject', SUBJECT_SCHEMES),
  places: terms('place', { tgn: 'TGN' }),

  // A copy is another resource than the thing it was made of; what was digital from the start is the thing itself.
  copies: (unit, about) =>
    copiesOf(unit, about)
      .filter(({ origin }) => origin !== 'borndigital')
      .map(address),
  bornDigital: (unit, about) => bornDigital(unit, about).map(address),
  mediaTypes: (unit, about) =>
    bornDigital(unit, about).flatMap(({ mediaType }) =>
      mediaType === undefined ? [] : [{ text: mediaType, scheme: 'IMT' }],
    ),
} as const satisfies Readonly<Record<string, (unit: Component, about: About) => readonly Value[]>>;

/** The name of a conversion, as the rows of the crosswalk give it. */
export type Conversion = keyof typeof CONVERSIONS;
