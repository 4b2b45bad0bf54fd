import type { Command } from 'commander';
import { sayCommand } from '../catalogue/say-command.ts';
import { DIR, JSON_OPTION, printJson, printLines } from './options.ts';
import { printable } from './printable.ts';

interface Options {
  out?: string;
  json?: true;
}

export function suppliesCommand(program: Command): void {
  program
    .command('supplies')
    .description('say how many folders, sleeves and boxes to get')
    .argument(...DIR)
    .option('--out <FILE>', 'write the list as CSV instead')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds supplies quill-papers --out supplies.csv')
    .action(async (folder: string, { out, json }: Options) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrangement } = await import('../arrange/index.ts');
      const { foldersApart, suppliesFor } = await import('../housing/supplies-for.ts');
      const { notToBeBoxed, sayNotBoxed } = await import('../review/index.ts');
      const catalogue = await loadCatalogue(folder);
      const arranged = arrangement(catalogue, localDay());
      const rows = suppliesFor(arranged);
      const cautions = [...notToBeBoxed(catalogue, arranged)].map(
        ([code, one]) => `${code}  ${one.thing}, ${sayNotBoxed(one)}\n`,
      );
      // Beside the list and not in it, which goes to a shop.
      if (cautions.length > 0)
        process.stderr.write(
          `${cautions.map(printable).join('')}The list counts them all the same. What to do about them first: ${sayCommand('check', folder, '--work')}\n`,
        );
      if (out !== undefined) {
        const { suppliesCsv } = await import('../housing/supplies.ts');
        const { writeWhole } = await import('../catalogue/write-whole.ts');
        await writeWhole(out, suppliesCsv(rows));
      }
      if (json) return printJson(rows);
      if (out !== undefined) {
        process.stdout.write(`${out}\n`);
        return;
      }
      const { sayFoldersApart, suppliesTable } = await import('../housing/supplies.ts');
      printLines(suppliesTable(rows));
      process.stderr.write(
        'Measures are outside, the longer side first. Acid-free material is best; where there is none, what is at hand serves.\n',
      );
      const apart = sayFoldersApart(foldersApart(arranged.groups));
      if (apart !== '') process.stderr.write(`${apart}\n`);
    });
}
