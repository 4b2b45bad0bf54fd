import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CatalogueError } from '../../catalogue/finding.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { unreadable } from '../../catalogue/load-findings.ts';
import { stageBeside } from '../../catalogue/permissions-beside.ts';
import { type Staged, stage } from '../../catalogue/write-whole.ts';
import { type Label, labelsOf } from './labels-of.ts';
import { labelsPdf, type PrintedLabels, type Printing } from './pdf.ts';
import { newLabels, PRINTED_FILE, type Printed, printedCsv, printedNow, readPrinted } from './printed.ts';
import { labelsOn, type Sheet } from './sheets.ts';

export { calibrationPdf } from './calibration.ts';
export { readSheet } from './own-sheet.ts';
export { labelsOn, type Measure, type Sheet, usualSheet } from './sheets.ts';

/** Which labels of a catalogue are wanted. */
interface Wanted {
  only?: 'folders' | 'boxes';
  /** Only those not yet printed, or with other words on them since. */
  new?: boolean;
}

/** What was printed, and what was not. */
export interface LabelsWritten extends Pick<PrintedLabels, 'sheets' | 'findings'> {
  labels: readonly Label[];
  /** Never printed before; printed with other words; printed before as they are. */
  fresh: number;
  changed: number;
  before: number;
  /** The first label left on the last sheet, from 1; undefined where the sheet is used up or nothing was printed. */
  next?: number;
}

/**
 * Writes the labels of a catalogue as a PDF, and beside the list which of them were printed. Either both files are
 * written or none; where no label is wanted, none.
 * @param folder the catalogue folder
 * @param file where the PDF goes
 * @throws CatalogueError where a file cannot be read or written, or the font cannot be used
 * @throws RangeError where `start` is no label of the sheet
 */
export async function printLabels(
  aid: FindingAid,
  folder: string,
  file: string,
  sheet: Sheet,
  { only, new: onlyNew, ...printing }: Wanted & Printing = {},
): Promise<LabelsWritten> {
  const all = labelsOf(aid);
  const printed = await printedIn(folder);
  const asked = all.filter(
    ({ of }) => only === undefined || only === (of === 'folder' ? 'folders' : 'boxes'),
  );
  const { fresh, changed, before } = newLabels(asked, printed);
  const left = new Set<Label>(onlyNew ? before : []);
  const labels = asked.filter((label) => !left.has(label));
  const counts = { labels, fresh: fresh.length, changed: changed.length, before: before.length };
  if (labels.length === 0) return { ...counts, sheets: 0, findings: [] };
  const { bytes, sheets, findings } = await labelsPdf(labels, sheet, printing);
  await putBoth([
    () => stage(file, bytes),
    () => stageBeside(join(folder, PRINTED_FILE), printedCsv(printedNow(all, labels, printed))),
  ]);
  const used = ((printing.start ?? 1) - 1 + labels.length) % labelsOn(sheet);
  return { ...counts, sheets, findings, ...(used > 0 && { next: used + 1 }) };
}

async function printedIn(folder: string): Promise<Printed> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(join(folder, PRINTED_FILE));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
    throw new CatalogueError([unreadable(PRINTED_FILE, error)]);
  }
  return readPrinted(bytes);
}

async function putBoth(files: readonly (() => Promise<Staged>)[]): Promise<void> {
  const staged: Staged[] = [];
  try {
    for (const write of files) staged.push(await write());
    for (const one of staged) await one.commit();
  } finally {
    for (const one of staged) await one.discard();
  }
}
