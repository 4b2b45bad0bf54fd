import { type Command, InvalidArgumentError } from 'commander';
import { sayCommand } from '../catalogue/say-command.ts';
import { sayCount } from '../catalogue/say-count.ts';
import type { HandedOver, Why } from '../handover/index.ts';
import { DIR, JSON_OPTION, printJson, printLines, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { printable } from './printable.ts';
import { withBar } from './progress.ts';

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
    .option('--without-restricted', 'leave out what is restricted, and what only that tells of, too')
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
  const { handOver, sayOpen } = await import('../handover/index.ts');
  const catalogue = await loadCatalogue(folder);
  const result = await withBar((step) =>
    handOver(catalogue, out, localDay(), {
      ...(zip !== undefined && { zip }),
      ...(despite !== undefined && { despite }),
      ...(withoutRestricted !== undefined && { withoutRestricted }),
      schemas: { folder: schemas },
      step,
    }),
  );
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
  const { path, things, units, restricted, copies, files } = result.written;
  const ofUnits = units === undefined ? '' : `${sayCount(units, 'unit')} of the finding aid, `;
  printLines([
    `${path}: ${ofUnits}${sayCount(things, 'row')} of the list, ${sayCount(copies, 'digital copy', 'digital copies')}, in ${sayCount(files, 'file')}.`,
    ...(restricted === 0 ? [] : [sayRestricted(restricted)]),
    'Begin with READ-ME-FIRST.txt. Read the papers before they go: no program knows what a text gives away.',
    zip
      ? 'Unpacked, it is verified with: kinfonds verify FOLDER'
      : `Verify it after every copying: ${sayCommand('verify', path)}`,
  ]);
  const open = sayOpen(result.open, folder);
  if (open !== undefined) process.stderr.write(`${printable(open)}\n`);
}

const sayRestricted = (number: number) =>
  number === 1
    ? 'One restricted thing goes with it, and is marked so; READ-ME-FIRST.txt names it. To leave it out: --without-restricted'
    : `${number} restricted things go with it, and are marked so; READ-ME-FIRST.txt names them. To leave them out: --without-restricted`;

const WHY: Readonly<Record<Why, string>> = {
  marked: 'the list says that it stays',
  named: 'kept by handOver in collection.yaml',
  access: 'so says its access',
  restricted: 'restricted',
};

/** So many staying things are named; the rest are counted. */
const MOST = 20;

/** Said to the family and to nobody else: what is not in the package. */
function printHeld({ held, units }: HandedOver): void {
  if (held.length + units.length === 0) return;
  printStaying(
    ['row of the list stays', 'rows of the list stay'],
    held.map(({ thing, why }) => `  row ${thing.row}: ${thing.title} (${WHY[why]})`),
  );
  printStaying(
    ['unit of the finding aid stays, with all in it,', 'units of the finding aid stay, with all in them,'],
    units.map(({ unit: { referenceCode: code, title }, why }) => {
      const name = code === undefined ? title : `${code} ${title}`;
      return `  ${name} (${WHY[why]})`;
    }),
  );
  const where = units.length === 0 ? 'collection.yaml' : 'collection.yaml and finding-aid.json';
  process.stderr.write(
    `Texts in ${where} go as they are, save that dates and extent of the whole are worked out anew. Look whether they tell of what stays.\n`,
  );
}

function printStaying([one, many]: readonly [one: string, many: string], lines: readonly string[]): void {
  if (lines.length === 0) return;
  const more = lines.length > MOST ? [`  … and ${lines.length - MOST} more; --json shows all.`] : [];
  const what = lines.length === 1 ? `One ${one}` : `${lines.length} ${many}`;
  const all = [`${what} with the family:`, ...lines.slice(0, MOST), ...more];
  process.stderr.write(`${all.map(printable).join('\n')}\n`);
}

const forMachines = ({ written, held, units, findings, open }: HandedOver) => ({
  written: written ?? null,
  stays: held.map(({ thing: { row, number, title }, why }) => ({ row, number, title, why })),
  ...(units.length > 0 && {
    unitsStay: units.map(({ unit: { id, referenceCode, title }, why }) => ({
      id,
      ...(referenceCode !== undefined && { referenceCode }),
      title,
      why,
    })),
  }),
  findings,
  notHeldBack: open.map(({ row, number, title }) => ({ row, number, title })),
});

function reason(text: string): string {
  if (text.trim() === '') throw new InvalidArgumentError('Say why, in a sentence.');
  return text.trim();
}
