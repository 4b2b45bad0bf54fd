import { statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import type { Settings } from '../catalogue/settings.ts';
import type { LabelsWritten, Measure, Sheet } from '../export/labels/index.ts';
import { SHEETS } from '../export/labels/sheets.ts';
import { DIR, JSON_OPTION, printJson } from './options.ts';

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

export function labelsCommand(program: Command): void {
  program
    .command('labels')
    .description('make labels for folders and boxes, as a PDF to print on sheets of labels')
    .argument(...DIR)
    .requiredOption('--out <FILE>', 'the PDF to write', pdfFile)
    .option(
      '--sheet <SHEET>',
      `${NAMES}; or measures in mm, width before height: "page 210x297, label 70x37, first at 0x0.5, step 70x37" (default: for folders the first of the country’s paper, with --only boxes a larger one)`,
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
  const catalogue = await loadCatalogue(folder);
  const sheet = given?.sheet ?? sheetFor(catalogue.settings);
  if (start !== undefined && start > labels.labelsOn(sheet))
    return command.error(`error: --start ${start}: this sheet has ${labels.labelsOn(sheet)} labels.`);
  const written = await labels.printLabels(arrange(catalogue, localDay()), folder, out, sheet, {
    ...(only !== undefined && { only }),
    ...(onlyNew && { new: true }),
    ...(start !== undefined && { start }),
    ...(by !== undefined && { shift: by }),
    ...(font !== undefined && { font: { file: font, bytes: await readFile(font) } }),
  });
  if (!isSettled(catalogue))
    process.stderr.write(
      `Not all numbers are settled, so they may change with the list. Settle them before you print: kinfonds arrange ${folder} --settle\n`,
    );
  if (written.findings.some(({ weight }) => weight === 'should')) process.exitCode = 1;
  if (json) return printJson({ file: written.labels.length === 0 ? null : out, sheet, ...written });
  if (written.findings.length > 0) {
    const { printFindings } = await import('./findings.ts');
    printFindings(written.findings, process.stderr);
  }
  for (const line of sayWritten(written, options, sheet)) process.stdout.write(`${line}\n`);
}

const UNSCALED = 'Print it at 100 % (“actual size”), not fitted to the page.\n';

function* sayWritten(
  written: LabelsWritten,
  { out, only, new: onlyNew }: Options,
  sheet: Sheet,
): Generator<string> {
  const { labels, sheets, fresh, changed, before, next } = written;
  if (onlyNew) yield `${fresh} new, ${changed} changed since they were printed, ${before} as printed before.`;
  if (labels.length === 0) {
    const which = only === 'boxes' ? 'boxes' : only === 'folders' ? 'folders' : 'folders or boxes';
    yield onlyNew && before > 0
      ? 'Nothing to print; no file was written.'
      : `There are no ${which} yet; no file was written.`;
    return;
  }
  const folders = labels.filter(({ of }) => of === 'folder').length;
  const boxes = labels.length - folders;
  const parts = [count(folders, 'folder', 'folders'), count(boxes, 'box', 'boxes')].filter(
    (part) => part !== '',
  );
  yield `${out}: labels for ${parts.join(' and ')}, on ${count(sheets, 'sheet', 'sheets')}.`;
  yield `Sheets to use: ${sheet.words}.`;
  yield UNSCALED.trimEnd();
  if (next !== undefined) yield `The last sheet has labels left; the next time begin with: --start ${next}`;
  if (folders > 0 && boxes > 0) yield 'Larger labels for the boxes alone: --only boxes';
}

const count = (number: number, one: string, many: string): string =>
  number === 0 ? '' : `${number} ${number === 1 ? one : many}`;

// The list lies in the same folder; a slip must not write over it.
function pdfFile(file: string): string {
  if (!/.\.pdf$/i.test(basename(file)))
    throw new InvalidArgumentError('The name of the file has to end in .pdf.');
  return file;
}

function labelNumber(text: string): number {
  if (!/^[1-9]\d{0,4}$/.test(text)) throw new InvalidArgumentError('It is a number from 1 on.');
  return Number(text);
}

// In millimetres: whoever needs more has chosen another sheet than the one in the printer.
const FURTHEST = 10;

function shift(text: string): Measure {
  const [, right = '', down = ''] =
    /^([+-]?\d+(?:\.\d+)?)\s*[x×]\s*([+-]?\d+(?:\.\d+)?)$/.exec(text.trim()) ?? [];
  const measure: Measure = [Number(right), Number(down)];
  if (right === '' || measure.some((side) => Math.abs(side) > FURTHEST))
    throw new InvalidArgumentError(
      `It is two numbers in mm, right and down, up to ${FURTHEST}, such as 0.5x-1.`,
    );
  return measure;
}

function fontFile(file: string): string {
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true)
    throw new InvalidArgumentError('There is no such file.');
  return file;
}
