import { dirname, sep } from 'node:path';
import { addTo } from '../catalogue/add-to.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { FormatName } from '../catalogue/format-names.ts';
import { sayCount } from '../catalogue/say-count.ts';
import type { NotHeld } from '../export/ead/not-held.ts';
import type { Exported } from '../export/index.ts';
import { printable } from './printable.ts';
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
    if (folder === dirname(`${out}${sep}file`)) say(one.path, one);
    else addTo(folders, folder, one);
  }
  for (const [folder, files] of folders) {
    const validated = files.find(({ validation }) => validation !== undefined) ?? files[0];
    if (validated !== undefined) say(`${folder}${sep} (${sayCount(files.length, 'file')})`, validated);
  }
  const validations = written.flatMap(({ validation }) => validation ?? []);
  for (const validation of validations.filter(hasDetails)) {
    process.stderr.write(`${validation.file}:\n`);
    printDetails(validation, process.stderr);
  }
  printNotes(validations, process.stderr);
}

/** What a version of EAD does not hold of a finding aid that was taken in; `says` is the same as a sentence. */
type NotHeldIn = { format: 'ead3' | 'ead2002'; says: string } & NotHeld;

/** What is lost of a finding aid that was taken in, in each version of EAD that it is written in, if anything is. */
export async function notHeldIn(aid: FindingAid, formats: readonly FormatName[]): Promise<NotHeldIn[]> {
  const { notHeldNow } = await import('../export/ead/not-held-now.ts');
  const { sayNotHeld } = await import('../export/ead/say-report.ts');
  return formats.flatMap((format): NotHeldIn[] => {
    if (format !== 'ead3' && format !== 'ead2002') return [];
    const missing = notHeldNow(aid, format);
    const says = sayNotHeld(missing, format);
    return says === undefined ? [] : [{ format, says, ...missing }];
  });
}

export function printNotHeld(notHeld: readonly NotHeldIn[]): void {
  for (const { says } of notHeld) process.stderr.write(`${printable(says)}\n`);
}
