import type { Command } from 'commander';
import { DIR, JSON_OPTION, printJson } from './options.ts';

export function checkCommand(program: Command): void {
  program
    .command('check')
    .description('say what is missing or doubtful, and what to do about it')
    .argument(...DIR)
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds check quill-papers')
    .action(async (folder: string, { json }: { json?: true }) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrangement } = await import('../arrange/index.ts');
      const { review } = await import('../review/index.ts');
      const catalogue = await loadCatalogue(folder);
      const findings = review(catalogue, arrangement(catalogue, localDay()));
      process.exitCode = findings.length > 0 ? 1 : 0;
      if (json) return printJson(findings);
      const { countFindings, printFindings } = await import('./findings.ts');
      printFindings(findings, process.stdout);
      process.stdout.write(findings.length === 0 ? 'Nothing to add.\n' : `${countFindings(findings)}\n`);
    });
}
