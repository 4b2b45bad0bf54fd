import { type Command, Option } from 'commander';
import { sayCommand } from '../catalogue/say-command.ts';
import { DIR, JSON_OPTION, printJson, printLines } from './options.ts';
import { progress } from './progress.ts';

interface Options {
  work?: true;
  out?: string;
  json?: true;
}

export function checkCommand(program: Command): void {
  program
    .command('check')
    .description('say what is missing, doubtful or dangerous, and what to do about it')
    .argument(...DIR)
    .addOption(
      new Option(
        '--work',
        'list instead what must still be done with the things before boxing, box by box',
      ).conflicts('out'),
    )
    .option('--out <FILE>', 'write the report as a page for reading and printing')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds check quill-papers --out report.html')
    .action(async (folder: string, { work, out, json }: Options) => {
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrangement } = await import('../arrange/index.ts');
      const { handlingList, notToBeBoxed, review, sayHandling, verdict } = await import('../review/index.ts');
      const { wordTables } = await import('../review/own-words.ts');
      const catalogue = await loadCatalogue(folder);
      const { settings } = catalogue;
      const arranged = arrangement(catalogue, localDay());
      const handling = handlingList(
        arranged,
        wordTables(settings).handling,
        notToBeBoxed(catalogue, arranged),
      );
      if (work) {
        if (json) return printJson(handling);
        return printLines(handling.length === 0 ? ['Nothing is noted to be done.'] : sayHandling(handling));
      }
      const { inList } = await import('../catalogue/list-places.ts');
      const { copiesIn } = await import('../copies/index.ts');
      const named = catalogue.things.flatMap(({ copies }) => copies);
      const bar = progress(new Set(named).size);
      const copies = await copiesIn(folder, named, () => bar('looking at the copies')).finally(() => bar());
      const found = review(catalogue, arranged, copies);
      const { answered } = found;
      const findings = inList(found.findings, catalogue);
      process.exitCode = findings.length > 0 ? 1 : 0;
      if (out !== undefined) {
        const { reportPage } = await import('../review/report.ts');
        const { writeWhole } = await import('../catalogue/write-whole.ts');
        await writeWhole(out, reportPage(settings.title, localDay(), { findings, answered }, handling));
      }
      if (json) return printJson(findings);
      if (out !== undefined) {
        process.stdout.write(`${out}\n`);
        return;
      }
      const { countFindings, printFindings } = await import('./findings.ts');
      printFindings(findings, process.stdout);
      if (findings.length > 0) process.stdout.write(`\n${countFindings(findings)}\n`);
      if (answered.length > 0) process.stdout.write(`${answered.length} answered in collection.yaml\n`);
      if (handling.length > 0) {
        process.stdout.write(`To be done before boxing: ${sayCommand('check', folder, '--work')}\n`);
      }
      process.stdout.write(`${verdict(findings)}\n`);
    });
}
