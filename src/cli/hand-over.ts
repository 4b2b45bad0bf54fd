import { type Command, InvalidArgumentError } from 'commander';
import type { HandedOver, Why } from '../handover/index.ts';
import { DIR, JSON_OPTION, printJson, printLines, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { printable } from './printable.ts';
import { progress } from './progress.ts';

interface Options {
  out: string;
  zip?: true;
  despite?: string;
  withoutRestricted?: true;
  schemas?: string;
  json?: true;
}

export function handOverCommand(program: Command): void {
  program
    .command('hand-over')
    .description('make the transfer package: finding aid, list, copies and papers, as a BagIt bag')
    .argument(...DIR)
    .requiredOption('--out <BAG>', 'the package; nothing may stand there yet')
    .option('--zip', 'make one ZIP file of it')
    .option(
      '--despite <REASON>',
      'make it although something must be mended; the reason goes into it',
      reason,
    )
    .option('--without-restricted', 'leave out everything that is not open, too')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nWhat the list marks as staying, what handOver in collection.yaml keeps, and notes for the family are left out.' +
        '\nExample: kinfonds hand-over quill-papers --out quill-papers-2026 --zip',
    )
    .action(run);
}

async function run(folder: string, options: Options): Promise<void> {
  const { out, zip, despite, withoutRestricted, schemas, json } = options;
  const { loadCatalogue } = await import('../catalogue/load.ts');
  const { localDay } = await import('../catalogue/local-day.ts');
  const { handOver } = await import('../handover/index.ts');
  const catalogue = await loadCatalogue(folder);
  const bar = progress(100);
  let shown = -1;
  const result = await handOver(catalogue, out, localDay(), {
    ...(zip !== undefined && { zip }),
    ...(despite !== undefined && { despite }),
    ...(withoutRestricted !== undefined && { withoutRestricted }),
    schemas: { folder: schemas },
    step: (done, total) => {
      for (const now = Math.floor((100 * done) / Math.max(1, total)); shown < now; shown++)
        bar(`${shown + 1} %`);
    },
  }).finally(() => bar());
  if (result.written === undefined) process.exitCode = 1;
  if (json) return printJson(forMachines(result));
  const { countFindings, printFindings } = await import('./findings.ts');
  printHeld(result);
  printFindings(result.findings, process.stderr);
  if (result.written === undefined) {
    process.stderr.write(
      `${countFindings(result.findings.filter(({ weight }) => weight === 'must'))}; no package was made.\n` +
        'Mend it first; or make the package all the same and say why: --despite "reason"\n',
    );
    return;
  }
  const { path, things, copies, files } = result.written;
  printLines([
    `${path}: ${count(things, 'row', 'rows')} of the list, ${count(copies, 'digital copy', 'digital copies')}, in ${count(files, 'file', 'files')}.`,
    'Begin with READ-ME-FIRST.txt. Read the papers before they go: no program knows what a text gives away.',
    zip
      ? 'Unpacked, it is verified with: kinfonds verify FOLDER'
      : `Verify it after every copying: kinfonds verify ${path}`,
  ]);
}

const WHY: Readonly<Record<Why, string>> = {
  marked: 'the list says that it stays',
  named: 'kept by handOver in collection.yaml',
  access: 'so says its access',
  restricted: 'restricted',
};

/** So many staying things are named; the rest are counted. */
const MOST = 20;

/** Said to the family and to nobody else: what is not in the package. */
function printHeld({ held }: HandedOver): void {
  if (held.length === 0) return;
  const lines = held
    .slice(0, MOST)
    .map(({ thing, why }) => `  row ${thing.row}: ${thing.title} (${WHY[why]})`);
  const more = held.length > MOST ? [`  … and ${held.length - MOST} more; --json shows all.`] : [];
  const what = held.length === 1 ? 'One row of the list stays' : `${held.length} rows of the list stay`;
  process.stderr.write(`${[`${what} with the family:`, ...lines, ...more].map(printable).join('\n')}\n`);
  process.stderr.write(
    'Texts in collection.yaml go as they are, save that dates and extent of the whole are worked out anew. Look whether they tell of what stays.\n',
  );
}

const forMachines = ({ written, held, findings }: HandedOver) => ({
  written: written ?? null,
  stays: held.map(({ thing: { row, number, title }, why }) => ({ row, number, title, why })),
  findings,
});

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

function reason(text: string): string {
  if (text.trim() === '') throw new InvalidArgumentError('Say why, in a sentence.');
  return text.trim();
}
