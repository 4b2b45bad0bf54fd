import { z } from 'zod';
import { agentType } from './agent.ts';
import { checkSettings } from './check-settings.ts';
import { countryCode, isil, level, repository } from './component.ts';
import { dayOrInstant } from './day-or-instant.ts';
import { LANGUAGE_CODES } from './finding-aid.ts';
import { FORMAT_NAMES } from './format-names.ts';
import { handOverSettings } from './hand-over-settings.ts';
import { housingSettings } from './housing-settings.ts';
import { listSettings } from './list-settings.ts';
import { line, prose } from './text.ts';

/** By what things can be put into groups. */
export const groupKey = z.enum([
  'kind',
  'person',
  'place',
  'occasion',
  'decade',
  'year',
  'language',
  'series',
]);
/** By what things can be put in order. */
export const orderKey = z.enum(['date', 'title', 'number', 'kind', 'person', 'place', 'occasion', 'list']);
/** By what the things of a group can be put into folders; `group` is one folder for the group. */
export const folderKey = z.enum(['year', 'decade', 'occasion', 'person', 'folder', 'group']);

const prefix = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u, 'must be letters and digits, such as QF');

const dateText = z.union([line, z.number().transform(String)]);

const year = z.number().int().min(0).max(2999);

/** A person, family or organisation as `collection.yaml` names it. */
const personSettings = z.strictObject({
  name: line.describe('As the list writes it'),
  type: agentType.default('person'),
  heading: line.optional().describe('The form for headings; made from the name and the dates if not given'),
  also: z.array(line).default([]).describe('Other ways in which the list writes the name'),
  born: dateText.optional(),
  died: dateText.optional(),
  birthplace: line.optional(),
  deathplace: line.optional(),
  places: z.array(line).default([]).describe('Where they lived'),
  occupations: z.array(line).default([]),
  relations: z
    .array(z.strictObject({ to: line, as: line }))
    .default([])
    .describe('Other people of this file, and what they were to this one'),
  history: prose.optional(),
  source: line.optional(),
  identifier: line.optional(),
});

const conditions = z.union([
  prose.transform((statement): { statement: string; until?: string | undefined } => ({ statement })),
  z.strictObject({ statement: prose, until: dateText.optional() }),
]);

const eachOnce = (words: readonly string[]) => new Set(words).size === words.length;

/** How to sort: broad groups, the order within, and folders. */
const sortSettings = z.strictObject({
  groups: z.array(groupKey).min(1).refine(eachOnce, 'must not hold the same word twice').default(['kind']),
  order: z
    .array(orderKey)
    .min(1)
    .refine(eachOnce, 'must not hold the same word twice')
    .default(['date', 'title']),
  folders: folderKey.default('year'),
});

/** What can be said of one group, under the title it is given. */
const groupSettings = z.strictObject({
  title: line.optional().describe('A title of your own for the group'),
  scope: prose.optional(),
  arrangement: prose.optional(),
  history: prose.optional(),
  access: conditions.optional(),
});

/** Who will receive the collection, and how they want it. */
const recipientSettings = z.strictObject({
  name: line,
  address: z.array(line).default([]),
  isil: isil.optional(),
  country: countryCode.optional(),
  formats: z
    .array(z.enum(FORMAT_NAMES))
    .min(1)
    .optional()
    .describe('What export writes if nothing else is asked for'),
  languageCodes: z
    .enum(LANGUAGE_CODES)
    .default('iso639-2b')
    .describe('The list from which codes in EAD3 are taken'),
  separator: z
    .string()
    .min(1, 'must not be empty')
    .max(3, 'must be three letters at most')
    .default(' | ')
    .describe('Between several values in one cell of dublin-core.csv'),
  recordsDownTo: level.optional().describe('How far down every unit gets a record in Dublin Core'),
  prefix: prefix.optional().describe('What reference codes begin with there'),
});

/** `collection.yaml`: the collection as a whole, in plain words. */
export const settings = z.strictObject({
  title: line,
  prefix: prefix.describe('What every reference code begins with'),
  separator: z
    .string()
    .regex(/^[/.:_-]$/, 'must be one of / . : - _')
    .default('/'),
  creators: z.array(line).default([]),
  dates: dateText.optional().describe('Worked out from the list if not given'),
  extent: line.optional().describe('Measured on the shelf, such as 2 boxes (0.8 linear feet)'),
  repository,
  dateOrder: z
    .enum(['day-month', 'month-day'])
    .optional()
    .describe('How a date in figures is meant: 5/6/1962 is 5 June, or May 6'),
  earliestYear: year.optional().describe('Before it, no date of the list is to be expected'),
  latestYear: year.optional().describe('After it, no date of the list is to be expected'),
  language: line.default('eng').describe('In which the description is written'),
  languages: z.array(line).default([]).describe('Of the material; those of the list are added'),
  abstract: prose.optional(),
  history: prose.optional(),
  custody: prose.optional(),
  acquisition: prose.optional(),
  scope: prose.optional(),
  appraisal: prose.optional(),
  accruals: prose.optional(),
  arrangement: prose.optional(),
  access: conditions.optional(),
  use: prose.optional(),
  legalStatus: prose.optional(),
  physical: prose.optional(),
  technical: prose.optional(),
  findingAids: prose.optional(),
  originals: prose.optional(),
  copies: prose.optional(),
  related: prose.optional(),
  separated: prose.optional(),
  publications: prose.optional(),
  citation: prose.optional(),
  processing: prose.optional(),
  notes: z.array(prose).default([]),
  subjects: z.array(line).default([]),
  author: line.optional().describe('Who wrote the description'),
  described: z
    .union([z.string(), z.number().transform(String)])
    .pipe(dayOrInstant)
    .optional()
    .describe('When the description was made, as 2026 or 2026-05-14; today if not given'),
  sources: z.array(line).default([]),
  rights: line.optional().describe('Rights in the description itself, such as CC0 1.0 Universal'),
  rightsAddress: line.optional(),
  people: z.array(personSettings).default([]),
  list: listSettings.prefault({}),
  sort: sortSettings.prefault({}),
  housing: housingSettings.prefault({}),
  check: checkSettings.prefault({}),
  recipient: recipientSettings.optional(),
  handOver: handOverSettings.prefault({}),
  groups: z
    .record(line, groupSettings)
    .default({})
    .describe('What to say of single groups, under their titles'),
});

export type GroupKey = z.infer<typeof groupKey>;
export type OrderKey = z.infer<typeof orderKey>;
export type FolderKey = z.infer<typeof folderKey>;
export type SortSettings = z.infer<typeof sortSettings>;
export type PersonSettings = z.infer<typeof personSettings>;
export type Settings = z.infer<typeof settings>;
