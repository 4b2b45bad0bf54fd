import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { fold } from '../../catalogue/fold.ts';
import type { Column } from '../../catalogue/thing.ts';
import { HEADINGS_WITHIN, headingRowAmong } from '../heading-row.ts';
import type { Sheet } from './sheet.ts';

/** The name of the sheet in which a new list explains itself, and how that sheet begins. */
export const GUIDE = { sheet: 'How to fill it in', begins: 'How to fill in this list' } as const;

/**
 * The sheets that are the list: those that collection.yaml names, else all that are shown and have a heading for the
 * title, else the first that holds something. What is left out is said.
 * @throws CatalogueError where a sheet that is named is not there
 */
export function chooseSheets(
  sheets: readonly Sheet[],
  file: string,
  named: readonly string[] | undefined,
  columnOf: (heading: string) => Column | undefined,
): { chosen: Sheet[]; findings: Finding[] } {
  if (named !== undefined) return { chosen: namedSheets(sheets, file, named), findings: [] };
  const filled = sheets.filter((sheet) => sheet.rows.length > 0 && !isGuide(sheet));
  const shown = filled.filter(({ hidden }) => !hidden);
  const lists = shown.filter((sheet) => hasTitle(sheet, columnOf));
  const chosen = lists.length > 0 ? lists : shown.slice(0, 1);
  const left = shown.filter((sheet) => !chosen.includes(sheet));
  const hidden = filled.filter((sheet) => sheet.hidden);
  return {
    chosen,
    findings: [
      ...left.map((sheet) => leftOut(file, sheet, 'has no heading for the title')),
      ...hidden.map((sheet) => leftOut(file, sheet, 'is hidden')),
    ],
  };
}

function namedSheets(sheets: readonly Sheet[], file: string, named: readonly string[]): Sheet[] {
  const found = named.map((name) => sheets.find((sheet) => fold(sheet.name) === fold(name)));
  const missing = named.filter((_, at) => found[at] === undefined);
  if (missing.length > 0) {
    const there = sheets.map(({ name }) => `“${name}”`).join(', ');
    throw new CatalogueError(
      missing.map((name) => ({
        rule: 'list.no-such-sheet',
        weight: 'must',
        place: { file },
        found: `There is no sheet “${name}”, which collection.yaml names; its sheets are ${there}.`,
        advice: 'Mend the name in “sheets” under “list”, or leave that entry out.',
      })),
    );
  }
  return [...new Set(found)].filter((sheet) => sheet !== undefined);
}

function isGuide({ name, rows }: Sheet): boolean {
  return name === GUIDE.sheet && rows[0]?.cells[0] === GUIDE.begins;
}

function hasTitle({ rows }: Sheet, columnOf: (heading: string) => Column | undefined): boolean {
  const first = rows
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''))
    .slice(0, HEADINGS_WITHIN);
  const head = first[headingRowAmong(first, columnOf)];
  return head?.cells.some((cell) => columnOf(cell) === 'title') ?? false;
}

function leftOut(file: string, { name, rows }: Sheet, why: string): Finding {
  const read = rows.length === 1 ? '1 row was' : `${rows.length} rows were`;
  return {
    rule: 'list.sheet-left-out',
    weight: 'consider',
    place: { file },
    found: `The sheet “${name}” ${why}, so its ${read} not read.`,
    advice: `If it belongs to the list, name in collection.yaml every sheet that does: list: {sheets: [${name}]}.`,
  };
}
