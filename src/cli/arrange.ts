import type { Command } from 'commander';
import { DIR, JSON_OPTION, printJson } from './options.ts';
import { printable } from './printable.ts';

interface Options {
  compare?: true;
  things?: true;
  json?: true;
}

export function arrangeCommand(program: Command): void {
  program
    .command('arrange')
    .description('put the things into groups, order and folders, and show the result')
    .argument(...DIR)
    .option('--compare', 'weigh several ways of sorting instead')
    .option('--things', 'list every thing in its folder')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds arrange quill-papers --compare')
    .action(async (folder: string, { compare, things: all, json }: Options) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrange, compareSortings, leftOverThings, outline } = await import('../arrange/index.ts');
      const catalogue = await loadCatalogue(folder);
      if (compare) {
        const summaries = compareSortings(catalogue.settings, catalogue.things);
        if (json) return printJson(summaries);
        const { sortingTable } = await import('../arrange/sorting-table.ts');
        for (const line of sortingTable(summaries)) process.stdout.write(`${printable(line)}\n`);
        return;
      }
      const aid = arrange(catalogue, localDay());
      if (json) {
        const { findingAidToJson } = await import('../catalogue/finding-aid-file.ts');
        for (const piece of findingAidToJson(aid)) process.stdout.write(piece);
        return;
      }
      for (const line of outline(aid.collection, all ? 'item' : 'file'))
        process.stdout.write(`${printable(line)}\n`);
      const left = leftOverThings(catalogue).length;
      if (left > 0) {
        const count = `${left} of ${catalogue.things.length} things`;
        process.stderr.write(`${count} fit no group; this names them: kinfonds check ${folder}\n`);
      }
    });
}
