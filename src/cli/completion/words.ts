import type { Argument, Command, Option } from 'commander';
import { FORMAT_NAMES } from '../../catalogue/format-names.ts';

/** What can be typed at a place: nothing that is known, a folder, a file, one of some words, or several with commas. */
export type Typed =
  | { kind: 'text' | 'folder' | 'file' }
  | { kind: 'word' | 'words'; words: readonly string[] };

/** An option: its forms with their dashes, and what follows it, if anything does. */
export interface OptionWords {
  forms: readonly string[];
  about: string;
  value?: Typed;
}

/** A command: what it is called, and what can be typed after it. */
interface CommandWords {
  name: string;
  about: string;
  options: readonly OptionWords[];
  operands: Typed;
}

/** Everything that a shell is to know of a program. */
export interface ProgramWords {
  name: string;
  options: readonly OptionWords[];
  commands: readonly CommandWords[];
}

// By the names that stand for values in the help: `--out <DIR>`.
const BY_NAME: Readonly<Record<string, Typed>> = {
  DIR: { kind: 'folder' },
  FOLDER: { kind: 'folder' },
  BAG: { kind: 'folder' },
  FILE: { kind: 'file' },
  // A catalogue folder or a file.
  A: { kind: 'file' },
  B: { kind: 'file' },
  FORMATS: { kind: 'words', words: [...FORMAT_NAMES, 'all'] },
};

const TEXT: Typed = { kind: 'text' };

/** The words of a program, as it describes itself. */
export function wordsOf(program: Command): ProgramWords {
  const commands = program.commands.map((command) => ({
    name: command.name(),
    about: inShort(command.description()),
    options: optionsOf(command),
    operands: operandsOf(command.registeredArguments),
  }));
  const names = commands.map(({ name }) => name);
  const help: CommandWords = {
    name: 'help',
    about: 'print help on a command',
    options: [],
    operands: { kind: 'word', words: names },
  };
  return { name: program.name(), options: optionsOf(program), commands: [...commands, help] };
}

function optionsOf(command: Command): OptionWords[] {
  const all = command.createHelp().visibleOptions(command);
  return all.map((option) => {
    const value = typedAfter(option);
    const forms = [option.short, option.long].filter((form) => form != null);
    return { forms, about: inShort(option.description), ...(value !== undefined && { value }) };
  });
}

function typedAfter({ flags, required, optional, argChoices }: Option): Typed | undefined {
  if (!required && !optional) return undefined;
  if (argChoices !== undefined) return { kind: 'word', words: argChoices };
  return BY_NAME[/[<[]([A-Z]+)/.exec(flags)?.[1] ?? ''] ?? TEXT;
}

/** What the arguments have in common; a folder and words after it (`find`) is a folder, since words need no help. */
function operandsOf(operands: readonly Argument[]): Typed {
  const [first = TEXT] = operands.map((one): Typed => {
    const { argChoices } = one;
    return argChoices === undefined ? (BY_NAME[one.name()] ?? TEXT) : { kind: 'word', words: argChoices };
  });
  return first;
}

// A shell shows one line of it.
const inShort = (text: string): string => text.replace(/(?:;| \().*$/s, '');

/** A text in single quotation marks of a POSIX shell. */
export const singleQuoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
