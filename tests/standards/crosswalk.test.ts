import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { elementsOf, NO_PLACE, type Row, WITHIN } from '../../src/export/crosswalk/row.ts';
import { DACS, ISAD_G } from '../../src/export/crosswalk/standards.ts';
import { CROSSWALK } from '../../src/export/crosswalk.ts';
import { CROSSWALK_FORMATS, type Filled, filledIn } from '../support/filled-places.ts';
import {
  fieldsOfModel,
  fullFindingAid,
  isMarked,
  type Leaf,
  leavesOf,
  withAnother,
} from '../support/full-finding-aid.ts';
import { describeWithSchemas } from '../support/outside.ts';

const rowsOf = (field: string) => CROSSWALK.filter((row) => row.field === field);

const holdsFor = ({ when }: Row, holder: unknown) =>
  Object.entries(when ?? {}).every(([key, value]) => (holder as Record<string, unknown>)[key] === value);

describe('the crosswalk', () => {
  it('has a row for every field of the model, and no row without a field', () => {
    const fields = fieldsOfModel();
    expect(fields.length).toBeGreaterThan(100);
    expect(fields.filter((field) => rowsOf(field).length === 0)).toEqual([]);
    expect(CROSSWALK.map(({ field }) => field).filter((field) => !fields.includes(field))).toEqual([]);
  });

  it('has one row for a field, or one for each value of another field that tells them apart', () => {
    for (const field of new Set(CROSSWALK.map((row) => row.field))) {
      const rows = rowsOf(field).map(({ when }) => JSON.stringify(when ?? {}));
      expect(new Set(rows).size, field).toBe(rows.length);
      if (rows.length > 1) expect(rows, field).not.toContain('{}');
    }
  });

  it('has a row for every element of ISAD(G) and DACS', () => {
    const numbers = (key: 'isadG' | 'dacs') => new Set(CROSSWALK.map((row) => row[key]));
    expect(
      Object.keys(ISAD_G).filter((number) => !numbers('isadG').has(number as keyof typeof ISAD_G)),
    ).toEqual([]);
    expect(Object.keys(DACS).filter((number) => !numbers('dacs').has(number as keyof typeof DACS))).toEqual(
      [],
    );
  });

  it('names no element of Dublin Core as taking part of a value that no row makes', () => {
    for (const targets of ['dc', 'dcterms'] as const) {
      const makes = (row: Row, name: string) => {
        const target = row[targets] as string | Record<string, string>;
        return typeof target === 'string' ? target === name : (target[name] ?? WITHIN) !== WITHIN;
      };
      const names = CROSSWALK.flatMap((row) => elementsOf<string>(row[targets]));
      for (const name of new Set(names))
        expect(
          CROSSWALK.some((row) => makes(row, name)),
          name,
        ).toBe(true);
    }
  });
});

const aid = fullFindingAid();
const leaves = leavesOf(aid);

describe('the finding aid that fills every field', () => {
  it('does so', () => {
    const filled = new Set(leaves.map(({ field }) => field));
    expect(fieldsOfModel().filter((field) => !filled.has(field) && field !== 'component.children[]')).toEqual(
      [],
    );
  });
});

/** Changes that move the text of other fields to another element, or take a whole record away. */
const MOVES = new Set([
  ...['component.level', 'component.dates[].type', 'component.accessPoints[].type', 'agent.type'],
  ...['component.creators[].agent', 'component.people[].agent', 'component.people[].role'],
  ...['component.digitalCopies[].origin', 'agent.relations[].agent'],
]);

describe.each(CROSSWALK_FORMATS)('the column $column, held against what is written', (format) => {
  const before = filledIn(aid, format);

  it.each(CROSSWALK.filter(({ field }) => field !== 'component.children[]'))('$field $when', (row) => {
    const places = format.placesOf(row);
    const own = leaves.filter(({ field, holder }) => field === row.field && holdsFor(row, holder));
    expect(own.length).toBeGreaterThan(0);
    const found = own.map((leaf) => ({ leaf, at: placesOfLeaf(leaf) }));
    // A row that names places is true, and one that says "no place" is as well.
    expect(found.some(({ at }) => at.length > 0)).toBe(places.length > 0);
    if (MOVES.has(row.field)) return;
    for (const { leaf, at } of found) {
      expect([leaf.path.join('.'), at.filter((path) => !places.includes(path))]).toEqual([
        leaf.path.join('.'),
        [],
      ]);
    }
  });

  /** Where the text of a leaf stands, or what changes with it. */
  function placesOfLeaf(leaf: Leaf): string[] {
    if (isMarked(leaf)) {
      return before.filter(({ text }) => text.includes(`${leaf.value}`)).map(({ path }) => path);
    }
    return changed(before, filledIn(withAnother(aid, leaf), format));
  }
});

/** The paths at which two documents differ. */
function changed(before: readonly Filled[], after: readonly Filled[]): string[] {
  const counts = new Map<string, number>();
  const add = ({ path, text }: Filled, by: number) => {
    const key = JSON.stringify([path, text]);
    counts.set(key, (counts.get(key) ?? 0) + by);
  };
  for (const filled of before) add(filled, 1);
  for (const filled of after) add(filled, -1);
  const different = [...counts].filter(([, count]) => count !== 0).map(([key]) => `${JSON.parse(key)[0]}`);
  return [...new Set(different)];
}

// Source: dcterms.xsd of 2008-02-11, whose substitution groups say which term refines which element. A record in DCMI
// terms can be read as simple Dublin Core by putting each element for the terms that refine it ("dumb-down").
describeWithSchemas('the columns Dublin Core and DCMI terms', (schemas) => {
  let refines = new Map<string, string>();
  beforeAll(() => {
    const source = readFileSync(join(schemas, 'dublin-core', 'dcterms.xsd'), 'utf8');
    const declared = source.matchAll(/<xs:element name="(\w+)" substitutionGroup="([\w:]+)"/g);
    refines = new Map([...declared].map(([, name = '', of = '']) => [name, of]));
  });
  const simple = (name: string): string | undefined => {
    const of = refines.get(name) ?? '';
    if (of === 'dc:any') return undefined;
    return of.startsWith('dc:') ? of.slice(3) : simple(of);
  };

  it('know only terms that the schema declares', () => {
    expect(refines.size).toBeGreaterThan(50);
    for (const { dcterms } of CROSSWALK)
      for (const term of elementsOf(dcterms)) expect(refines.has(term), term).toBe(true);
  });

  it.each(CROSSWALK.filter(({ dc, dcterms }) => dc !== NO_PLACE && dcterms !== NO_PLACE))(
    'say the same of $field $when',
    ({ dc, dcterms }) => {
      const dumbedDown = elementsOf(dcterms).map(simple);
      // rightsHolder refines nothing; simple Dublin Core tells the holder among the rights.
      const expected = dumbedDown.map((name) => name ?? 'rights');
      expect(new Set(elementsOf(dc))).toEqual(new Set(expected));
    },
  );

  it('leave simple Dublin Core without a field only where the term refines nothing, or would be no identifier', () => {
    const only = CROSSWALK.filter(({ dc, dcterms }) => dc === NO_PLACE && dcterms !== NO_PLACE);
    const terms = only
      .filter(({ field }) => field !== 'component.accessPoints[].source')
      .flatMap(({ dcterms }) => elementsOf(dcterms));
    expect(terms.filter((term) => simple(term) !== undefined)).toEqual(['bibliographicCitation']);
  });
});
