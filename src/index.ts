/**
 * `kinfonds` as a library: what the command line does, without the command line. A finding aid is one value
 * (`FindingAid`) that every reader makes and every writer takes; docs/finding-aid.schema.json describes it as JSON.
 *
 * What is exported here is public and changes only with the version; nothing else can be imported.
 * `examples/own-data.mjs` makes EAD3 of data of one's own with it.
 *
 * @packageDocumentation
 */

// The model: zod schemas, which check a value and say what is wrong with it, and the types that follow from them.

export { type Agent, type AgentLink, agent as agentSchema } from './catalogue/agent.ts';
export type { Catalogue } from './catalogue/catalogue.ts';
export {
  type AccessPoint,
  type Component,
  type Container,
  component as componentSchema,
  type DateStatement,
  type DigitalCopy,
  type Extent,
  type LanguageUse,
  type Level,
  type Repository,
} from './catalogue/component.ts';
export { CatalogueError, type Finding, type Place, sayPlace, type Weight } from './catalogue/finding.ts';
export {
  type Control,
  type FindingAid,
  findingAid as findingAidSchema,
  type Recipient,
} from './catalogue/finding-aid.ts';
export { type Settings, settings as settingsSchema } from './catalogue/settings.ts';
export type { Settled } from './catalogue/settled.ts';
export { COLUMNS, type Column, type Thing } from './catalogue/thing.ts';

// Readers: a catalogue folder, its list, its settings, a finding aid in JSON, in EAD3 or EAD 2002, a date.

export { findingAidFromJson } from './catalogue/finding-aid-file.ts';
export { loadCatalogue } from './catalogue/load.ts';
export { type DateContext, type DateReading, displayDate, readDate } from './dates/index.ts';
export { type TakeInReport, takeIn } from './export/ead/take-in.ts';
export { readSettings } from './intake/collection-yaml.ts';
export { type List, readList } from './intake/list.ts';
export type { Known } from './intake/things.ts';

// From a list to a finding aid.

export type { ToArrange } from './arrange/arrangement.ts';
export { type Arrangement, arrange, arrangement } from './arrange/index.ts';

// Writers: each format as files in memory, or all that are wanted into a folder, validated.

export { FORMAT_NAMES, type FormatName } from './catalogue/format-names.ts';
export { FORMATS, type Pictures } from './export/formats.ts';
export { type Exported, type ExportOptions, type ExportResult, exportFindingAid } from './export/index.ts';
export type { OutFile } from './export/out-file.ts';

// Validation: of EAD3, EAD 2002, EAC-CPF, Dublin Core and DCMI terms by whomever, and of packages.

export { type BagVerdict, type ByteStep, verifyBag } from './handover/bag/index.ts';
export type { SchemaPlaces } from './xml/schema-folders.ts';
export { validateXml, validatorWith } from './xml/validate.ts';
export type { Validation, ValidationMessage } from './xml/validation.ts';
