import { buffer } from 'node:stream/consumers';
import { CatalogueError, type Finding } from '../../catalogue/finding.ts';
import { faceOf } from './face.ts';
import { cutShort, noFontFor } from './findings.ts';
import { type SetLine, setTexts } from './fit.ts';
import type { Label } from './labels-of.ts';
import { inVisualOrder } from './paragraph.ts';
import { cornerOf, labelsOn, type Measure, type Sheet } from './sheets.ts';
import { fontTrouble, MM, type OwnFont, openDocument, type Typesetter } from './typesetter.ts';

/** How labels are printed. */
export interface Printing {
  /** The first label to use on a sheet of which some are gone, from 1, across and then down. */
  start?: number;
  /** By how much everything is moved, rightwards and downwards, in millimetres: what the printer is out by. */
  shift?: Measure;
  /** For letters that the program's own fonts lack. */
  font?: OwnFont;
}

/** Labels as a file for the printer. */
export interface PrintedLabels {
  bytes: Uint8Array;
  sheets: number;
  /** What is cut short, and letters for which there is no font. */
  findings: Finding[];
}

// In millimetres. Blank at the edges of a label, where a printer may be out by as much.
const PADDING = 2.2;
// In millimetres. Most printers leave as much of the edge of a page blank (from memory).
const UNPRINTED = 5;

/**
 * Labels on sheets, as a PDF. Each text is set within its label; one that is too long becomes smaller, takes more
 * lines, and at last is cut with an ellipsis, which is reported. The same labels give the same bytes.
 * @throws CatalogueError where the font cannot be used
 * @throws RangeError where `start` is no label of the sheet
 */
export async function labelsPdf(
  labels: readonly Label[],
  sheet: Sheet,
  { start = 1, shift = [0, 0], font }: Printing = {},
): Promise<PrintedLabels> {
  const most = labelsOn(sheet);
  if (!Number.isInteger(start) || start < 1 || start > most)
    throw new RangeError(`A sheet has the labels 1 to ${most}; ${start} is none of them.`);
  const setter = await openDocument(sheet.page, labels[0]?.collection ?? 'Labels', font);
  const findings: Finding[] = [];
  const missing = new Set<string>();
  try {
    labels.forEach((label, index) => {
      const place = (start - 1 + index) % most;
      if (index === 0 || place === 0) setter.document.addPage();
      const blocks = faceOf(label, areaOf(sheet, place).height, setter);
      const { lines, shortened } = setTexts(blocks, areaOf(sheet, place), setter);
      drawLines(lines, sheet, place, shift, setter);
      findings.push(...shortened.map((what) => cutShort(label, what)));
      for (const { paragraph, beside } of blocks)
        for (const letter of [...paragraph.missing, ...(beside?.missing ?? [])]) missing.add(letter);
    });
    if (missing.size > 0) findings.push(noFontFor([...missing]));
    const bytes = await closed(setter);
    return { bytes, sheets: Math.ceil((start - 1 + labels.length) / most), findings };
  } catch (error) {
    // A damaged font shows only where a letter of it is wanted.
    throw font === undefined || error instanceof CatalogueError ? error : fontTrouble(font.file);
  }
}

/** Ends a document. @returns the file */
export async function closed({ document }: Typesetter): Promise<Uint8Array> {
  const bytes = buffer(document);
  document.end();
  return new Uint8Array(await bytes);
}

/** Where the texts of a label may stand, in points from its upper left corner. */
export function areaOf(sheet: Sheet, place: number) {
  const [left, top] = cornerOf(sheet, place);
  const [width, height] = sheet.label;
  const [right, bottom] = [sheet.page[0] - left - width, sheet.page[1] - top - height];
  const inset = (edge: number) => Math.max(PADDING, Math.min(UNPRINTED - edge, UNPRINTED)) * MM;
  const [x, y] = [inset(left), inset(top)];
  return { x, y, width: width * MM - x - inset(right), height: height * MM - y - inset(bottom) };
}

/** Draws lines into a label, beyond whose edge nothing can be seen of them. */
export function drawLines(
  lines: readonly SetLine[],
  sheet: Sheet,
  place: number,
  shift: Measure,
  { document, draw }: Typesetter,
): void {
  const [left, top] = cornerOf(sheet, place).map((side, index) => (side + (shift[index] ?? 0)) * MM);
  if (left === undefined || top === undefined) return;
  const { x, y } = areaOf(sheet, place);
  document.save();
  // Marks piled upon a letter may reach beyond what the font says of itself.
  document.rect(left, top, sheet.label[0] * MM, sheet.label[1] * MM).clip();
  for (const line of lines) {
    let at = left + x + line.x;
    for (const { text, font, width } of inVisualOrder(line.line.pieces)) {
      if (text.trim() !== '') draw(text, font, line.size, at, top + y + line.baseline);
      at += width * line.size;
    }
  }
  document.restore();
}
