import { readFile } from 'node:fs/promises';
import { type Command, Option } from 'commander';
import type { Settings } from '../catalogue/settings.ts';
import type { Measure, Sheet } from '../export/labels/index.ts';
import { SHEETS, usualSheet } from '../export/labels/sheets.ts';
import { fontFile, labelNumber, pdfFile, shift } from './label-options.ts';
import { DIR, JSON_OPTION, printJson } from './options.ts';
import { sayWritten, UNSCALED } from './say-labels.ts';

interface Options {
  out: string;
  sheet?: string;
  start?: number;
  new?: true;
  only?: 'folders' | 'boxes';
  calibrate?: true;
  shift?: Measure;
  font?: string;
  json?: true;
}

const NAMES = SHEETS.map(({ name }) => name).join(', ');

/** The sheets proposed, as the help tells of them. */
const usual = (suits: 'folders' | 'boxes'): string =>
  `${usualSheet(undefined, suits).name}, in the US and Canada ${usualSheet('US', suits).name}`;

export function labelsCommand(program: Command): void {
  program
    .command('labels')
    .description('make labels for folders and boxes, as a PDF to print on sheets of labels')
    .argument(...DIR)
    .requiredOption('--out <FILE>', 'the PDF to write', pdfFile)
    .option(
      '--sheet <SHEET>',
      `${NAMES}; or measures in mm, width before height: "page 210x297, label 70x37, first at 0x0.5, step 70x37" (default: ${usual('folders')}; with --only boxes: ${usual('boxes')})`,
    )
    .option(
      '--start <N>',
      'the first label to use on a half-used sheet, counted across, then down',
      labelNumber,
    )
    .option('--new', 'only those not yet printed, or changed since')
    .addOption(new Option('--only <WHICH>', 'folders or boxes').choices(['folders', 'boxes']))
    .option('--calibrate', 'instead, a test page for plain paper, to see how far the printer is out')
    .option('--shift <RIGHTxDOWN>', 'move everything by so many mm, such as 0.5x-1', shift)
    .option('--font <FILE>', 'a font (.ttf or .otf) for letters that the built-in one lacks', fontFile)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nWhat was printed is kept in labels-printed.csv in the catalogue folder; without --new, all is printed again.' +
        '\nWrite the numbers on the folders in pencil as well: what is glued on comes off with the years.' +
        '\nExample: kinfonds labels quill-papers --out labels.pdf --start 7',
    )
    .action(run);
}

async function run(folder: string, options: Options, command: Command): Promise<void> {
  const { out, only, calibrate, json, start, font, shift: by, new: onlyNew } = options;
  const labels = await import('../export/labels/index.ts');
  const { loadCatalogue } = await import('../catalogue/load.ts');
  const sheetFor = ({ repository }: Settings): Sheet =>
    labels.usualSheet(repository.country, only ?? 'folders');
  const given = options.sheet === undefined ? undefined : labels.readSheet(options.sheet);
  if (given !== undefined && 'trouble' in given)
    return command.error(`error: option '--sheet <SHEET>': ${given.trouble}`);

  if (calibrate) {
    const { writeWhole } = await import('../catalogue/write-whole.ts');
    const sheet = given?.sheet ?? sheetFor((await loadCatalogue(folder)).settings);
    await writeWhole(out, await labels.calibrationPdf(sheet, by));
    if (json) return printJson({ file: out, sheet });
    process.stdout.write(`${out}: a test page for ${sheet.words}.\n${UNSCALED}`);
    return;
  }

  const { localDay } = await import('../catalogue/local-day.ts');
  const { arrange } = await import('../arrange/index.ts');
  const { isSettled } = await import('../catalogue/settled.ts');
  const { sayCommand } = await import('../catalogue/say-command.ts');
  const catalogue = await loadCatalogue(folder);
  const sheet = given?.sheet ?? sheetFor(catalogue.settings);
  if (start !== undefined && start > labels.labelsOn(sheet))
    return command.error(`error: --start ${start} is too high: a sheet has ${labels.labelsOn(sheet)} labels`);
  const written = await labels.printLabels(arrange(catalogue, localDay()), folder, out, sheet, {
    ...(only !== undefined && { only }),
    ...(onlyNew && { new: true }),
    ...(start !== undefined && { start }),
    ...(by !== undefined && { shift: by }),
    ...(font !== undefined && { font: { file: font, bytes: await readFile(font) } }),
  });
  if (!isSettled(catalogue))
    process.stderr.write(
      `Not all numbers are settled, so they may change with the list. Settle them before you print: ${sayCommand('arrange', folder, '--settle')}\n`,
    );
  if (written.findings.some(({ weight }) => weight === 'should')) process.exitCode = 1;
  if (json) return printJson({ file: written.labels.length === 0 ? null : out, sheet, ...written });
  if (written.findings.length > 0) {
    const { printFindings } = await import('./findings.ts');
    printFindings(written.findings, process.stderr);
  }
  for (const line of sayWritten(written, options, sheet)) process.stdout.write(`${line}\n`);
}
