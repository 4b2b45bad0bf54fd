import type { Command } from 'commander';
import type { Validation } from '../xml/validation.ts';
import { JSON_OPTION, printJson, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { progress } from './progress.ts';

export function validateCommand(program: Command): void {
  program
    .command('validate')
    .description(
      'hold EAD3, EAD 2002, EAC-CPF, Dublin Core or DCMI terms, from whatever source, against their schema',
    )
    .argument('<FILE...>', 'the files, in XML')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nWhat a file is, its outermost element tells. Nothing in the files is changed.' +
        '\nExample: kinfonds validate finding-aid/ead3.xml finding-aid/ead2002.xml',
    )
    .action(async (files: string[], { schemas, json }: { schemas?: string; json?: true }) => {
      const { readFile } = await import('node:fs/promises');
      const { validatorWith } = await import('../xml/validate.ts');
      const { printNotes, printValidation } = await import('./validation.ts');
      const { whyUnreadable } = await import('../catalogue/why-unreadable.ts');
      const validate = validatorWith({ folder: schemas });
      const bar = progress(files.length);
      const results = [];
      const validations: Validation[] = [];
      for (const file of files) {
        bar(file);
        const bytes = await readFile(file).catch(whyUnreadable);
        if (typeof bytes === 'string') {
          process.exitCode = 1;
          results.push({ file, valid: false, unreadable: bytes });
          if (!json) process.stdout.write(`${file}: ${bytes}\n`);
          continue;
        }
        const validation = await validate(bytes, file);
        results.push(validation);
        validations.push(validation);
        if (!validation.valid) process.exitCode = 1;
        if (!json) printValidation(validation, process.stdout);
      }
      bar();
      if (json) printJson(results);
      else printNotes(validations, process.stdout);
    });
}
