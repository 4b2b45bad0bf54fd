import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';

// The schema as it stands in docs/, run by a validator that is not of this project: ajv, JSON Schema draft 2020-12.
const schema = JSON.parse(readFileSync('docs/finding-aid.schema.json', 'utf8'));
const validate = new Ajv2020({ strict: true }).compile(schema);

describe('docs/finding-aid.schema.json, by ajv', () => {
  test('accepts what is written to finding-aid.json', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), (aid) => {
        const valid = validate(JSON.parse([...findingAidToJson(aid)].join('')));
        expect(validate.errors).toBeNull();
        expect(valid).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  test.each(['format', 'control', 'collection'])('refuses a finding aid without its %s', (key) => {
    fc.assert(
      fc.property(arbitraryFindingAid(), (aid) => {
        const { [key]: _, ...rest } = JSON.parse([...findingAidToJson(aid)].join(''));
        expect(validate(rest)).toBe(false);
        expect(validate({ ...rest, [key]: {} })).toBe(false);
      }),
      { numRuns: 10 },
    );
  });
});
