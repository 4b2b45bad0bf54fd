// Without the names of countries, which nothing here asks for.
import countries from 'i18n-iso-countries/index.js';
import { z } from 'zod';
import { agentLink } from './agent.ts';
import { kept } from './kept.ts';
import { id, line, prose } from './text.ts';

/** Levels of description: ISAD(G) 3.1.4, with the names that EAD gives them. */
export const level = z.enum([
  'collection',
  'fonds',
  'subfonds',
  'recordgrp',
  'subgrp',
  'class',
  'series',
  'subseries',
  'file',
  'item',
  'otherlevel',
]);

/** A statement of date: ISAD(G) 3.1.3, DACS 2.4. Without `edtf` it is text only ("undated", a phrase nobody can resolve). */
const dateStatement = z.strictObject({
  type: z.enum(['inclusive', 'bulk']).default('inclusive'),
  expression: line.describe('As shown to readers, in the form of DACS 2.4: 1952 May 14'),
  edtf: line.optional().describe('The same in EDTF (ISO 8601-2): 1952-05-14'),
  written: line.optional().describe('What the list says, where that differs: 14.5.52'),
  note: line.optional().describe('What was assumed in reading it'),
});

/** A statement of extent: ISAD(G) 3.1.5, DACS 2.5. */
export const extent = z.strictObject({
  type: z
    .enum(['materialtype', 'carrier', 'spaceoccupied'])
    .describe('What is counted: things, what they are kept on or in, or room on the shelf'),
  coverage: z.enum(['whole', 'part']).describe('Whether this counts all of the unit or a part of it'),
  quantity: z.number().positive(),
  unit: line.describe('letters, boxes, linear feet'),
  approximate: z.boolean().optional(),
  dimensions: line.optional().describe('20 × 25 cm'),
  facets: z.array(line).optional().describe('Technique, material, colour'),
});

/** A container as it stands on the shelf; `parent` is the `id` of the container it stands in. */
export const container = z.strictObject({
  id: id.optional(),
  type: line.describe('box, folder, oversize folder'),
  number: line,
  parent: id.optional(),
});

/** A digital copy, or a thing that was digital from the start. */
const digitalCopy = z.strictObject({
  file: line.describe('Path below the catalogue folder with forward slashes, or an address'),
  origin: z.enum(['derived', 'borndigital', 'unknown']).default('derived'),
  title: line.optional(),
  note: prose.optional(),
  mediaType: line.optional().describe('image/tiff'),
  sha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .optional(),
});

/** A language, with the script it is written in: codes of ISO 639-2/B and ISO 15924, and the name for readers. */
export const languageUse = z.strictObject({
  code: z.string().regex(/^[a-z]{3}$/, 'must be a code of three letters, such as eng or nor'),
  name: line,
  script: z
    .strictObject({ code: z.string().regex(/^[A-Z][a-z]{3}$/, 'must be a code such as Latn'), name: line })
    .optional(),
});

/** An access point other than an agent. */
const accessPoint = z.strictObject({
  type: z.enum(['subject', 'place', 'genre', 'occupation', 'function', 'title']),
  term: line,
  source: line.optional().describe('Code of the vocabulary: aat, lcsh, tgn, local'),
  identifier: line.optional(),
});

/** Conditions governing access: ISAD(G) 3.4.1, DACS 4.1. */
export const accessConditions = z.strictObject({
  statement: prose,
  until: line.optional().describe('The day or year in which the restriction ends, as EDTF'),
  restricted: z.boolean().default(false),
});

/** ISO 3166-1. */
export const countryCode = z
  .string()
  .regex(/^[A-Z]{2}$/, 'must be a code of two capital letters (ISO 3166), such as US')
  .refine(
    (code) => countries.isValid(code),
    'is not a country of ISO 3166, which has GB for the United Kingdom',
  );

/** ISO 15511. */
export const isil = z
  .string()
  .regex(
    /^(?:[A-Z]{2}|[A-Za-z]|[A-Za-z]{3,4})-[A-Za-z0-9:/-]{1,11}$/,
    'must be an ISIL (ISO 15511), such as US-CtY',
  );

/** Who keeps the collection: DACS 2.2. */
export const repository = z.strictObject({
  name: line,
  address: z.array(line).optional(),
  country: countryCode.optional(),
  isil: isil.optional(),
});

/** One unit of description at any level, with the units it is made of. */
const componentFields = z.strictObject({
  id: id.describe('Unique in the finding aid, and the same from one export to the next'),
  level,
  otherLevel: line.optional().describe('The name of the level, where `level` is otherlevel'),
  referenceCode: line.optional(),
  otherIdentifiers: z.array(z.strictObject({ type: line, value: line })).default([]),
  title: line,
  dates: z.array(dateStatement).default([]),
  extents: z.array(extent).default([]),
  physicalDescription: line.optional().describe('What the counted extents do not say'),
  creators: z.array(agentLink).default([]),
  repository: repository.optional(),
  abstract: prose.optional(),
  languages: z.array(languageUse).default([]),
  languageNote: prose.optional(),
  containers: z.array(container).default([]),
  physicalLocation: line.optional().describe('Where it is, beyond its container'),
  digitalCopies: z.array(digitalCopy).default([]),

  biographicalHistory: prose.optional(),
  custodialHistory: prose.optional(),
  acquisition: prose.optional(),
  scopeAndContent: prose.optional(),
  appraisal: prose.optional(),
  accruals: prose.optional(),
  arrangement: prose.optional(),
  accessConditions: accessConditions.optional(),
  useConditions: prose.optional(),
  legalStatus: prose.optional(),
  physicalCharacteristics: prose.optional(),
  technicalRequirements: prose.optional(),
  otherFindingAids: prose.optional(),
  originals: prose.optional(),
  copies: prose.optional(),
  relatedMaterial: prose.optional(),
  separatedMaterial: prose.optional(),
  publications: prose.optional(),
  preferredCitation: prose.optional(),
  processing: prose.optional().describe("The archivist's note: who described this, and how"),
  generalNotes: z.array(z.strictObject({ head: line.optional(), text: prose })).default([]),

  people: z.array(agentLink).default([]).describe('Agents as access points'),
  accessPoints: z.array(accessPoint).default([]),

  kept: kept
    .optional()
    .describe('As found in a finding aid that was taken in, where the fields do not hold all of it'),
});

/** One unit of description at any level, with the units it is made of. */
export const component = componentFields.extend({
  get children() {
    return z.array(component).default([]);
  },
});

export type Level = z.infer<typeof level>;
export type DateStatement = z.infer<typeof dateStatement>;
export type Extent = z.infer<typeof extent>;
export type Container = z.infer<typeof container>;
export type DigitalCopy = z.infer<typeof digitalCopy>;
export type LanguageUse = z.infer<typeof languageUse>;
export type AccessPoint = z.infer<typeof accessPoint>;
export type AccessConditions = z.infer<typeof accessConditions>;
export type Repository = z.infer<typeof repository>;
export type Component = z.infer<typeof component>;
