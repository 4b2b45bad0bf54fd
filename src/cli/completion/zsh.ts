import { type OptionWords, type ProgramWords, singleQuoted, type Typed } from './words.ts';

/** What lets zsh complete a program, by its own `_arguments`. */
export function zsh({ name, options, commands }: ProgramWords): string {
  const lines = [
    `#compdef ${name}`,
    `# Completion of ${name} for zsh, below compinit: eval "$(${name} completion zsh)"`,
    `_${name}() {`,
    '  local context state state_descr line curcontext="$curcontext"',
    '  typeset -A opt_args',
    '  local -a commands',
    '  commands=(',
    ...commands.map((command) => `    ${singleQuoted(`${command.name}:${inSpec(command.about)}`)}`),
    '  )',
    `  _arguments -C ${[...options.flatMap(specs), "'1: :->command'", "'*:: :->rest'"].join(' ')} && return`,
    '  case "$state" in',
    '    command) _describe -t commands command commands ;;',
    '    rest) case "$line[1]" in',
    ...commands.map(
      (command) =>
        `      ${command.name}) _arguments ${[...command.options.flatMap(specs), `'*: :${action(command.operands)}'`].join(' ')} ;;`,
    ),
    '    esac ;;',
    '  esac',
    '}',
    // Run by the shell itself where the file lies in its fpath; else made known here.
    `if [ "$funcstack[1]" = "_${name}" ]; then _${name} "$@"; else compdef _${name} ${name}; fi`,
  ];
  return `${lines.join('\n')}\n`;
}

/** An option as `_arguments` takes it: `--out[folder to write into]:value:_files -/`; a value may stand after `=` too. */
function specs({ forms, about, value }: OptionWords): string[] {
  return forms.map((form) => {
    const equals = value !== undefined && form.startsWith('--') ? '=' : '';
    const what = value === undefined ? '' : `:value:${action(value)}`;
    return singleQuoted(`${form}${equals}[${inSpec(about)}]${what}`);
  });
}

function action(typed: Typed): string {
  switch (typed.kind) {
    case 'folder':
      return '_files -/';
    case 'file':
      return '_files';
    case 'text':
      return ' ';
    case 'word':
      return `(${typed.words.join(' ')})`;
    case 'words':
      return `_sequence compadd - ${typed.words.join(' ')}`;
  }
}

// Brackets and colons part a specification.
const inSpec = (text: string): string => text.replace(/[[\]:\\]/g, '\\$&');
