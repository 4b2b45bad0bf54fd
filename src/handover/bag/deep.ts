import { realpathSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { SchemaPlaces } from '../../xml/schema-folders.ts';
import type { Validation } from '../../xml/validation.ts';
import { codeOf, lookThrough } from './tree.ts';

/**
 * Holds the finding aids and records in the payload of a bag against the schemas of their formats. XML of any other
 * format is left out.
 * @param step told how many of the files are done
 */
export async function validateInside(
  folder: string,
  places: SchemaPlaces,
  step: (done: number, total: number) => void = () => {},
): Promise<Validation[]> {
  const { validatorWith } = await import('../../xml/validate.ts');
  const validate = validatorWith(places);
  const { files } = lookThrough(realpathSync(folder));
  const paths = [...files.keys()].filter((path) => /^data\/.*\.xml$/is.test(path)).sort();
  const validations: Validation[] = [];
  for (const [at, path] of paths.entries()) {
    step(at, paths.length);
    const bytes = await readFile(files.get(path)?.real ?? '').catch(codeOf);
    if (typeof bytes === 'string') {
      const messages = [{ line: 1, says: `The file cannot be read (${bytes}).` }];
      validations.push({ file: path, valid: false, messages, more: 0, remarks: [] });
      continue;
    }
    const validation = await validate(bytes, path);
    if (!isOfOtherFormat(validation)) validations.push(validation);
  }
  return validations;
}

/** Well-formed, which is to say with an outermost element, but of no format that is known here. */
function isOfOtherFormat({ format, messages }: Validation): boolean {
  return format === undefined && messages.some(({ element }) => element !== undefined);
}
