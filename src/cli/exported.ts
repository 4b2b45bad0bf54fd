import { dirname, sep } from 'node:path';
import type { Exported } from '../export/index.ts';
import { printValidation } from './validation.ts';

/**
 * Says what an export wrote: the files on standard output, those of a folder as that folder; on standard error, which
 * schema found them valid, once for all files of a folder.
 * @param out the export folder
 */
export function printExported(written: readonly Exported[], out: string): void {
  const folders = new Map<string, Exported[]>();
  for (const one of written) {
    const folder = dirname(one.path);
    if (folder === dirname(`${out}${sep}file`)) {
      process.stdout.write(`${one.path}\n`);
      if (one.validation !== undefined) printValidation(one.validation, process.stderr);
    } else {
      const others = folders.get(folder);
      if (others === undefined) folders.set(folder, [one]);
      else others.push(one);
    }
  }
  for (const [folder, files] of folders) {
    process.stdout.write(`${folder}${sep} (${files.length} ${files.length === 1 ? 'file' : 'files'})\n`);
    const validation = files.find((file) => file.validation !== undefined)?.validation;
    if (validation !== undefined) printValidation({ ...validation, file: `${folder}${sep}` }, process.stderr);
  }
}
