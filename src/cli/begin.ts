import type { Command } from 'commander';
import { DIR, JSON_OPTION, printJson } from './options.ts';

export function beginCommand(program: Command): void {
  program
    .command('begin')
    .description('make a new catalogue folder with a list to fill in')
    .argument(...DIR)
    .option('--title <TITLE>', 'what the collection is called, such as "Quill family papers"')
    .option('--prefix <LETTERS>', 'what reference codes begin with, such as QF')
    .option('--repository <NAME>', 'who keeps it: the family itself, or an archive')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds begin quill-papers --title "Quill family papers" --prefix QF')
    .action(async (folder: string, { json, ...options }: { json?: true; title?: string }) => {
      const { beginCatalogue } = await import('../catalogue/begin.ts');
      const files = await beginCatalogue(folder, options);
      if (json) return printJson({ folder, files });
      const kept = files.some((file) => file.endsWith('list.csv'))
        ? ''
        : ' The list that is there was left as it is.';
      process.stdout.write(`Made ${files.join(' and ')}.${kept}\n`);
      process.stdout.write(
        `Fill in both, one row of the list for each thing; then run: kinfonds arrange ${folder}\n`,
      );
    });
}
