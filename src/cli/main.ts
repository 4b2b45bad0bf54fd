#!/usr/bin/env node
import { readFileSync, statSync } from 'node:fs';
import { Command, CommanderError } from 'commander';

/** Adds a command to the program. */
type Adding = (program: Command) => void;

/** The commands, in the order in which the help tells of them. */
const COMMANDS: Readonly<Record<string, () => Promise<Adding>>> = {
  begin: async () => (await import('./begin.ts')).beginCommand,
  arrange: async () => (await import('./arrange.ts')).arrangeCommand,
  check: async () => (await import('./check.ts')).checkCommand,
  supplies: async () => (await import('./supplies.ts')).suppliesCommand,
  labels: async () => (await import('./labels.ts')).labelsCommand,
  find: async () => (await import('./find.ts')).findCommand,
  export: async () => (await import('./export.ts')).exportCommand,
  validate: async () => (await import('./validate.ts')).validateCommand,
  'take-in': async () => (await import('./take-in.ts')).takeInCommand,
  compare: async () => (await import('./compare.ts')).compareCommand,
  'hand-over': async () => (await import('./hand-over.ts')).handOverCommand,
  verify: async () => (await import('./verify.ts')).verifyCommand,
  schemas: async () => (await import('./schemas.ts')).schemasCommand,
  completion: async () => (await import('./completion.ts')).completionCommand,
};

/** Those that a call can have to do with: the one that it names, so that an answer comes at once, or else all. */
const called = ([name = '']: readonly string[]): (() => Promise<Adding>)[] =>
  Object.hasOwn(COMMANDS, name) && name !== 'completion'
    ? [COMMANDS[name] as () => Promise<Adding>]
    : Object.values(COMMANDS);

// The command files load what they need only when they run, so that help comes at once.
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

const words = process.argv.slice(2);

/** What is said of a word that is none of its choices, without the terms of the package that reads them. */
const plainer = (said: string): string =>
  said.replace(
    /command-argument value '(.*?)' is invalid for argument '(.*?)'\./,
    (_, value: string, name: string) => `“${value}” is no ${name.toLowerCase()}.`,
  );

/** What to do where a folder stands in the place of a command. */
function folderNamed(said: string): string {
  const name = /unknown command '(.*?)'/.exec(said)?.[1];
  const isFolder = name !== undefined && statSync(name, { throwIfNoEntry: false })?.isDirectory() === true;
  return isFolder ? `“${name}” is a folder. Go into it, and kinfonds alone says where things stand.\n` : '';
}

/** The example at the end of the help of a command: what to write where an option is missing. */
function exampleOf(name: string | undefined): string {
  const printed: string[] = [];
  const command = program.commands.find((one) => one.name() === name);
  command?.configureOutput({ writeOut: (help) => printed.push(help) }).outputHelp();
  return /^Example: .*\n/m.exec(printed.join(''))?.[0] ?? '';
}

const program = new Command('kinfonds')
  .description(
    'From the list of a family’s papers to an order, folders, and a finding aid that an archive can load.',
  )
  .version(version, '--version', 'print the version')
  .helpOption('--help', 'print help')
  .helpCommand('help [command]', 'print help on a command')
  .addHelpText(
    'after',
    '\nWithout a command, in a catalogue folder: where things stand, and what to do next (--json for other programs).',
  )
  .exitOverride()
  .configureOutput({
    outputError: (said, write) =>
      write(`${plainer(said)}${/required option/.test(said) ? exampleOf(words[0]) : ''}${folderNamed(said)}`),
  })
  .configureHelp({ sortSubcommands: false, showGlobalOptions: false });

for (const add of await Promise.all(called(words).map((load) => load()))) add(program);

// A reader that has seen enough (`kinfonds arrange | head`) ends the work in peace.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`kinfonds: The result could not be printed (${error.code}).\n`);
  process.exit(1);
});

try {
  // Without a command: with nothing, or with --json alone.
  if (words.every((word) => word === '--json')) await (await import('./status.ts')).statusAction(program);
  else await program.parseAsync();
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else process.exitCode = (await import('./trouble.ts')).report(error);
}
