import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { xmlCleanupInputProvider } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';
import * as ead3 from './ead3-schemas.ts';

/** The project's own profile of EAD 2002. */
export const PROFILE = fileURLToPath(new URL('../../xsd/kinfonds-ead2002.xsd', import.meta.url));
/** The published schema of EAD 2002 (2021-04-12), below the folder of published schemas. */
export const publishedXsd = (schemas: string) => join(schemas, 'ead2002', 'ead.xsd');

/** A validator by a schema that imports another which lies beside it, as both of these do: libxml2 may read files. */
export function validatorBy(schema: string): ead3.Validator {
  const validator = ead3.validatorBy(schema);
  let ready = false;
  return (xml) => {
    if (ready) return validator(xml);
    // Only while the schema is compiled, with the first file: the library has room for few such rights.
    xmlRegisterFsInputProviders();
    try {
      return validator(xml);
    } finally {
      xmlCleanupInputProvider();
      ready = true;
    }
  };
}
