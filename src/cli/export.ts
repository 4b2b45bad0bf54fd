import { join } from 'node:path';
import type { Command } from 'commander';
import { FORMAT_NAMES, type FormatName } from '../catalogue/format-names.ts';
import { DIR, formats, JSON_OPTION, printJson, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { progress } from './progress.ts';

interface Options {
  to?: FormatName[];
  out?: string;
  schemas?: string;
  json?: true;
}

export function exportCommand(program: Command): void {
  program
    .command('export')
    .description('write the finding aid in open standards, and validate it')
    .argument(...DIR)
    .option(
      '--to <FORMATS>',
      `${FORMAT_NAMES.join(', ')}: several of them parted by commas, or all (default: what the recipient in collection.yaml wants, else ead3)`,
      formats,
    )
    .option('--out <DIR>', 'folder to write into (default: "finding-aid" in the catalogue folder)')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds export quill-papers --to ead3,csv --out finding-aid')
    .action(async (folder: string, { to, out = join(folder, 'finding-aid'), schemas, json }: Options) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrangement } = await import('../arrange/index.ts');
      const { exportFindingAid } = await import('../export/index.ts');
      const catalogue = await loadCatalogue(folder);
      const wanted = to ?? catalogue.settings.recipient?.formats ?? ['ead3'];
      const bar = progress(1 + wanted.length);
      bar('arranging');
      const arranged = arrangement(catalogue, localDay());
      const { aid } = arranged;
      const result = await exportFindingAid(aid, wanted, out, { folder: schemas }, bar).finally(() => bar());
      const { printValidation } = await import('./validation.ts');
      const { printExported } = await import('./exported.ts');
      if ('invalid' in result) {
        process.exitCode = 1;
        if (json) return printJson(result);
        for (const validation of result.invalid) printValidation(validation, process.stderr);
        process.stderr.write('Nothing was written; an earlier export is as it was.\n');
        return;
      }
      if (json) return printJson(result);
      printExported(result.written, out);
      const { review } = await import('../review/index.ts');
      const { countFindings } = await import('./findings.ts');
      const { findings } = review(catalogue, arranged);
      if (findings.length > 0) {
        process.stderr.write(
          `There is more to say of it (${countFindings(findings)}): kinfonds check ${folder}\n`,
        );
      }
    });
}
