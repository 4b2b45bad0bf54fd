import { type OptionWords, type ProgramWords, singleQuoted, type Typed } from './words.ts';

/**
 * What lets bash complete a program; for bash 3.2, which macOS has, and later. Bash takes `--to=csv` for three words.
 * Where the script suggests nothing, bash itself suggests files, which serves files and texts alike; so it is with
 * folders where there is no `compopt`, as in 3.2.
 */
export function bash({ name, options, commands }: ProgramWords): string {
  const names: Typed = { kind: 'word', words: commands.map((command) => command.name) };
  const branches = [
    branch("''", options, names),
    ...commands.map((command) => branch(command.name, command.options, command.operands)),
  ];
  return `# Completion of ${name} for bash: eval "$(${name} completion bash)"
_${name}() {
  local current="\${COMP_WORDS[COMP_CWORD]}" previous="\${COMP_WORDS[COMP_CWORD-1]}"
  local command='' words='' what='' before='' i IFS=$' \\t\\n'
  if [ "$current" = "=" ]; then current=''
  elif [ "$previous" = "=" ]; then previous="\${COMP_WORDS[COMP_CWORD-2]}"; fi
  for ((i = 1; i < COMP_CWORD; i++)); do
    case "\${COMP_WORDS[i]}" in -*) ;; *) command="\${COMP_WORDS[i]}"; break ;; esac
  done
  case "$command" in
${branches.join('\n')}
  esac
  if [ "$what" = words ]; then
    case "$current" in *,*) before="\${current%,*},"; current="\${current##*,}" ;; esac
  fi
  COMPREPLY=()
  if [ -n "$words" ]; then COMPREPLY=($(compgen -P "$before" -W "$words" -- "$current"))
  elif [ "$what" = folder ] && type compopt >/dev/null 2>&1; then
    compopt -o filenames
    IFS=$'\\n'
    COMPREPLY=($(compgen -d -- "$current"))
  fi
}
complete -o default -F _${name} ${name}
`;
}

/** Of a command: what follows each option with a value; else the options, or what the command is about. */
function branch(command: string, options: readonly OptionWords[], operands: Typed): string {
  const valued = options.flatMap(({ forms, value }) =>
    value === undefined ? [] : [`        ${forms.join('|')}) ${setting(value)} ;;\n`],
  );
  const forms = singleQuoted(options.flatMap((option) => option.forms).join(' '));
  return `    ${command})
      case "$previous" in
${valued.join('')}        *) case "$current" in -*) words=${forms} ;; *) ${setting(operands)} ;; esac ;;
      esac ;;`;
}

const setting = (typed: Typed): string =>
  'words' in typed ? `what=${typed.kind} words=${singleQuoted(typed.words.join(' '))}` : `what=${typed.kind}`;
