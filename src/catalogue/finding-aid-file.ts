import { CatalogueError, type Finding } from './finding.ts';
import { type FindingAid, findingAid } from './finding-aid.ts';
import { once } from './once.ts';
import { sayIssues } from './say-issue.ts';
import { fieldsOf } from './schema-at.ts';

/** The file in which an export keeps the finding aid in this project's own format. */
const FINDING_AID_FILE = 'finding-aid.json';

// In UTF-16 units: small parts are joined into pieces of about this size.
const PIECE = 1 << 16;

/**
 * A finding aid as JSON, in pieces. Keys come in the order of the model, whatever their order in `aid`; what is
 * undefined or an empty list is left out. The same finding aid always gives the same bytes.
 */
export function* findingAidToJson(aid: FindingAid): Generator<string> {
  let parts: string[] = [];
  let length = 0;
  // Many units have these in common, as one and the same list.
  const shared = once((indent: string) =>
    once((schema: Schema) => once((value: unknown) => json(value, schema, indent))),
  );
  const write: Write = (key, value, schema, indent) =>
    IN_COMMON.has(key) ? shared(indent)(schema)(value) : json(value, schema, indent);
  for (const part of object(aid, findingAid, '', write)) {
    parts.push(part);
    length += part.length;
    if (length < PIECE) continue;
    yield parts.join('');
    parts = [];
    length = 0;
  }
  parts.push('\n');
  yield parts.join('');
}

type Schema = Parameters<typeof fieldsOf>[0];
type Values = Readonly<Record<string, unknown>>;
/** Writes the value of a field. */
type Write = (key: string, value: unknown, schema: Schema, indent: string) => string;

const IN_COMMON = new Set(['dates', 'extents', 'languages', 'creators']);

const label = once((key: string) => `${JSON.stringify(key)}: `);

const isNothing = (value: unknown) => value === undefined || (Array.isArray(value) && value.length === 0);

/** The units of description are parts of their own, so that they need not be in memory together. */
function* object(values: Values, schema: Schema, indent: string, write: Write): Generator<string> {
  const inner = `${indent}  `;
  let text = '{\n';
  let between = '';
  for (const [key, field] of fieldsOf(schema)) {
    const value = values[key];
    if (isNothing(value)) continue;
    text += between + inner + label(key);
    between = ',\n';
    if (key === 'children') {
      yield `${text}[\n`;
      let before = `${inner}  `;
      for (const child of value as Values[]) {
        yield before;
        yield* object(child, field, `${inner}  `, write);
        before = `,\n${inner}  `;
      }
      text = `\n${inner}]`;
    } else if (key === 'collection') {
      yield text;
      yield* object(value as Values, field, inner, write);
      text = '';
    } else text += write(key, value, field, inner);
  }
  yield between === '' ? '{}' : `${text}\n${indent}}`;
}

function json(value: unknown, schema: Schema, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  let text = '';
  let between = '\n';
  if (Array.isArray(value)) {
    for (const each of value) {
      text += between + inner + json(each, schema, inner);
      between = ',\n';
    }
    return `[${text}\n${indent}]`;
  }
  for (const [key, field] of fieldsOf(schema)) {
    const each = (value as Values)[key];
    if (isNothing(each)) continue;
    text += between + inner + label(key) + json(each, field, inner);
    between = ',\n';
  }
  return text === '' ? '{}' : `{${text}\n${indent}}`;
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
