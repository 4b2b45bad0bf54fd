import { expect, test } from 'vitest';
import { agent } from '../../src/catalogue/agent.ts';
import { component } from '../../src/catalogue/component.ts';
import { control } from '../../src/catalogue/finding-aid.ts';
import { fieldsOf } from '../../src/catalogue/schema-at.ts';
import { AGENT_FIELDS, CONTROL_FIELDS, UNIT_FIELDS } from '../../src/compare/field-names.ts';
import { DACS, ISAD_G } from '../../src/export/crosswalk/standards.ts';
import { CROSSWALK } from '../../src/export/crosswalk.ts';

const keysOf = (schema: Parameters<typeof fieldsOf>[0]) => fieldsOf(schema).map(([key]) => key);

test('every field of the model has a name, and no two of a kind the same', () => {
  // Ids only hold the file together; units below a unit are compared as such.
  expect(Object.keys(UNIT_FIELDS).sort()).toEqual(
    keysOf(component)
      .filter((key) => key !== 'id' && key !== 'children')
      .sort(),
  );
  expect(Object.keys(AGENT_FIELDS).sort()).toEqual(
    keysOf(agent)
      .filter((key) => key !== 'id')
      .sort(),
  );
  expect(Object.keys(CONTROL_FIELDS).sort()).toEqual(keysOf(control).sort());
  for (const names of [UNIT_FIELDS, AGENT_FIELDS, CONTROL_FIELDS])
    expect(new Set(Object.values(names)).size).toBe(Object.keys(names).length);
});

test('a name that is one of ISAD(G) or DACS is that of the element to which the crosswalk sends the field', () => {
  const standard = new Set<string>([...Object.values(ISAD_G), ...Object.values(DACS)]);
  const checked = [
    ...Object.entries(UNIT_FIELDS).map(([key, name]) => [`component.${key}`, name] as const),
    ...Object.entries(CONTROL_FIELDS).map(([key, name]) => [`control.${key}`, name] as const),
  ].filter(([, name]) => standard.has(name));
  expect(checked.length).toBeGreaterThan(25);
  for (const [field, name] of checked) {
    const parts = CROSSWALK.filter(
      (row) => row.field === field || /^[.[]/.test(row.field.replace(field, '')),
    );
    const elements = parts.flatMap(({ isadG, dacs }) => [isadG && ISAD_G[isadG], dacs && DACS[dacs]]);
    // DACS 2.2 and 8.2 have no number in the crosswalk, which knows the parts of these fields only.
    const known: readonly (string | undefined)[] = [...elements, DACS['2.2'], DACS['8.2']];
    expect([field, known]).toEqual([field, expect.arrayContaining([name])]);
  }
});
