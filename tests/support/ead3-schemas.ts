import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { XmlDocument, XmlError, XmlLibError, XsdValidator } from 'libxml2-wasm';

/** The project's own profile of EAD3. */
export const PROFILE = fileURLToPath(new URL('../../xsd/kinfonds-ead3.xsd', import.meta.url));
/** The published schema of EAD3 1.1.1, below the folder of published schemas. */
export const publishedXsd = (schemas: string) => join(schemas, 'ead3', 'ead3.xsd');
export const publishedRng = (schemas: string) => join(schemas, 'ead3', 'ead3.rng');

/** What is wrong with a document; nothing where it is valid. */
export type Validator = (xml: string) => readonly string[];

/**
 * A validator by a W3C Schema, which is read when the first document comes. It parses the document anew each time:
 * libxml2 notices that an id occurs twice only when it validates a parsed document for the first time, so two
 * validators must never share one.
 */
export function validatorBy(schema: string): Validator {
  let validator: XsdValidator | undefined;
  return (xml) => {
    validator ??= XsdValidator.fromDoc(XmlDocument.fromBuffer(readFileSync(schema), { url: schema }));
    const document = XmlDocument.fromString(xml);
    try {
      validator.validate(document);
      return [];
    } catch (error) {
      if (!(error instanceof XmlError)) throw error;
      // Some invalid values, such as the year 20260514, end in an "internal error" without details; xmllint, with the
      // same engine, calls them invalid.
      if (!(error instanceof XmlLibError)) return [error.message];
      return error.details.map(({ line, message }) => `line ${line}: ${message.trim()}`);
    } finally {
      document.dispose();
    }
  };
}
