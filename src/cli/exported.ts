import { dirname, sep } from 'node:path';
import type { Exported } from '../export/index.ts';
import { hasDetails, printDetails, printNotes, sayVerdict } from './validation.ts';

/**
 * Says what an export wrote, and which schema found it valid: a line for each file, one for all files of a folder; on
 * standard error what is doubtful, and what there is to know of the schemas.
 * @param out the export folder
 */
export function printExported(written: readonly Exported[], out: string): void {
  const folders = new Map<string, Exported[]>();
  const say = (path: string, { validation }: Exported) =>
    process.stdout.write(
      validation === undefined ? `${path}\n` : `${path}: ${sayVerdict(validation, process.stdout)}\n`,
    );
  for (const one of written) {
    const folder = dirname(one.path);
    const others = folders.get(folder);
    if (folder === dirname(`${out}${sep}file`)) say(one.path, one);
    else if (others === undefined) folders.set(folder, [one]);
    else others.push(one);
  }
  for (const [folder, files] of folders) {
    const count = `${files.length} ${files.length === 1 ? 'file' : 'files'}`;
    const validated = files.find(({ validation }) => validation !== undefined) ?? files[0];
    if (validated !== undefined) say(`${folder}${sep} (${count})`, validated);
  }
  const validations = written.flatMap(({ validation }) => validation ?? []);
  for (const validation of validations.filter(hasDetails)) {
    process.stderr.write(`${validation.file}:\n`);
    printDetails(validation, process.stderr);
  }
  printNotes(validations, process.stderr);
}
