import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { FormatName } from '../catalogue/format-names.ts';
import { makeFolder } from '../catalogue/make-folder.ts';
import { type StagedFolder, stageFolder } from '../catalogue/stage-folder.ts';
import { stage } from '../catalogue/write-whole.ts';
import type { SchemaPlaces } from '../xml/schema-folders.ts';
import type { Validation } from '../xml/validation.ts';
import { withCopiesAt } from './copies-at.ts';
import { FOLDERS, FORMATS, type Pictures } from './formats.ts';
import type { OutFile } from './out-file.ts';

/** A file that `export` wrote, and for XML what it was held against. */
export interface Exported {
  format: FormatName;
  path: string;
  validation?: Validation;
}

/** What came of an export: the files now in their places, or the checks that failed and kept them all from it. */
export type ExportResult = { written: Exported[] } | { invalid: Validation[] };

/** How an export is made. */
export interface ExportOptions {
  /** Where published schemas are looked for. */
  places?: SchemaPlaces;
  /** The address of a digital copy as seen from the export folder; finding-aid.json keeps the path as it is. */
  copiesAt?: (file: string) => string;
  pictures?: Pictures;
  /** Called before each piece of work, with words for it. */
  step?: (words: string) => void;
}

/** A file or folder that is written and waits beside its place. */
type Waiting = Pick<StagedFolder, 'commit' | 'discard'>;

/**
 * Writes a finding aid in each of the formats into a folder, which is made if need be. What was written is read back
 * and validated; only when all of it is valid does any of it take the place of an earlier export.
 * @throws CatalogueError where a file cannot be written; an earlier export is then as it was
 */
export async function exportFindingAid(
  aid: FindingAid,
  formats: readonly FormatName[],
  folder: string,
  { places = {}, copiesAt = (file) => file, pictures = new Map(), step = () => {} }: ExportOptions = {},
): Promise<ExportResult> {
  await makeFolder(folder);
  const waiting: Waiting[] = [];
  const folders = new Map<string, StagedFolder>();
  const written: Exported[] = [];
  const { validatorWith } = await import('../xml/validate.ts');
  const validate = validatorWith(places);

  const folderNamed = async (name: string): Promise<StagedFolder> => {
    const known = folders.get(name);
    if (known !== undefined) return known;
    const staged = await stageFolder(join(folder, name));
    folders.set(name, staged);
    waiting.push(staged);
    return staged;
  };

  /** Writes a file beside its place. @returns where it lies for now */
  const write = async ({ path, content }: OutFile): Promise<string> => {
    const [inside, name] = path.split('/');
    if (inside === undefined || name === undefined) {
      const staged = await stage(join(folder, path), content);
      waiting.push(staged);
      return staged.temporary;
    }
    return (await folderNamed(inside)).write(name, content);
  };

  const seen = withCopiesAt(aid, copiesAt);
  const shown = new Map([...pictures].map(([file, picture]) => [copiesAt(file), picture]));

  try {
    for (const format of formats) {
      step(`writing ${format}`);
      // Even where no file goes into it: one of an earlier export must not stay.
      const own = FOLDERS[format];
      if (own !== undefined) await folderNamed(own);
      for (const file of FORMATS[format](format === 'json' ? aid : seen, shown)) {
        const temporary = await write(file);
        const path = join(folder, file.path);
        const validation = file.xml ? await validate(await readFile(temporary), path) : undefined;
        written.push({ format, path, ...(validation !== undefined && { validation }) });
      }
    }
    const invalid = written.flatMap(({ validation }) => (validation?.valid === false ? [validation] : []));
    if (invalid.length > 0) return { invalid };
    for (const one of waiting) await one.commit();
    return { written };
  } finally {
    for (const one of waiting) await one.discard();
  }
}
