import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { component } from '../../src/catalogue/component.ts';
import { keysAt } from '../../src/catalogue/schema-at.ts';
import { findingAidJsonSchema } from '../support/json-schema.ts';

const inProject = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const BIOME = inProject('node_modules/.bin/biome');
const schema = findingAidJsonSchema();
const { $defs, properties } = schema as {
  $defs: { component: { properties: object; required: string[] } };
  properties: Record<string, object>;
};

describe('the JSON Schema of finding-aid.json', () => {
  // After a change of the model: npx vitest run tests/catalogue/json-schema.test.ts -u
  it('in docs/ is the one that the model gives', async () => {
    const formatted = spawnSync(BIOME, ['format', '--stdin-file-path=docs/finding-aid.schema.json'], {
      input: JSON.stringify(schema),
      encoding: 'utf8',
    });
    expect(formatted.status).toBe(0);
    expect(JSON.parse(formatted.stdout)).toEqual(schema);
    await expect(formatted.stdout).toMatchFileSnapshot(inProject('docs/finding-aid.schema.json'));
  });

  it('says what it is', () => {
    expect(schema).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: 'urn:kinfonds:finding-aid:1',
      title: expect.stringContaining('kinfonds'),
      description: expect.stringContaining('ISAD(G)'),
      additionalProperties: false,
    });
  });

  it('has every field of a unit of description, units in units, and asks only for what has no default', () => {
    expect(Object.keys($defs.component.properties).sort()).toEqual(keysAt(component, []).sort());
    expect($defs.component.properties).toMatchObject({ children: { items: { $ref: '#/$defs/component' } } });
    expect($defs.component.required.sort()).toEqual(['id', 'level', 'title']);
    expect(properties.collection).toEqual({ $ref: '#/$defs/component' });
  });

  it('points only to what it defines', () => {
    const pointers = JSON.stringify(schema).match(/"\$ref":"[^"]*"/g) ?? [];
    expect(new Set(pointers)).toEqual(new Set(['"$ref":"#/$defs/component"']));
  });

  it('lets no text be blank', () => {
    expect($defs.component.properties).toMatchObject({ title: { type: 'string', pattern: '\\S' } });
  });
});
