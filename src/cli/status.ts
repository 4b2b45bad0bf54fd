import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import type { Command } from 'commander';
import type { Finding } from '../catalogue/finding.ts';
import { sayList } from '../catalogue/say-list.ts';
import { printJson, printLines } from './options.ts';

/**
 * What `kinfonds` without a command does: in a catalogue folder it says where things stand and what to do next,
 * above one it says where they are, elsewhere it prints the help.
 * @throws CatalogueError where something in the catalogue must be mended first
 */
export async function statusAction(program: Command, json = process.argv.includes('--json')): Promise<void> {
  const { SETTINGS_FILE } = await import('../catalogue/load-findings.ts');
  if (!existsSync(SETTINGS_FILE)) {
    if (json)
      program.error(`error: --json without a command needs a catalogue folder, one with a ${SETTINGS_FILE}`, {
        exitCode: 2,
      });
    const below = await cataloguesBelow();
    return below.length === 0 ? program.outputHelp() : printLines(sayBelow(below));
  }
  const { CatalogueError } = await import('../catalogue/finding.ts');
  const { loadCatalogue } = await import('../catalogue/load.ts');
  const { FILL_IN, nextStep } = await import('../review/next-step.ts');
  const { sayEmpty, sayNextStep, sayStatus } = await import('../review/say-status.ts');
  const loaded = await loadCatalogue('.').catch((error: unknown) => {
    // An empty list is no fault but where everybody begins.
    const none = error instanceof CatalogueError ? onlyEmpty(error.findings) : undefined;
    if (none === undefined) throw error;
    return none;
  });
  if (!('things' in loaded)) {
    if (json) return printJson({ list: { file: loaded.place.file, things: 0 }, next: FILL_IN });
    return printLines([...sayEmpty(loaded.found), ...sayNextStep(FILL_IN)]);
  }
  const { localDay } = await import('../catalogue/local-day.ts');
  const { tracesOf } = await import('../catalogue/traces.ts');
  const { arrangement } = await import('../arrange/index.ts');
  const { review } = await import('../review/index.ts');
  const { statusOf } = await import('../review/status.ts');
  const arranged = arrangement(loaded, localDay());
  const { findings } = review(loaded, arranged);
  const status = statusOf(loaded, arranged, findings, await tracesOf(loaded));
  const next = nextStep(status, basename(resolve('.')), localDay());
  if (json) return printJson({ ...status, next });
  printLines(sayStatus(status));
  printLines(sayNextStep(next));
}

/** The folders here, in their order, that are catalogue folders. */
async function cataloguesBelow(): Promise<string[]> {
  const { SETTINGS_FILE } = await import('../catalogue/load-findings.ts');
  const names = await readdir('.').catch(() => []);
  return names.filter((name) => existsSync(join(name, SETTINGS_FILE))).sort();
}

const NAMED = 5;

function sayBelow(folders: readonly string[]): string[] {
  const named = folders.slice(0, NAMED).map((name) => `${name}/`);
  const more = folders.length - named.length;
  const all = more > 0 ? [...named, `${more} more`] : named;
  return [
    `No catalogue here; there ${folders.length === 1 ? 'is one' : 'are some'} in ${sayList(all)}.`,
    `Go there and type kinfonds: it says where things stand, and what to do next. All commands: kinfonds help`,
  ];
}

/** The finding that the list holds no thing, where nothing else must be mended. */
function onlyEmpty(findings: readonly Finding[]): Finding | undefined {
  const musts = findings.filter(({ weight }) => weight === 'must');
  return musts.length === 1 ? musts.find(({ rule }) => rule === 'list.no-things') : undefined;
}
