import { statSync } from 'node:fs';
import { basename } from 'node:path';
import { InvalidArgumentError } from 'commander';
import type { Measure } from '../export/labels/sheets.ts';

// The list lies in the same folder; a slip must not write over it.
export function pdfFile(file: string): string {
  if (!/.\.pdf$/i.test(basename(file)))
    throw new InvalidArgumentError('The name of the file has to end in .pdf.');
  return file;
}

export function labelNumber(text: string): number {
  if (!/^[1-9]\d{0,4}$/.test(text)) throw new InvalidArgumentError('It is a number from 1 on.');
  return Number(text);
}

// In millimetres: whoever needs more has chosen another sheet than the one in the printer.
const FURTHEST = 10;

export function shift(text: string): Measure {
  const [, right = '', down = ''] =
    /^([+-]?\d+(?:\.\d+)?)\s*[x×]\s*([+-]?\d+(?:\.\d+)?)$/.exec(text.trim()) ?? [];
  const measure: Measure = [Number(right), Number(down)];
  if (right === '' || measure.some((side) => Math.abs(side) > FURTHEST))
    throw new InvalidArgumentError(
      `It is two numbers in mm, right and down, up to ${FURTHEST}, such as 0.5x-1.`,
    );
  return measure;
}

export function fontFile(file: string): string {
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true)
    throw new InvalidArgumentError('There is no such file.');
  return file;
}
