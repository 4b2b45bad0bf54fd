import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** The rows of a CSV file under their headings, read by a library of its own. */
export function readRecords(file: string): Record<string, string>[] {
  return parse(readFileSync(file), { columns: true, bom: true });
}
