import type { Command } from 'commander';
import type { BagVerdict } from '../handover/bag/index.ts';
import type { Validation } from '../xml/validation.ts';
import { JSON_OPTION, printJson, printLines, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { printable } from './printable.ts';
import { withBar } from './progress.ts';

interface Options {
  deep?: true;
  schemas?: string;
  json?: true;
}

export function verifyCommand(program: Command): void {
  program
    .command('verify')
    .description('say of any BagIt bag whether every byte of it is still as it was')
    .argument('<BAG>', 'the folder in which bagit.txt lies')
    .option('--deep', 'hold the finding aids and records in it against their schemas, too')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nNothing in the bag is changed. Do it once a year with each copy, and after every move to another disk.' +
        '\nExample: kinfonds verify quill-papers-2026',
    )
    .action(run);
}

async function run(folder: string, { deep, schemas, json }: Options): Promise<void> {
  const { validateInside, verifyBag } = await import('../handover/bag/index.ts');
  const verdict = await withBar((step) => verifyBag(folder, { step }));
  const inside = deep
    ? await withBar((step) => validateInside(folder, { folder: schemas }, step))
    : undefined;
  const isFine = verdict.valid && (inside ?? []).every(({ valid }) => valid);
  process.exitCode = isFine ? 0 : 1;
  if (json) return printJson({ folder, ...verdict, ...(inside !== undefined && { inside }) });
  const { printFindings } = await import('./findings.ts');
  printFindings(verdict.findings, process.stdout);
  printLines(sayVerdict(folder, verdict));
  if (inside !== undefined) await printInside(inside);
}

function sayVerdict(folder: string, verdict: BagVerdict): string[] {
  const { valid, version, algorithms, files, bytes, changed, missing, extra, findings } = verdict;
  const of = `${version === undefined ? '' : `BagIt ${version}, `}${count(files, 'file')} of ${size(bytes)}, by ${algorithms.join(' and ') || 'no checksum'}`;
  if (valid) {
    const doubts = findings.some(({ weight }) => weight === 'should');
    const also = doubts ? ' Stricter checkers may refuse the bag for what is said above.' : '';
    return [`${folder}: every byte is as it was (${of}).${also}`];
  }
  const other = findings.filter(
    ({ weight, rule }) =>
      weight === 'must' && !/^bag\.(?:changed|unreadable|missing|to-fetch|extra)$/.test(rule),
  ).length;
  const parts = [
    changed.length > 0 ? `${changed.length} changed` : '',
    missing.length > 0 ? `${missing.length} missing` : '',
    extra.length > 0 ? `${extra.length} extra` : '',
    other > 0 ? `${count(other, 'fault')} in how it is made` : '',
  ].filter((part) => part !== '');
  const harmed = findings.some(({ rule }) => HARM.test(rule));
  return [`${folder}: not valid: ${parts.join(', ')} (${of}).`, ...(harmed ? ['', ...WHAT_TO_DO] : [])];
}

const HARM = /^bag\.(?:changed|unreadable|missing)$/;

const WHAT_TO_DO = [
  'What to do',
  '  1. Change nothing in this copy, and do not write it over any other: even a damaged copy may hold what no other has.',
  '  2. Verify the other copies. Where one is as it was, make a new copy from it and verify that; keep this one until then.',
  '  3. If no copy is whole, take each file from the copy in which it is as it was.',
  '  4. Find out why: ask whoever had the bag, and look whether the disk is failing. A disk that has lost one file will lose more.',
  '  5. If all copies are damaged, ask the archive that received the package for theirs, or somebody who recovers files, before trying anything.',
];

async function printInside(inside: readonly Validation[]): Promise<void> {
  const { printNotes, printValidation, saySchema } = await import('./validation.ts');
  const faulty = inside.filter(({ valid }) => !valid);
  for (const one of faulty) printValidation({ ...one, file: printable(one.file) }, process.stdout);
  printNotes(faulty, process.stdout);
  const right = inside.length - faulty.length;
  const schemas = [
    ...new Set(inside.flatMap(({ schema }) => (schema === undefined ? [] : [saySchema(schema)]))),
  ];
  printLines([
    inside.length === 0
      ? 'There is no finding aid in XML in it.'
      : `Finding aids and records in XML: ${right} valid, ${faulty.length} not valid${schemas.length > 0 ? `, by ${schemas.join('; ')}` : ''}.`,
  ]);
}

const count = (number: number, word: string) =>
  `${number.toLocaleString('en')} ${word}${number === 1 ? '' : 's'}`;

function size(bytes: number): string {
  if (bytes < 1000) return count(bytes, 'byte');
  const [unit, over] = bytes < 1e6 ? ['kB', 1e3] : bytes < 1e9 ? ['MB', 1e6] : ['GB', 1e9];
  return `${(bytes / over).toLocaleString('en', { maximumFractionDigits: 1 })} ${unit}`;
}
