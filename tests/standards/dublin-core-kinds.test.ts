import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Component } from '../../src/catalogue/component.ts';
import { DCMI_TYPES, KIND_TYPES } from '../../src/export/dublin-core/dcmi-types.ts';
import { dcmiType, typeOfTerm } from '../../src/export/dublin-core/type-of-unit.ts';
import { KINDS } from '../../src/kinds/kinds.ts';
import { describeWithSchemas } from '../support/outside.ts';

describe('the DCMI types of kinds', () => {
  it('has a row for every kind in the table of kinds, each once, and none besides', () => {
    const rows = KIND_TYPES.map(({ kind }) => kind);
    const kinds = KINDS.map(({ one }) => one);
    expect(
      kinds.filter((kind) => !rows.includes(kind)),
      'These kinds need a row in src/export/dublin-core/dcmi-types.ts, with null where no single type is surely right',
    ).toEqual([]);
    expect(
      rows.filter((kind, at) => !kinds.includes(kind) || rows.indexOf(kind) < at),
      'These rows of src/export/dublin-core/dcmi-types.ts are of no kind in src/kinds/kinds.ts, or there twice',
    ).toEqual([]);
  });

  it('names a source in every row', () => {
    expect(KIND_TYPES.filter(({ source }) => source.trim() === '')).toEqual([]);
  });

  // Source: DCMI Type Vocabulary, the examples in the definitions, from memory.
  it.each<[string, string[]]>([
    ['Text', ['books', 'letters', 'newspapers', 'manuscripts']],
    ['StillImage', ['paintings', 'drawings', 'plans', 'maps', 'photos']],
    ['MovingImage', ['home movies', 'videos']],
    ['Sound', ['sound recording', 'cassettes']],
    ['PhysicalObject', ['quilts', 'tools']],
  ])('%s: %j', (type, terms) => {
    expect(terms.map((term) => typeOfTerm(term))).toEqual(terms.map(() => type));
  });

  it('give no type to what is no known kind, or of several sorts', () => {
    for (const term of ['scrapbooks', 'postcards', 'digital files', 'oddments']) {
      expect(typeOfTerm(term)).toBeUndefined();
    }
  });
});

const unit = (level: Component['level'], ...genres: string[]) =>
  dcmiType({
    ...{
      id: 'x',
      level,
      title: 'x',
      otherIdentifiers: [],
      dates: [],
      extents: [],
      creators: [],
      languages: [],
    },
    ...{ containers: [], digitalCopies: [], generalNotes: [], people: [], children: [] },
    accessPoints: genres.map((term) => ({ type: 'genre' as const, term })),
  }).map((value) => (typeof value === 'string' ? value : value.text));

describe('the DCMI type of a unit', () => {
  it('is that of its kinds where they agree', () => {
    expect(unit('item', 'letters')).toEqual(['Text']);
    expect(unit('file', 'photographs', 'negatives')).toEqual(['StillImage']);
  });

  it('is Collection for groups, and for a file of several kinds or none', () => {
    expect(unit('series', 'letters')).toEqual(['Collection']);
    expect(unit('collection')).toEqual(['Collection']);
    expect(unit('file', 'letters', 'photographs')).toEqual(['Collection']);
    expect(unit('file')).toEqual(['Collection']);
  });

  it('is left out for an item of which it cannot be told', () => {
    expect(unit('item')).toEqual([]);
    expect(unit('item', 'postcards')).toEqual([]);
    expect(unit('item', 'letters', 'photographs')).toEqual([]);
  });
});

describeWithSchemas('the DCMI Type Vocabulary', (schemas) => {
  it('has the terms that dcmitype.xsd lists', () => {
    const source = readFileSync(join(schemas, 'dublin-core', 'dcmitype.xsd'), 'utf8');
    const listed = [...source.matchAll(/enumeration value="(\w+)"/g)].map(([, name]) => name);
    expect([...DCMI_TYPES].sort()).toEqual(listed.sort());
  });
});
