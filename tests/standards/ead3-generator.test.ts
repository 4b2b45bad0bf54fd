import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { forbiddenCharacter } from '../../src/catalogue/text.ts';
import { edtfDate } from '../support/arbitrary-dates.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { nastyProse } from '../support/hostile-text.ts';

/** A fixed seed: these look at what the generator can make, which must not change from run to run. */
const SEED = 1902;
const aids = fc.sample(arbitraryFindingAid({ complete: false }), { numRuns: 400, seed: SEED });

/** What is kept of a finding aid that was taken in is somebody's XML: the tests of taking in make it by doing so. */
const isMade = (path: string) => !/\.kept(?:\.|$)/.test(path);

describe('the generator of finding aids', () => {
  it('makes what the model accepts as it is', () => {
    for (const aid of aids) expect(findingAid.parse(aid)).toEqual(aid);
  });

  it('makes every field of the model', () => {
    const made = new Set(aids.flatMap((aid) => [...pathsIn(aid)]));
    expect([...pathsOf(findingAid)].filter((path) => isMade(path) && !made.has(path))).toEqual([]);
  });

  it('makes every value that the model lists', () => {
    const made = new Set(aids.flatMap((aid) => [...pathsIn(aid, true)]));
    expect([...listedValuesOf(findingAid)].filter((value) => isMade(value) && !made.has(value))).toEqual([]);
  });

  it('makes chains ten parts deep, lists ten parts long, and collections without parts', () => {
    type Part = { children: readonly Part[] };
    const depth = ({ children }: Part): number => 1 + Math.max(0, ...children.map(depth));
    expect(Math.max(...aids.map(({ collection }) => depth(collection)))).toBeGreaterThan(10);
    expect(Math.max(...aids.map(({ collection }) => collection.children.length))).toBeGreaterThan(9);
    expect(aids.some(({ collection }) => collection.children.length === 0)).toBe(true);
  });

  it('makes text that is clean of what XML forbids and holds everything else that is hard', () => {
    const texts = fc.sample(nastyProse, { numRuns: 3000, seed: SEED });
    expect(texts.filter((text) => forbiddenCharacter(text) !== undefined || text.trim() === '')).toEqual([]);
    const hard = [
      /</,
      /&amp;/,
      /]]>/,
      /"/,
      /'/,
      /\r(?!\n)/,
      /\t/,
      /^\s/,
      /\s$/,
      /\n\n/,
      /\p{M}\p{M}/u,
      /\p{Emoji}\u200D/u,
    ];
    for (const sort of [
      ...hard,
      /\p{Script=Hebrew}/u,
      /\p{Script=Arabic}/u,
      /\u202E/,
      /[\u{10000}-\u{10FFFF}]/u,
    ]) {
      expect([sort, texts.some((text) => sort.test(text))]).toEqual([sort, true]);
    }
    expect(Math.max(...texts.map(({ length }) => length))).toBeGreaterThan(10_000);
  });

  // Source: the edtf package, a reference reader of ISO 8601-2; CHECKS names where it departs from the standard.
  it('makes dates that are EDTF', async () => {
    // The package comes without types; a name that is not a literal keeps the compiler from asking for them.
    const { parse }: { parse(text: string): unknown } = await import('edtf' as string);
    for (const date of fc.sample(edtfDate, { numRuns: 2000, seed: SEED })) {
      if (date === '196X~' || date === '../..') continue;
      expect(() => parse(date), date).not.toThrow();
    }
  });
});

/** The paths of all that is in a value, such as `collection.children.dates.edtf`; with `values`, texts after them. */
function* pathsIn(value: unknown, values = false, path = ''): Generator<string> {
  if (Array.isArray(value)) {
    for (const entry of value) yield* pathsIn(entry, values, path);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, entry] of Object.entries(value)) {
      // Parts have the fields of the collection: their paths are one and the same.
      const below = key === 'children' ? path : `${path}.${key}`;
      yield below;
      yield* pathsIn(entry, values, below);
    }
  } else if (values) yield `${path}=${value}`;
}

interface Definition {
  type: string;
  shape?: Record<string, Schema>;
  innerType?: Schema;
  element?: Schema;
  entries?: Record<string, string>;
}
interface Schema {
  _zod: { def: unknown };
}

/** The paths of all that a schema declares, the same way. */
function* pathsOf(schema: Schema, path = ''): Generator<string> {
  for (const [name, field] of fieldsOf(schema)) {
    if (name === 'children') continue;
    yield `${path}.${name}`;
    yield* pathsOf(field, `${path}.${name}`);
  }
}

function* listedValuesOf(schema: Schema, path = ''): Generator<string> {
  const { type, entries } = innermost(schema);
  if (type === 'enum') for (const value of Object.values(entries ?? {})) yield `${path}=${value}`;
  for (const [name, field] of fieldsOf(schema)) {
    if (name !== 'children') yield* listedValuesOf(field, `${path}.${name}`);
  }
}

const fieldsOf = (schema: Schema) => Object.entries(innermost(schema).shape ?? {});

/** What is left of a schema when defaults, options and lists are taken off. */
function innermost(schema: Schema): Definition {
  const definition = schema._zod.def as Definition;
  const inner = definition.innerType ?? definition.element;
  return inner === undefined ? definition : innermost(inner);
}
