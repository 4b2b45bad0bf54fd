import { existsSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import type { Command } from 'commander';
import type { MergedLists } from '../compare/index.ts';
import { arranged, dayOf, readSide, type Side } from './compared.ts';
import { JSON_OPTION, printJson, printLines } from './options.ts';

interface Options {
  merge?: string;
  json?: true;
}

export function compareCommand(program: Command): void {
  program
    .command('compare')
    .description('say what changed between two catalogues or finding aids, and merge two lists')
    .argument(
      '<A>',
      'the first: a catalogue folder, a finding aid in EAD3 or EAD 2002, a finding-aid.json, or a package made by hand-over',
    )
    .argument('<B>', 'the second')
    .option('--merge <FILE>', 'write one list of both, with every row of either, to a new file')
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      `
Ends with 0 where there is no difference, with 1 where there is one.
What EAD has no place for is not compared where one of the two is in EAD.
Example: kinfonds compare quill-papers ruths-papers --merge both.csv
          kinfonds compare ead3.xml ead3-revised.xml`,
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
      const { compareFindingAids, inOneForm, isEmpty, sayAs, sayComparison } = await import(
        '../compare/index.ts'
      );
      const day = await dayOf(sides);
      // Until its numbers are settled, an id in a catalogue is only a place.
      const idsStay = sides.every((side) => 'aid' in side || side.catalogue.settled.length > 0);
      const told = await inOneForm(await arranged(a, day), await arranged(b, day), day);
      const comparison = compareFindingAids(...told.aids, { idsStay, inFormOf: told.inFormOf });
      const versions = sides.map((side) => ('aid' in side ? side.version : undefined));
      process.exitCode = isEmpty(comparison) ? 0 : 1;
      const names = namesOf(pathA, pathB);
      const merged = merge === undefined ? undefined : await mergeInto(merge, a, b, names);
      if (json) {
        const said = { ...comparison, ...(told.as !== undefined && { comparedAs: told.as }) };
        if (merged === undefined) return printJson(said);
        const { headings: _, rows, ...ofMerging } = merged;
        return printJson({ ...said, merged: { file: merge, rows: rows.length, ...ofMerging } });
      }
      printLines(sayComparison(comparison));
      const form = told.as === undefined ? undefined : sayAs(told.as, versions);
      if (form !== undefined) printLines(['', form]);
      if (merge === undefined || merged === undefined) return;
      const { sayMerge } = await import('../compare/index.ts');
      printLines(['', ...sayMerge(merged, merge, names)]);
    });
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
