import { mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { settle } from '../../src/arrange/index.ts';
import { csvRecord } from '../../src/catalogue/csv-cell.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { numbersToCsv } from '../../src/catalogue/numbers-file.ts';
import { writeSettled } from '../../src/catalogue/settle.ts';
import { withNumbers } from '../../src/intake/number-cells.ts';

/** The day on which the tests make packages. */
export const TODAY = '2026-03-01';

/** A row of a list, by its headings. */
export type Cells = Readonly<Record<string, string>>;

/** Settings of which `check` says nothing that must be mended. */
export const SETTINGS = {
  title: 'Quill family papers',
  prefix: 'QF',
  repository: { name: 'Quill family', address: ['Hollin Ferry'] },
  creators: ['Quill family'],
  scope: 'Letters and photographs of the ferry at Hollin Ferry.',
  access: 'Open to everybody.',
  languages: ['English'],
  rights: 'CC0 1.0 Universal',
  described: '2026',
};

/** A catalogue folder; JSON is YAML as well. */
export function folderOf(
  rows: readonly Cells[],
  settings: Record<string, unknown> = {},
  files: Readonly<Record<string, string | Uint8Array>> = {},
): string {
  const folder = join(mkdtempSync(join(tmpdir(), 'hand-over-')), 'papers');
  mkdirSync(folder);
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const list = [headings, ...rows.map((row) => headings.map((heading) => row[heading]))].map(csvRecord);
  writeFileSync(join(folder, 'list.csv'), list.join(''));
  writeFileSync(join(folder, 'collection.yaml'), JSON.stringify({ ...SETTINGS, ...settings }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

/** Settles the numbers of a catalogue folder, as `kinfonds arrange --settle` does. */
export async function settleIn(folder: string): Promise<void> {
  const catalogue = await loadCatalogue(folder, TODAY);
  const { given, rows } = settle(catalogue, false, TODAY);
  await writeSettled(folder, {
    numbers: numbersToCsv(rows),
    expected: catalogue.list,
    ...(given.size > 0 && { list: withNumbers(catalogue.list, given) }),
  });
}

/** Every file below a folder, by its path. */
export function filesIn(folder: string): Map<string, Buffer> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const files = names.filter((name) => statSync(join(folder, name)).isFile()).sort();
  return new Map(files.map((name) => [name.replaceAll('\\', '/'), readFileSync(join(folder, name))]));
}
