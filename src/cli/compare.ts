import { existsSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import type { Command } from 'commander';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { MergedLists } from '../compare/index.ts';
import { JSON_OPTION, printJson, printLines } from './options.ts';

interface Options {
  merge?: string;
  json?: true;
}

/** One of the two to be compared, as it was read: a catalogue still to be arranged, or a finding aid. */
type Side = { path: string } & ({ catalogue: Catalogue } | { aid: FindingAid });

export function compareCommand(program: Command): void {
  program
    .command('compare')
    .description('say what changed between two catalogues or finding aids, and merge two lists')
    .argument('<A>', 'the first: a catalogue folder, or a finding-aid.json')
    .argument('<B>', 'the second')
    .option('--merge <FILE>', 'write one list of both, with every row of either, to a new file')
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      `
Ends with 0 where there is no difference, with 1 where there is one.
Example: kinfonds compare quill-papers ruths-papers --merge both.csv`,
    )
    .action(async (pathA: string, pathB: string, { merge, json }: Options) => {
      if (merge !== undefined && existsSync(merge))
        program.error(`error: ${merge} is there already; name a file that is not`, { exitCode: 2 });
      const sides = [await readSide(pathA), await readSide(pathB)] as const;
      const [a, b] = sides;
      if (merge !== undefined && !sides.every((side) => 'catalogue' in side))
        program.error('error: --merge takes two catalogue folders; a finding aid has no list', {
          exitCode: 2,
        });
      const { compareFindingAids, isEmpty, sayComparison } = await import('../compare/index.ts');
      const day = await dayOf(sides);
      // Until its numbers are settled, an id in a catalogue is only a place.
      const idsStay = sides.every((side) => 'aid' in side || side.catalogue.settled.length > 0);
      const comparison = compareFindingAids(await arranged(a, day), await arranged(b, day), { idsStay });
      process.exitCode = isEmpty(comparison) ? 0 : 1;
      const names = namesOf(pathA, pathB);
      const merged = merge === undefined ? undefined : await mergeInto(merge, a, b, names);
      if (json) {
        if (merged === undefined) return printJson(comparison);
        const { headings: _, rows, ...said } = merged;
        return printJson({ ...comparison, merged: { file: merge, rows: rows.length, ...said } });
      }
      printLines(sayComparison(comparison));
      if (merge === undefined || merged === undefined) return;
      const { sayMerge } = await import('../compare/index.ts');
      printLines(['', ...sayMerge(merged, merge, names)]);
    });
}

async function readSide(path: string): Promise<Side> {
  const { readFile, stat } = await import('node:fs/promises');
  const isFile = await stat(path).then(
    (there) => there.isFile(),
    () => false,
  );
  if (isFile) {
    const { readFindingAid } = await import('../compare/index.ts');
    return { path, aid: readFindingAid(await readFile(path), path) };
  }
  const { loadCatalogue } = await import('../catalogue/load.ts');
  return { path, catalogue: await loadCatalogue(path) };
}

/**
 * The day on which a catalogue that names none is taken to be described: that of the finding aid it is compared with, so
 * that to compare it on another day makes no difference.
 */
async function dayOf(sides: readonly Side[]): Promise<string> {
  const days = sides.flatMap((side) => ('aid' in side ? [side.aid.control.history[0]?.date] : []));
  const { localDay } = await import('../catalogue/local-day.ts');
  return days.find((day) => day !== undefined) ?? localDay();
}

async function arranged(side: Side, day: string): Promise<FindingAid> {
  if ('aid' in side) return side.aid;
  const { arrangement } = await import('../arrange/index.ts');
  return arrangement(side.catalogue, day).aid;
}

/** What the two are called: by their folders, or in full where those have the same name. */
function namesOf(pathA: string, pathB: string): [string, string] {
  const [a, b] = [basename(resolve(pathA)), basename(resolve(pathB))];
  return a === b ? [pathA, pathB] : [a, b];
}

async function mergeInto(
  file: string,
  a: Side,
  b: Side,
  [nameA, nameB]: readonly [string, string],
): Promise<MergedLists | undefined> {
  if (!('catalogue' in a && 'catalogue' in b)) return undefined;
  const { listTable, mergedCsv, mergeLists } = await import('../compare/index.ts');
  const { writeWhole } = await import('../catalogue/write-whole.ts');
  const merged = mergeLists(listTable(a.catalogue, nameA), listTable(b.catalogue, nameB));
  await writeWhole(file, mergedCsv(merged, file));
  return merged;
}
