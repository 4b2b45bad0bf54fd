import { CatalogueError, type Finding } from './finding.ts';
import { type FindingAid, findingAid } from './finding-aid.ts';
import { sayIssues } from './say-issue.ts';
import { fieldsOf } from './schema-at.ts';

/** The file in which an export keeps the finding aid in this project's own format. */
export const FINDING_AID_FILE = 'finding-aid.json';

// In UTF-16 units: small parts are joined into pieces of about this size.
const PIECE = 1 << 16;

/**
 * A finding aid as JSON, in pieces. Keys come in the order of the model, whatever their order in `aid`; what is
 * undefined or an empty list is left out. The same finding aid always gives the same bytes.
 */
export function* findingAidToJson(aid: FindingAid): Generator<string> {
  let piece = '';
  for (const part of object(aid, findingAid, '')) {
    piece += part;
    if (piece.length < PIECE) continue;
    yield piece;
    piece = '';
  }
  yield `${piece}\n`;
}

type Schema = Parameters<typeof fieldsOf>[0];
type Values = Readonly<Record<string, unknown>>;

/** Units of description are written one by one; everything smaller is one part. */
function* object(values: Values, schema: Schema, indent: string): Generator<string> {
  const inner = `${indent}  `;
  let before = '{\n';
  for (const [key, field] of fieldsOf(schema)) {
    const value = values[key];
    if (value === undefined || (Array.isArray(value) && value.length === 0)) continue;
    const start = `${before}${inner}${JSON.stringify(key)}: `;
    before = ',\n';
    if (key === 'children') {
      yield `${start}[`;
      let between = '\n';
      for (const child of value as Values[]) {
        yield `${between}${inner}  `;
        yield* object(child, field, `${inner}  `);
        between = ',\n';
      }
      yield `\n${inner}]`;
    } else if (key === 'collection') {
      yield start;
      yield* object(value as Values, field, inner);
    } else yield start + json(value, field, inner);
  }
  yield before === '{\n' ? '{}' : `\n${indent}}`;
}

function json(value: unknown, schema: Schema, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    return `[\n${value.map((each) => inner + json(each, schema, inner)).join(',\n')}\n${indent}]`;
  }
  const lines = fieldsOf(schema).flatMap(([key, field]) => {
    const each = (value as Values)[key];
    if (each === undefined || (Array.isArray(each) && each.length === 0)) return [];
    return [`${inner}${JSON.stringify(key)}: ${json(each, field, inner)}`];
  });
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n${indent}}`;
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
