import type { Command } from 'commander';
import { DIR, JSON_OPTION, printJson, printLines } from './options.ts';

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
      const { suppliesFor } = await import('../housing/supplies-for.ts');
      const rows = suppliesFor(arrangement(await loadCatalogue(folder), localDay()));
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
      const { suppliesTable } = await import('../housing/supplies.ts');
      printLines(suppliesTable(rows));
      process.stderr.write(
        'Measures are outside, the longer side first. Acid-free material is best; where there is none, what is at hand serves.\n',
      );
    });
}
