import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe } from 'vitest';
import { cornerOf, labelsOn, type Sheet } from '../../src/export/labels/sheets.ts';
import { freshFolder } from '../support/kinfonds.ts';

const found = ['pdftotext', 'pdftoppm'].every((tool) => spawnSync(tool, ['-v']).error === undefined);

/** A suite that reads PDF files with poppler-utils; in CI it must run, elsewhere it is left out with a reason. */
export function describeWithPoppler(title: string, suite: () => void): void {
  if (found) return void describe(title, suite);
  const missing = 'the programs pdftotext and pdftoppm (poppler-utils) are missing.';
  if (process.env.CI === 'true') throw new Error(`In CI every outside check must run, but ${missing}`);
  process.stderr.write(`Left out: ${title}: ${missing}\n`);
  describe.skip(title, suite);
}

/** A word on a page, and where it stands in millimetres from the upper left corner. */
export interface Word {
  text: string;
  left: number;
  top: number;
  right: number;
  bottom: number;
}

const MM = 25.4 / 72;
const WORD = /<word xMin="([^"]+)" yMin="([^"]+)" xMax="([^"]+)" yMax="([^"]+)">([^<]*)<\/word>/g;

/** The words of a PDF as poppler reads them, page by page. */
export function wordsOf(pdf: Uint8Array): Word[][] {
  const { stdout } = run('pdftotext', ['-bbox', fileWith(pdf), '-']);
  return stdout
    .toString('utf8')
    .split('<page ')
    .slice(1)
    .map((page) =>
      [...page.matchAll(WORD)].map(([, left, top, right, bottom, text = '']) => ({
        text,
        left: Number(left) * MM,
        top: Number(top) * MM,
        right: Number(right) * MM,
        bottom: Number(bottom) * MM,
      })),
    );
}

/** A page as grey pixels, as poppler draws it. */
export interface Picture {
  width: number;
  height: number;
  /** Pixels in a millimetre. */
  scale: number;
  /** 0 black to 255 white. */
  at(x: number, y: number): number;
}

export function pictureOf(pdf: Uint8Array, dpi: number): Picture {
  const { stdout } = run('pdftoppm', ['-r', String(dpi), '-gray', '-f', '1', '-l', '1', fileWith(pdf)]);
  // A portable graymap: "P5", width, height and the white value in letters, then one byte a pixel.
  const [head = '', width = '', height = ''] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stdout.subarray(0, 64).toString('latin1')) ?? [];
  const pixels = stdout.subarray(head.length);
  return {
    width: Number(width),
    height: Number(height),
    scale: dpi / 25.4,
    at: (x, y) => pixels[y * Number(width) + x] ?? 255,
  };
}

/** The label of a sheet in which a word stands wholly, from 0; undefined where it crosses an edge. */
export function labelAround(sheet: Sheet, { left, top, right, bottom }: Word): number | undefined {
  const within = Array.from({ length: labelsOn(sheet) }, (_, place) => place).filter((place) => {
    const [x, y] = cornerOf(sheet, place);
    return left >= x && top >= y && right <= x + sheet.label[0] && bottom <= y + sheet.label[1];
  });
  return within[0];
}

function fileWith(pdf: Uint8Array): string {
  const file = join(freshFolder(), 'labels.pdf');
  writeFileSync(file, pdf);
  return file;
}

function run(tool: string, args: readonly string[]): { stdout: Buffer } {
  const { status, stdout, stderr } = spawnSync(tool, args, { maxBuffer: 1 << 29 });
  if (status !== 0 || stderr.length > 0) throw new Error(`${tool}: ${stderr.toString('utf8')}`);
  return { stdout };
}
