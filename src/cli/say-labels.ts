import { sayCount } from '../catalogue/say-count.ts';
import type { LabelsWritten, Sheet } from '../export/labels/index.ts';
import { sayFoldersAndBoxes } from '../housing/say-boxes.ts';

/** What was asked for. */
interface Asked {
  out: string;
  only?: 'folders' | 'boxes';
  new?: true;
}

/** What printers have to be told. */
export const UNSCALED = 'Print it at 100 % (“actual size”), not fitted to the page.\n';

/** What was printed, on what, and where to begin the next time. */
export function* sayWritten(
  written: LabelsWritten,
  { out, only, new: onlyNew }: Asked,
  sheet: Sheet,
): Generator<string> {
  const { labels, sheets, fresh, changed, before, next } = written;
  if (onlyNew) yield `${fresh} new, ${changed} changed since they were printed, ${before} as printed before.`;
  if (labels.length === 0) {
    const which = only === 'boxes' ? 'boxes' : only === 'folders' ? 'folders' : 'folders or boxes';
    yield onlyNew && before > 0
      ? 'Nothing to print; no file was written.'
      : `There are no ${which} yet; no file was written.`;
    return;
  }
  const folders = labels.filter(({ of }) => of === 'folder').length;
  const boxes = labels.length - folders;
  // Only our own packages are counted by themselves; whatever others keep things in is a box to its label.
  const packages = labels.filter(({ of, type }) => of === 'box' && type === 'Package').length;
  yield `${out}: labels for ${sayFoldersAndBoxes(folders, boxes - packages, packages)}, on ${sayCount(sheets, 'sheet')}.`;
  yield `Sheets to use: ${sheet.words}.`;
  yield UNSCALED.trimEnd();
  if (next !== undefined) yield `The last sheet has labels left; the next time begin with: --start ${next}`;
  if (folders > 0 && boxes > 0) yield 'Larger labels for the boxes alone: --only boxes';
}
