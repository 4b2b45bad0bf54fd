import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { describe, test } from 'vitest';

const inCi = process.env.CI === 'true';

/** Runs the suite if `found`; else fails it in CI, and elsewhere skips it and prints why. */
function describeIf(found: boolean, missing: string, title: string, suite: () => void): void {
  if (found) return void describe(title, suite);
  if (inCi) throw new Error(`In CI every outside check must run, but ${missing}`);
  process.stderr.write(`Left out: ${title}: ${missing}\n`);
  // The suite itself is not asked: it may read what is missing.
  describe.skip(title, () => test(missing, () => {}));
}

/** Folder of the published schemas, or undefined where this machine has none. */
export const publishedSchemas = process.env.KINFONDS_SCHEMAS;
/** Folder of the sample finding aids and bags, or undefined where this machine has none. */
export const samples = process.env.KINFONDS_SAMPLES;

/** A suite that needs a file or folder below the published schemas. */
export function describeWithSchemas(title: string, suite: (folder: string) => void): void {
  const folder = publishedSchemas ?? '';
  const found = folder !== '' && existsSync(folder);
  describeIf(found, 'KINFONDS_SCHEMAS names no folder of published schemas.', title, () => suite(folder));
}

/** A suite that needs the samples and the published schemas they are held against. */
export function describeWithSamples(title: string, suite: (samples: string, schemas: string) => void): void {
  const found = [samples, publishedSchemas].every((folder) => folder !== undefined && existsSync(folder));
  const missing = 'KINFONDS_SAMPLES and KINFONDS_SCHEMAS name no folders of samples and schemas.';
  describeIf(found, missing, title, () => suite(samples ?? '', publishedSchemas ?? ''));
}

/** A suite that needs a program on the PATH (and the published schemas). */
export function describeWithTool(tool: string, title: string, suite: (schemas: string) => void): void {
  const probe = spawnSync(tool, ['--version'], { stdio: 'ignore' });
  const found = probe.error === undefined && publishedSchemas !== undefined && existsSync(publishedSchemas);
  const missing = `the program ${tool}, or the folder named by KINFONDS_SCHEMAS, is missing.`;
  describeIf(found, missing, title, () => suite(publishedSchemas ?? ''));
}
