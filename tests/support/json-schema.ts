import { z } from 'zod';
import { component } from '../../src/catalogue/component.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { line } from '../../src/catalogue/text.ts';

/** The name of the format; it stays as long as `version` in the file is 1. */
const SCHEMA_ID = 'urn:kinfonds:finding-aid:1';

const DESCRIPTION =
  'An archival finding aid: the control of the description, the people in it, and the collection with all its units of description, of any depth. It holds the 26 elements of ISAD(G) and the 25 of DACS, and is what every export of kinfonds is made from. Lists that are empty may be left out. No text may hold a character that XML 1.0 forbids.';

/** The JSON Schema (draft 2020-12) of finding-aid.json, made from the schemas that the program itself reads with. */
export function findingAidJsonSchema(): Record<string, unknown> {
  const made = z.toJSONSchema(findingAid, {
    target: 'draft-2020-12',
    // What a reader must accept: fields that have a default may be missing.
    io: 'input',
    override({ zodSchema, jsonSchema }) {
      // A refinement leaves no trace of its own: never blank. A description makes a copy that shares the definition.
      if (zodSchema._zod.def === line._zod.def) jsonSchema.pattern = '\\S';
      if (zodSchema === component)
        jsonSchema.title = 'One unit of description at any level, with the units in it';
    },
  });
  const { $schema, ...rest } = JSON.parse(JSON.stringify(made).replaceAll('__schema0', 'component'));
  return {
    $schema,
    $id: SCHEMA_ID,
    title: 'kinfonds finding aid, version 1',
    description: DESCRIPTION,
    ...rest,
  };
}
