import { type Command, Option } from 'commander';
import type { Start } from '../catalogue/begin-template.ts';
import type { Finding } from '../catalogue/finding.ts';
import { sayCommand } from '../catalogue/say-command.ts';
import { sayCount } from '../catalogue/say-count.ts';
import { DIR, JSON_OPTION, printJson, printLines } from './options.ts';

interface Options extends Start {
  from?: string;
  copies?: string;
  preview?: true;
  json?: true;
}

export function beginCommand(program: Command): void {
  program
    .command('begin')
    .description('make a new catalogue folder with a list to fill in, or around a list that is there')
    .argument(...DIR)
    .option('--title <TITLE>', 'what the collection is called, such as "Quill family papers"')
    .option('--prefix <LETTERS>', 'what reference codes begin with, such as QF')
    .option('--repository <NAME>', 'who keeps it: the family itself, or an archive')
    .option('--from <FILE>', 'start from a list that is kept already: XLSX, ODS, CSV or TSV')
    .addOption(
      new Option(
        '--copies <FOLDER>',
        'start with a row for each scan or photograph in a folder inside DIR',
      ).conflicts(['from', 'preview']),
    )
    .option('--preview', 'make nothing; show how the list in DIR, or the one of --from, is understood')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds begin quill-papers --title "Quill family papers" --prefix QF')
    .action(async (folder: string, { from, copies, preview, json, ...given }: Options) => {
      if (preview) return showPreview(folder, from, json);
      const { refuseInBag } = await import('./in-bag.ts');
      await refuseInBag(folder);
      const start = json ? given : await asked(given);
      if (start === undefined) {
        process.exitCode = 1;
        process.stderr.write('\nNothing was made.\n');
        return;
      }
      if (from !== undefined) return fromList(folder, from, start, json);
      if (copies !== undefined) return fromCopies(folder, copies, start, json);
      return fromNothing(folder, start, json);
    });
}

/**
 * On a terminal, what no option has said is asked for, unless an option has said something already.
 * @returns undefined where whoever is asked has had enough
 */
async function asked(given: Start): Promise<Start | undefined> {
  const { stdin, stderr } = process;
  if (!stdin.isTTY || !stderr.isTTY || Object.keys(given).length > 0) return given;
  const { createInterface } = await import('node:readline/promises');
  const { askStart } = await import('./ask.ts');
  const { initials } = await import('../catalogue/begin.ts');
  const terminal = createInterface({ input: stdin, output: stderr });
  // Line by line, so that answers pasted together are not lost between two questions.
  const lines = terminal[Symbol.asyncIterator]();
  let ended = false;
  const ask = async (question: string) => {
    if (ended) return '';
    terminal.setPrompt(`${question} `);
    terminal.prompt();
    const { value, done } = await lines.next();
    ended = done === true;
    return ended ? '' : String(value).trim();
  };
  stderr.write('Each answer may be left empty, and be written into collection.yaml later.\n');
  try {
    const start = await askStart(given, ask, initials);
    return ended ? undefined : start;
  } finally {
    terminal.close();
  }
}

async function showPreview(folder: string, from: string | undefined, json?: true): Promise<void> {
  const { previewCatalogue, previewFile } = await import('../catalogue/preview.ts');
  const read = from === undefined ? await previewCatalogue(folder) : await previewFile(from);
  if (mustBeMended(read.findings)) process.exitCode = 1;
  if (json) return printJson(read);
  const { sayPreview } = await import('./preview.ts');
  const { printFindings } = await import('./findings.ts');
  printLines(sayPreview(read.tables));
  printFindings(read.findings, process.stderr, false);
}

const mustBeMended = (findings: readonly Finding[]) => findings.some(({ weight }) => weight === 'must');

async function fromNothing(folder: string, start: Start, json?: true): Promise<void> {
  const { beginCatalogue } = await import('../catalogue/begin.ts');
  const files = await beginCatalogue(folder, start, ['xlsx', 'csv']);
  if (json) return printJson({ folder, files });
  if (files.length === 1) {
    say(`Made ${files.join('')}. The list that is there was left as it is.`);
    say(`Fill in collection.yaml. Then run: ${sayCommand('arrange', folder)}`);
    return;
  }
  say(`Made ${files.join(', ')}.`);
  say(
    'Fill in collection.yaml, and one row of a list for each thing: in list.xlsx or in list.csv, not in both.',
  );
  say(`Then run: ${sayCommand('arrange', folder)}`);
}

async function fromList(folder: string, from: string, start: Start, json?: true): Promise<void> {
  const { beginFrom } = await import('../catalogue/begin-from.ts');
  const { files, tables, findings } = await beginFrom(folder, from, start);
  if (mustBeMended(findings)) process.exitCode = 1;
  if (json) return printJson({ folder, files, tables, findings });
  const { sayPreview } = await import('./preview.ts');
  const { printFindings } = await import('./findings.ts');
  printLines(sayPreview(tables));
  printFindings(findings, process.stderr, false);
  say(`Made ${files.join(', ')}.`);
  if (mustBeMended(findings))
    say('Before it can be arranged, what is marked “must” above has to be mended in the list.');
  say('Where something is understood wrongly, mend the list, or say it under “list” in collection.yaml.');
  say(`See it again with: ${sayCommand('begin', folder, '--preview')}`);
  say(`Fill in collection.yaml. Then run: ${sayCommand('arrange', folder)}`);
}

async function fromCopies(folder: string, copies: string, start: Start, json?: true): Promise<void> {
  const { beginWithCopies } = await import('../catalogue/begin-copies.ts');
  const { files, rows, dated } = await beginWithCopies(folder, copies, start);
  if (json) return printJson({ folder, files, rows, dated });
  say(`Made ${files.join(', ')}, with ${sayCount(rows, 'row')}.`);
  say('The titles are names of files; write in their place what each thing is.');
  if (dated > 0)
    say(
      `${sayCount(dated, 'row has', 'rows have')} the date of a camera; where it saw an older thing, write the date of that.`,
    );
  say(`Fill in collection.yaml. Then run: ${sayCommand('arrange', folder)}`);
}

const say = (line: string) => process.stdout.write(`${line}\n`);
