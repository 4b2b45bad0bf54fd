import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
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
    // Not once for all: the program's own validation takes such rights away whenever it has compiled a schema.
    if (!ready) xmlRegisterFsInputProviders();
    ready = true;
    return validator(xml);
  };
}
