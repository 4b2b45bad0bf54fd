import { once } from '../catalogue/once.ts';
import { holdAgainst } from './hold-against.ts';
import type { PublishedSchema } from './published.ts';
import type { SchemaPlaces } from './schema-folders.ts';
import { findSchema } from './schemas.ts';
import type { Validation } from './validation.ts';

/**
 * A validator of many files: it holds each against the schema of its format, which its root element tells, and looks
 * for each schema once. Nothing but the bytes of a file and the schema is read, whatever the file asks for.
 * @param places where to look for published schemas
 */
export function validatorWith(
  places: SchemaPlaces,
): (bytes: Uint8Array, file: string) => Promise<Validation> {
  const schemaFor = once((format: PublishedSchema) => findSchema(format, places));
  return (bytes, file) => holdAgainst(bytes, file, schemaFor);
}

/**
 * Holds one file against the schema of its format.
 * @param file its name, for the messages
 * @throws Error only where no schema can be used, never for what is in the file
 */
export async function validateXml(
  bytes: Uint8Array,
  file: string,
  places: SchemaPlaces = {},
): Promise<Validation> {
  return validatorWith(places)(bytes, file);
}
