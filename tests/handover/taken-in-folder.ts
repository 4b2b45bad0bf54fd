import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { catalogueOf } from '../../src/catalogue/catalogue-of.ts';
import { csvRecord } from '../../src/catalogue/csv-cell.ts';
import { takeIn } from '../../src/export/ead/take-in.ts';
import { freshFolder } from '../support/kinfonds.ts';
import type { Cells } from './on-disk.ts';

/** A finding aid in EAD, taken into a folder, with a list of new things, and settings said besides. */
export async function takenIn(
  xml: string | Uint8Array,
  {
    rows = [],
    settings = {},
    files = {},
  }: {
    rows?: readonly Cells[];
    settings?: Record<string, unknown>;
    files?: Readonly<Record<string, string | Uint8Array>>;
  } = {},
): Promise<string> {
  const folder = join(freshFolder(), 'papers');
  const { aid } = await takeIn(Buffer.from(xml), 'their.xml', '2026-03-01');
  await catalogueOf(aid, folder);
  const { collection } = aid;
  const own = { title: collection.title, prefix: 'NEW', repository: { name: 'Heron family' }, ...settings };
  writeFileSync(join(folder, 'collection.yaml'), JSON.stringify(own));
  if (rows.length > 0) {
    const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
    const list = [headings, ...rows.map((row) => headings.map((heading) => row[heading]))];
    writeFileSync(join(folder, 'list.csv'), list.map(csvRecord).join(''));
  }
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

/** A unit in EAD 2002. */
export interface TheirUnit {
  level?: string;
  id?: string;
  code?: string;
  title: string;
  did?: string;
  beside?: string;
  children?: readonly TheirUnit[];
}

/** Units as another program might write them in EAD 2002. */
export const dscOf = (units: readonly TheirUnit[]): string =>
  `<dsc type="combined">${units.map(unitOf).join('')}</dsc>`;

function unitOf({
  level = 'file',
  id,
  code,
  title,
  did = '',
  beside = '',
  children = [],
}: TheirUnit): string {
  const named = id === undefined ? '' : ` id="${id}"`;
  const numbered = code === undefined ? '' : `<unitid>${code}</unitid>`;
  return `<c level="${level}"${named}><did>${numbered}<unittitle>${title}</unittitle>${did}</did>${beside}${children.map(unitOf).join('')}</c>`;
}
