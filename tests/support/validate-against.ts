import { holdAgainst } from '../../src/xml/hold-against.ts';
import type { FoundSchema } from '../../src/xml/schemas.ts';
import type { Validation } from '../../src/xml/validation.ts';

/** Holds a file against a certain schema, whatever its format. */
export const validateAgainst = (bytes: Uint8Array, file: string, schema: FoundSchema): Promise<Validation> =>
  holdAgainst(bytes, file, async () => schema);
