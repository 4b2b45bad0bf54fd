import { copyFileSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ours = (name: string) => fileURLToPath(new URL(`../../xsd/${name}`, import.meta.url));

/** The project's own profiles of simple Dublin Core and of DCMI terms. */
export const SIMPLE_PROFILE = ours('kinfonds-oai-dc.xsd');
export const TERMS_PROFILE = ours('kinfonds-dcterms-profile.xsd');

/** The published schema of oai_dc, below the folder of published schemas. */
export const publishedOaiDc = (schemas: string) => join(schemas, 'dublin-core', 'oai_dc.xsd');

/** The container for DCMI terms in a fresh folder, beside copies of the published schemas that it imports. */
export function containerBesidePublished(schemas: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'kinfonds-dcterms-'));
  const published = join(schemas, 'dublin-core');
  for (const name of readdirSync(published)) copyFileSync(join(published, name), join(folder, name));
  const container = join(folder, 'kinfonds-dcterms.xsd');
  copyFileSync(ours('kinfonds-dcterms.xsd'), container);
  return container;
}
