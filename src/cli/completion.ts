import { Argument, type Command } from 'commander';

const SHELLS = ['bash', 'zsh', 'fish'] as const;

type Shell = (typeof SHELLS)[number];

export function completionCommand(program: Command): void {
  program
    .command('completion')
    .description('print what lets a shell complete commands, options and file names')
    .addArgument(new Argument('<SHELL>', 'the shell').choices(SHELLS))
    .addHelpText(
      'after',
      '\nTo have it always, put one line into the file that your shell reads when it starts:' +
        '\n  ~/.bashrc                   eval "$(kinfonds completion bash)"' +
        '\n  ~/.zshrc, below compinit    eval "$(kinfonds completion zsh)"' +
        '\n  ~/.config/fish/config.fish  kinfonds completion fish | source' +
        '\nExample: kinfonds completion bash',
    )
    .action(async (shell: Shell) => {
      const { wordsOf } = await import('./completion/words.ts');
      const { bash } = await import('./completion/bash.ts');
      const { fish } = await import('./completion/fish.ts');
      const { zsh } = await import('./completion/zsh.ts');
      process.stdout.write({ bash, zsh, fish }[shell](wordsOf(program)));
    });
}
