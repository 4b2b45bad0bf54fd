import { existsSync } from 'node:fs';
import { InvalidArgumentError } from 'commander';
import { FORMAT_NAMES, type FormatName } from '../catalogue/format-names.ts';
import { printable } from './printable.ts';

export const DIR = ['[DIR]', 'the catalogue folder', '.'] as const;
export const JSON_OPTION = ['--json', 'print the result as JSON, for other programs'] as const;
export const SCHEMAS_OPTION = [
  '--schemas <DIR>',
  'folder of published schemas (else KINFONDS_SCHEMAS, else those that kinfonds schemas --get fetched)',
] as const;

/** The formats named in a list such as `ead3,csv`, or all of them. */
export function formats(list: string): FormatName[] {
  const names = list.split(',').map((name) => name.trim().toLowerCase());
  if (names.includes('all')) return [...FORMAT_NAMES];
  return [...new Set(names)].map((name) => {
    const known = FORMAT_NAMES.find((format) => format === name);
    if (known === undefined)
      throw new InvalidArgumentError(`The formats are ${FORMAT_NAMES.join(', ')}; all takes them all.`);
    return known;
  });
}

/** A folder of schemas that is there. */
export function schemasFolder(folder: string): string {
  if (!existsSync(folder)) throw new InvalidArgumentError('There is no such folder.');
  return folder;
}

/** Prints a result as JSON on standard output. */
export function printJson(result: unknown): void {
  process.stdout.write(`${JSON.stringify(result, null, 2)}\n`);
}

/** Prints lines of plain text on standard output. */
export function printLines(lines: Iterable<string>): void {
  for (const line of lines) process.stdout.write(`${printable(line)}\n`);
}
