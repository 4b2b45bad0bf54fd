import { CatalogueError, type Finding } from './finding.ts';
import { type FindingAid, findingAid } from './finding-aid.ts';
import { once } from './once.ts';
import { sayIssues } from './say-issue.ts';
import { fieldsOf } from './schema-at.ts';

/** The file in which an export keeps the finding aid in this project's own format. */
export const FINDING_AID_FILE = 'finding-aid.json';

// In UTF-16 units: small parts are joined into pieces of about this size.
const PIECE = 1 << 16;

/**
 * A finding aid as JSON, in pieces: a unit of description and each of its fields on a line of its own. Keys come in
 * the order of the model, whatever their order in `aid`; what is undefined or an empty list is left out. The same
 * finding aid always gives the same bytes.
 */
export function* findingAidToJson(aid: FindingAid): Generator<string> {
  let text = '';
  // Many units have these in common, as one and the same list.
  const shared = once((schema: Schema) => once((value: unknown) => json(value, schema)));
  const write: Write = (key, value, schema) =>
    IN_COMMON.has(key) ? shared(schema)(value) : json(value, schema);
  for (const part of object(aid, findingAid, '', write)) {
    text += part;
    if (text.length < PIECE) continue;
    yield text;
    text = '';
  }
  yield `${text}\n`;
}

type Schema = Parameters<typeof fieldsOf>[0];
type Values = Readonly<Record<string, unknown>>;
/** Writes the value of a field. */
type Write = (key: string, value: unknown, schema: Schema) => string;

const IN_COMMON = new Set(['dates', 'extents', 'languages', 'creators']);
// Their objects have fields of so much text that each field needs a line of its own.
const ON_LINES = new Set(['collection', 'control', 'recipient', 'people', 'children']);

const label = once((key: string) => `${JSON.stringify(key)}: `);

const isNothing = (value: unknown) => value === undefined || (Array.isArray(value) && value.length === 0);

/** An object on several lines. The units of description are parts of their own: they need not be in memory together. */
function* object(values: Values, schema: Schema, indent: string, write: Write): Generator<string> {
  const inner = `${indent}  `;
  let text = '{';
  let between = '\n';
  for (const [key, field] of fieldsOf(schema)) {
    const value = values[key];
    if (isNothing(value)) continue;
    text += between + inner + label(key);
    between = ',\n';
    if (!ON_LINES.has(key)) text += write(key, value, field);
    else if (Array.isArray(value)) {
      let before = '[\n';
      for (const one of value) {
        yield `${text}${before}${inner}  `;
        yield* object(one, field, `${inner}  `, write);
        text = '';
        before = ',\n';
      }
      text = `\n${inner}]`;
    } else {
      yield text;
      yield* object(value as Values, field, inner, write);
      text = '';
    }
  }
  yield between === '\n' ? '{}' : `${text}\n${indent}}`;
}

/** A value on one line. */
function json(value: unknown, schema: Schema): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  let text = '';
  let between = '';
  if (Array.isArray(value)) {
    for (const each of value) {
      text += between + json(each, schema);
      between = ', ';
    }
    return `[${text}]`;
  }
  for (const [key, field] of fieldsOf(schema)) {
    const each = (value as Values)[key];
    if (isNothing(each)) continue;
    text += between + label(key) + json(each, field);
    between = ', ';
  }
  return text === '' ? '{}' : `{ ${text} }`;
}

/**
 * Reads a finding aid in this project's own format.
 * @param file the name for messages
 * @throws CatalogueError with everything that is wrong with it
 */
export function findingAidFromJson(text: string, file: string = FINDING_AID_FILE): FindingAid {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new CatalogueError([notJson(text, file, error)]);
  }
  const later = laterVersion(data);
  const place = { file };
  if (later !== undefined) {
    const found = `The file is in version ${later} of the format; this program reads version 1.`;
    const advice = 'Read it with a later release of kinfonds.';
    throw new CatalogueError([{ rule: 'finding-aid.version', weight: 'must', place, found, advice }]);
  }
  const parsed = findingAid.safeParse(data);
  if (parsed.success) return parsed.data;
  throw new CatalogueError(
    sayIssues(parsed.error.issues, findingAid, data).map(
      ({ path: _, ...issue }): Finding => ({ rule: 'finding-aid.entry', weight: 'must', place, ...issue }),
    ),
  );
}

function laterVersion(data: unknown): number | undefined {
  if (typeof data !== 'object' || data === null || !('version' in data)) return undefined;
  return typeof data.version === 'number' && data.version > 1 ? data.version : undefined;
}

function notJson(text: string, file: string, error: unknown): Finding {
  const position = /at position (\d+)/.exec(String(error))?.[1];
  const line = position === undefined ? {} : { line: text.slice(0, Number(position)).split('\n').length };
  const found =
    text.trim() === '' ? 'The file is empty.' : 'The file is not whole JSON: it breaks off or holds a slip.';
  const advice = 'Export the finding aid once more, or mend the file by hand.';
  return { rule: 'finding-aid.json', weight: 'must', place: { file, ...line }, found, advice };
}
