import { readFileSync } from 'node:fs';

const { name, version } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
) as { name: string; version: string };

/** The program with its version, for those who ask in fifty years what made a package: kinfonds 1.0.0. */
export const SOFTWARE = `${name} ${version}`;
