import type { OptionWords, ProgramWords, Typed } from './words.ts';

/** What lets fish complete a program. */
export function fish({ name, options, commands }: ProgramWords): string {
  const complete = (...words: string[]) => ['complete', '-c', name, ...words].join(' ');
  const first = ['-n', '__fish_use_subcommand'];
  const lines = [
    `# Completion of ${name} for fish: ${name} completion fish | source`,
    // Files are named below, where they belong.
    complete('-f'),
    ...options.flatMap((option) => optionOf(option).map((words) => complete(...first, ...words))),
    ...commands.flatMap((command) => {
      const within = ['-n', quoted(`__fish_seen_subcommand_from ${command.name}`)];
      return [
        complete(...first, '-a', command.name, '-d', quoted(command.about)),
        ...command.options.flatMap((option) =>
          optionOf(option).map((words) => complete(...within, ...words)),
        ),
        ...(command.operands.kind === 'text' ? [] : [complete(...within, ...suggestion(command.operands))]),
      ];
    }),
  ];
  return `${lines.join('\n')}\n`;
}

function optionOf({ forms, about, value }: OptionWords): string[][] {
  const flags = forms.flatMap((form) =>
    form.startsWith('--') ? ['-l', form.slice(2)] : ['-s', form.slice(1)],
  );
  const follows = value === undefined ? [] : value.kind === 'text' ? ['-x'] : ['-r', ...suggestion(value)];
  return [[...flags, '-d', quoted(about), ...follows]];
}

function suggestion(typed: Typed): string[] {
  switch (typed.kind) {
    case 'folder':
      return ['-f', '-a', quoted('(__fish_complete_directories)')];
    case 'file':
      return ['-F'];
    case 'text':
      return [];
    case 'word':
      return ['-f', '-a', quoted(typed.words.join(' '))];
    case 'words':
      return ['-f', '-a', quoted(`(__fish_append , ${typed.words.join(' ')})`)];
  }
}

// Within single quotation marks fish knows these two escapes.
const quoted = (text: string): string => `'${text.replace(/['\\]/g, '\\$&')}'`;
