import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { makeFolder } from '../catalogue/make-folder.ts';
import { type Staged, stage } from '../catalogue/write-whole.ts';
import type { SchemaPlaces } from '../xml/schema-folders.ts';
import type { Validation } from '../xml/validate.ts';
import type { FormatName } from './format-names.ts';
import { FORMATS } from './formats.ts';

/** A file that `export` wrote, and for XML what it was held against. */
export interface Exported {
  format: FormatName;
  path: string;
  validation?: Validation;
}

/** What came of an export: the files now in their places, or the checks that failed and kept them all from it. */
export type ExportResult = { written: Exported[] } | { invalid: Validation[] };

/**
 * Writes a finding aid in each of the formats into a folder, which is made if need be. What was written is read back
 * and validated; only when all of it is valid does any of it take the place of an earlier export.
 * @param step called before each piece of work, with words for it
 * @throws CatalogueError where a file cannot be written; an earlier export is then as it was
 */
export async function exportFindingAid(
  aid: FindingAid,
  formats: readonly FormatName[],
  folder: string,
  places: SchemaPlaces = {},
  step: (words: string) => void = () => {},
): Promise<ExportResult> {
  await makeFolder(folder);
  const staged: Staged[] = [];
  const written: Exported[] = [];
  try {
    for (const format of formats) {
      const { file, xml, write } = FORMATS[format];
      const path = join(folder, file);
      step(`writing ${file}`);
      const one = await stage(path, write(aid));
      staged.push(one);
      if (xml) step(`validating ${file}`);
      const validation = xml ? await validateFile(one.temporary, path, places) : undefined;
      written.push({ format, path, ...(validation !== undefined && { validation }) });
    }
    const invalid = written.flatMap(({ validation }) => (validation?.valid === false ? [validation] : []));
    if (invalid.length > 0) return { invalid };
    for (const one of staged) await one.commit();
    return { written };
  } finally {
    for (const one of staged) await one.discard();
  }
}

async function validateFile(path: string, name: string, places: SchemaPlaces): Promise<Validation> {
  const { validateXml } = await import('../xml/validate.ts');
  return validateXml(await readFile(path), name, places);
}
