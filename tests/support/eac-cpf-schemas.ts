import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's own profile of EAC-CPF. */
export const PROFILE = fileURLToPath(new URL('../../xsd/kinfonds-eac-cpf.xsd', import.meta.url));
/** The published schema of EAC-CPF 2.0, below the folder of published schemas. */
export const publishedXsd = (schemas: string) => join(schemas, 'eac-cpf2', 'eac.xsd');
