import { join } from 'node:path';
import type { Command } from 'commander';
import type { FormatName } from '../export/format-names.ts';
import { DIR, formats, JSON_OPTION, printJson, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { progress } from './progress.ts';

interface Options {
  to: FormatName[];
  out?: string;
  schemas?: string;
  json?: true;
}

export function exportCommand(program: Command): void {
  program
    .command('export')
    .description('write the finding aid in open standards, and validate it')
    .argument(...DIR)
    .option('--to <FORMATS>', 'ead3, json, csv, several of them parted by commas, or all', formats, ['ead3'])
    .option('--out <DIR>', 'folder to write into (default: "finding-aid" in the catalogue folder)')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds export quill-papers --to ead3,csv --out finding-aid')
    .action(async (folder: string, { to, out = join(folder, 'finding-aid'), schemas, json }: Options) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrange } = await import('../arrange/index.ts');
      const { exportFindingAid } = await import('../export/index.ts');
      const bar = progress(2 + 2 * to.length);
      bar('reading the list');
      const catalogue = await loadCatalogue(folder);
      bar('arranging');
      const aid = arrange(catalogue, localDay());
      const result = await exportFindingAid(aid, to, out, { folder: schemas }, bar).finally(() => bar());
      const { printValidation } = await import('./validation.ts');
      if ('invalid' in result) {
        process.exitCode = 1;
        if (json) return printJson(result);
        for (const validation of result.invalid) printValidation(validation, process.stderr);
        process.stderr.write('Nothing was written; an earlier export is as it was.\n');
        return;
      }
      if (json) return printJson(result);
      for (const { path, validation } of result.written) {
        process.stdout.write(`${path}\n`);
        if (validation !== undefined) printValidation(validation, process.stderr);
      }
      const { review } = await import('../review/index.ts');
      const { countFindings } = await import('./findings.ts');
      const findings = review(catalogue, aid);
      if (findings.length > 0) {
        process.stderr.write(
          `There is more to say of it (${countFindings(findings)}): kinfonds check ${folder}\n`,
        );
      }
    });
}
