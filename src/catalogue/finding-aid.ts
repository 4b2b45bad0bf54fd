import { z } from 'zod';
import { agent } from './agent.ts';
import { component, countryCode, isil, languageUse, level, repository } from './component.ts';
import { dayOrInstant } from './day-or-instant.ts';
import { kept } from './kept.ts';
import { line, prose } from './text.ts';

/** One event in the life of the description: ISAD(G) 3.7.3. */
const maintenanceEvent = z.strictObject({
  type: z.enum(['created', 'revised', 'derived', 'updated', 'unknown']),
  date: dayOrInstant,
  agent: line,
  agentType: z.enum(['human', 'machine']),
  description: prose.optional(),
});

/** The control of the description: ISAD(G) 3.7, DACS 8. */
export const control = z.strictObject({
  recordId: line,
  title: line.describe('Of the finding aid, not of the collection'),
  subtitle: line.optional(),
  author: line.optional(),
  edition: line.optional(),
  publisher: line.optional(),
  publisherAddress: z.array(line).optional(),
  publicationDate: line.optional(),
  maintenanceStatus: z.enum(['new', 'revised', 'derived']).default('new'),
  publicationStatus: z
    .enum(['inprocess', 'approved', 'published'])
    .optional()
    .describe('Not stated where a finding aid that was taken in does not state it'),
  maintenanceAgency: repository,
  languages: z.array(languageUse).min(1).describe('Of the description; the first is its main language'),
  conventions: z
    .array(z.strictObject({ abbreviation: line.optional(), citation: line }))
    .min(1)
    .describe('ISAD(G) 3.7.2, DACS 8.1.4'),
  rights: z
    .array(z.strictObject({ citation: line, address: line.optional(), statement: prose.optional() }))
    .default([])
    .describe('Rights in the description itself: DACS 8.2'),
  sources: z.array(line).default([]).describe('Sources used for the description: DACS 8.1.2'),
  history: z.array(maintenanceEvent).min(1),
  kept: kept.optional().describe('The finding aid as found, without its description of the material'),
});

/** Lists of codes of languages among which a recipient may choose. */
export const LANGUAGE_CODES = ['iso639-2b', 'iso639-3'] as const;

/** Who is to receive the collection, as far as a writer has to know. */
export const recipient = z.strictObject({
  name: line,
  address: z.array(line).optional(),
  isil: isil.optional(),
  country: countryCode.optional(),
  languageCodes: z.enum(LANGUAGE_CODES).default('iso639-2b'),
  separator: z.string().default(' | '),
  recordsDownTo: level.optional(),
});

/** The hub: what every reader makes and every writer takes. */
export const findingAid = z.strictObject({
  format: z.literal('kinfonds finding aid'),
  version: z.literal(1),
  control,
  recipient: recipient.optional(),
  people: z.array(agent).default([]),
  collection: component,
});

export type Control = z.infer<typeof control>;
export type MaintenanceEvent = z.infer<typeof maintenanceEvent>;
export type Recipient = z.infer<typeof recipient>;
export type FindingAid = z.infer<typeof findingAid>;
