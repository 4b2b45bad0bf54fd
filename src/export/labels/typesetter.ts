import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { CatalogueError } from '../../catalogue/finding.ts';
import { once } from '../../catalogue/once.ts';
import type { Measure } from './sheets.ts';

/** Points in a millimetre. */
export const MM = 72 / 25.4;

/** The fonts of a label; `own` is the one that the user adds for letters which the others lack. */
export type FontName = 'regular' | 'bold' | 'own';

/** A font of the user's own. */
export interface OwnFont {
  /** For messages. */
  file: string;
  bytes: Uint8Array;
}

/** A document to draw into, and what is known of its fonts. */
export interface Typesetter {
  document: PDFKit.PDFDocument;
  fonts: readonly FontName[];
  has(font: FontName, codePoint: number): boolean;
  /** Width of a text as this font sets it, in units of the font size. */
  width(font: FontName, text: string): number;
  /** How far letters reach above and below the line, in units of the font size. */
  reach(font: FontName): { above: number; below: number };
  draw(text: string, font: FontName, size: number, x: number, baseline: number): void;
}

// What pdfkit knows of an open font and does not declare in its types.
interface OpenFont {
  ascender: number;
  descender: number;
  font: { hasGlyphForCodePoint(codePoint: number): boolean };
}

const require = createRequire(import.meta.url);
const dejaVu = (file: string) => readFile(require.resolve(`dejavu-fonts-ttf/ttf/${file}`));

const SIZE = 1000;

/**
 * Opens a PDF document with fonts for the scripts of most collections (Latin, Greek, Cyrillic, Hebrew, Arabic and
 * more: DejaVu Sans), of which only the letters used are embedded.
 * @param page in millimetres
 * @throws CatalogueError where `own` is no font that can be used
 */
export async function openDocument(page: Measure, title: string, own?: OwnFont): Promise<Typesetter> {
  const document = new PDFDocument({
    size: [page[0] * MM, page[1] * MM],
    margin: 0,
    // No font to begin with: pdfkit would open one that has to be on the printer.
    font: '',
    autoFirstPage: false,
    displayTitle: true,
    // The id of the file is made of these.
    info: { Title: title, Producer: 'kinfonds', Creator: 'kinfonds', CreationDate: new Date(0) },
  });
  // The day of printing would make another file of every run, and no other day would be true: none is written.
  Object.defineProperty(document.info, 'CreationDate', { enumerable: false });
  printUnscaled(document);
  document.registerFont('regular', await dejaVu('DejaVuSans.ttf'));
  document.registerFont('bold', await dejaVu('DejaVuSans-Bold.ttf'));
  if (own !== undefined) document.registerFont('own', Buffer.from(own.bytes));
  const open = once((font: FontName) => {
    try {
      document.font(font);
      return (document as unknown as { _font: OpenFont })._font;
    } catch (error) {
      throw font === 'own' && own !== undefined ? fontTrouble(own.file) : error;
    }
  });
  const fonts: FontName[] = own === undefined ? ['regular', 'bold'] : ['regular', 'bold', 'own'];
  for (const font of fonts) open(font);
  const widths = Object.fromEntries(
    fonts.map((font) => [
      font,
      once((text: string) => document.font(font).fontSize(SIZE).widthOfString(text) / SIZE),
    ]),
  );
  return {
    document,
    fonts,
    has: (font, codePoint) => open(font).font.hasGlyphForCodePoint(codePoint),
    width: (font, text) => widths[font]?.(text) ?? 0,
    reach: (font) => ({ above: open(font).ascender / 1000, below: -open(font).descender / 1000 }),
    draw: (text, font, size, x, baseline) => {
      document
        .font(font)
        .fontSize(size)
        .text(text, x, baseline, { lineBreak: false, baseline: 'alphabetic' });
    },
  };
}

// PDF 1.7 (ISO 32000-1), 12.2, PrintScaling: the dialog of a viewer that knows it opens with "actual size".
function printUnscaled(document: PDFKit.PDFDocument): void {
  const { data } = (document as unknown as { _root: { data: { ViewerPreferences?: { data: object } } } })
    ._root;
  if (data.ViewerPreferences !== undefined)
    Object.assign(data.ViewerPreferences.data, { PrintScaling: 'None' });
}

/** What to say of a file that is no font, or one in which something is broken. */
export function fontTrouble(file: string): CatalogueError {
  const found = 'This is no font that can be put into a PDF, or it is damaged.';
  const advice = 'Name a file with a single font, in TrueType (.ttf) or OpenType (.otf).';
  return new CatalogueError([{ rule: 'labels.font', weight: 'must', place: { file }, found, advice }]);
}
