import type { z } from 'zod';
import { capitalised } from './capitalised.ts';
import { nearest } from './nearest.ts';
import { quoted } from './quoted.ts';
import { keysAt } from './schema-at.ts';

/** One thing wrong with a value, in plain words, and the path of the entry it is about. */
interface SaidIssue {
  path: readonly PropertyKey[];
  found: string;
  advice?: string;
}

type Issue = z.core.$ZodIssue;

/** What a schema found wrong with a value, in plain words: an entry for each thing to mend. */
export function sayIssues(issues: readonly Issue[], schema: z.core.$ZodType, data: unknown): SaidIssue[] {
  return issues
    .flatMap((issue) => sayIssue(issue, schema, data))
    .map((said) => ({ ...said, found: capitalised(said.found) }));
}

function sayIssue(issue: Issue, schema: z.core.$ZodType, data: unknown): SaidIssue[] {
  const { path } = issue;
  const name = sayPath(path);
  const value = valueAt(data, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey([...path, key], keysAt(schema, path)));
    case 'invalid_type':
      return [{ path, ...wrongType(name, issue.expected, value) }];
    case 'invalid_value':
      return [{ path, ...notOneOf(name, issue.values.map(String), value) }];
    case 'invalid_union':
      return sayUnion(issue.errors, path, schema, data);
    case 'invalid_key':
      return [
        {
          path,
          found: `A name in ${sayPath(path.slice(0, -1))} ${issue.issues[0]?.message ?? 'cannot be used'}.`,
        },
      ];
    case 'too_small':
      if (Array.isArray(value))
        return [
          { path, found: `${name} is an empty list.`, advice: 'Write at least one entry, or leave it out.' },
        ];
      return [
        {
          path,
          found: `${name} must be ${issue.inclusive ? 'at least' : 'above'} ${issue.minimum}; ${quotedValue(value)} was read.`,
        },
      ];
    case 'too_big':
      return [{ path, found: `${name} must be at most ${issue.maximum}; ${quotedValue(value)} was read.` }];
    default: {
      const read = typeof value === 'string' && value.trim() !== '' ? `; ${quotedValue(value)} was read` : '';
      return [{ path, found: `${name} ${issue.message}${read}.` }];
    }
  }
}

/** Where an entry may have several forms, the one that its value is nearest to decides what is wrong with it. */
function sayUnion(
  errors: readonly (readonly Issue[])[],
  path: readonly PropertyKey[],
  schema: z.core.$ZodType,
  data: unknown,
): SaidIssue[] {
  const fits = errors.find(
    (branch) => !branch.some((issue) => issue.code === 'invalid_type' && issue.path.length === 0),
  );
  const branch = fits ?? errors[0] ?? [];
  return sayIssues(
    branch.map((issue) => ({ ...issue, path: [...path, ...issue.path] })),
    schema,
    data,
  );
}

function unknownKey(path: readonly PropertyKey[], known: readonly string[]): SaidIssue {
  const near = nearest(String(path.at(-1)), known);
  const advice = near === undefined ? `Known here are ${known.join(', ')}.` : `Is “${near}” meant?`;
  return { path, found: `${sayPath(path)} is not known.`, advice };
}

function wrongType(name: string, expected: string, value: unknown): Pick<SaidIssue, 'found' | 'advice'> {
  if (value === undefined || value === null)
    return { found: `${name} must be there, and is missing or empty.` };
  const read = sayValue(value);
  if (expected === 'string') {
    const advice =
      typeof value === 'object' ? 'Write it as one text.' : `Put it between quotation marks: "${value}".`;
    return { found: `${name} must be text, but ${read} was read.`, advice };
  }
  if (expected === 'array') {
    const advice = 'Write each entry on a line of its own, with a dash before it.';
    return { found: `${name} must be a list, but ${read} was read.`, advice };
  }
  if (expected === 'object' || expected === 'record') {
    return { found: `${name} must be a group of entries (name: value), but ${read} was read.` };
  }
  const wanted = expected === 'int' || expected === 'number' ? 'whole number' : expected;
  return { found: `${name} must be a ${wanted}, but ${read} was read.` };
}

function notOneOf(
  name: string,
  allowed: readonly string[],
  value: unknown,
): Pick<SaidIssue, 'found' | 'advice'> {
  if (value === undefined || value === null) return wrongType(name, 'string', value);
  const near = nearest(String(value), allowed);
  const list = allowed.length === 1 ? `“${allowed[0]}”` : `one of ${allowed.join(', ')}`;
  const meant = near === undefined ? {} : { advice: `Is “${near}” meant?` };
  return { found: `${name} must be ${list}; ${quotedValue(value)} was read.`, ...meant };
}

/** `“name” in entry 2 of “people”` for the path people.1.name. */
export function sayPath(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'The whole';
  const said = path.map((part) =>
    typeof part === 'number' ? `entry ${part + 1} of` : `“${String(part)}” in`,
  );
  return said.reverse().join(' ').replace(/ in$/, '');
}

function sayValue(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'number') return `the number ${value}`;
  if (typeof value === 'boolean') return `the yes or no of “${value}”`;
  return typeof value === 'object' ? 'a group of entries' : quotedValue(value);
}

const quotedValue = (value: unknown): string =>
  quoted(typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value)));

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}
