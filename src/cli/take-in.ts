import { type Command, InvalidArgumentError } from 'commander';
import { JSON_OPTION, printJson } from './options.ts';
import { printable } from './printable.ts';

export function takeInCommand(program: Command): void {
  program
    .command('take-in')
    .description('make a catalogue folder of a finding aid in EAD3 or EAD 2002, from whatever source')
    .argument('<FILE>', 'the finding aid')
    .requiredOption('--into <DIR>', 'the catalogue folder to make', (folder: string) => {
      if (folder.trim() === '') throw new InvalidArgumentError('Name a folder.');
      return folder;
    })
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds take-in applegarth.xml --into applegarth-papers')
    .action(async (file: string, { into, json }: { into: string; json?: true }) => {
      const { readFile } = await import('node:fs/promises');
      const { whyUnreadable } = await import('../catalogue/why-unreadable.ts');
      const bytes = await readFile(file).catch(whyUnreadable);
      if (typeof bytes === 'string') {
        process.exitCode = 1;
        if (json) return printJson({ file, unreadable: bytes });
        process.stderr.write(`${printable(file)}: ${bytes}\n`);
        return;
      }
      const { localDay } = await import('../catalogue/local-day.ts');
      const { takeIn } = await import('../export/ead/take-in.ts');
      const { catalogueOf } = await import('../catalogue/catalogue-of.ts');
      const { aid, report } = await takeIn(bytes, file, localDay());
      const files = await catalogueOf(aid, into);
      if (json) return printJson({ folder: into, files, report });
      const { sayReport } = await import('../export/ead/say-report.ts');
      process.stdout.write(`Made ${files.join(', ')}.\n`);
      for (const line of sayReport(report, into)) process.stdout.write(`${printable(line)}\n`);
    });
}
