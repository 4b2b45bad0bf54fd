#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import { Command, CommanderError } from 'commander';
import { arrangeCommand } from './arrange.ts';
import { beginCommand } from './begin.ts';
import { checkCommand } from './check.ts';
import { compareCommand } from './compare.ts';
import { completionCommand } from './completion.ts';
import { exportCommand } from './export.ts';
import { findCommand } from './find.ts';
import { handOverCommand } from './hand-over.ts';
import { labelsCommand } from './labels.ts';
import { schemasCommand } from './schemas.ts';
import { isAlone, STATUS_HELP, statusAction } from './status.ts';
import { suppliesCommand } from './supplies.ts';
import { takeInCommand } from './take-in.ts';
import { validateCommand } from './validate.ts';
import { verifyCommand } from './verify.ts';

// The command files load what they need only when they run, so that help comes at once.
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

const program = new Command('kinfonds')
  .description(
    'From the list of a family’s papers to an order, folders, and a finding aid that an archive can load.',
  )
  .version(version, '--version', 'print the version')
  .helpOption('--help', 'print help')
  .helpCommand('help [command]', 'print help on a command')
  .addHelpText('after', STATUS_HELP)
  .exitOverride()
  .configureHelp({ sortSubcommands: false, showGlobalOptions: false });

for (const add of [
  beginCommand,
  arrangeCommand,
  checkCommand,
  suppliesCommand,
  labelsCommand,
  findCommand,
  exportCommand,
  validateCommand,
  takeInCommand,
  compareCommand,
  handOverCommand,
  verifyCommand,
  schemasCommand,
  completionCommand,
]) {
  add(program);
}

// A reader that has seen enough (`kinfonds arrange | head`) ends the work in peace.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`kinfonds: The result could not be printed (${error.code}).\n`);
  process.exit(1);
});

try {
  if (isAlone(process.argv.slice(2))) await statusAction(program);
  else await program.parseAsync();
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else process.exitCode = (await import('./trouble.ts')).report(error);
}
