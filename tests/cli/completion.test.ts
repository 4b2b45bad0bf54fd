import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Command, Option } from 'commander';
import { describe, expect, test } from 'vitest';
import { bash } from '../../src/cli/completion/bash.ts';
import { fish } from '../../src/cli/completion/fish.ts';
import { wordsOf } from '../../src/cli/completion/words.ts';
import { zsh } from '../../src/cli/completion/zsh.ts';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

/** A suite for a shell that is on this machine; else a word on why it is left out. */
function describeWithShell(shell: string, suite: () => void): void {
  const found = spawnSync(shell, ['-c', 'true']).status === 0;
  if (!found) process.stderr.write(`Left out: completion in ${shell}, which is not on this machine.\n`);
  (found ? describe : describe.skip)(`in ${shell}`, suite);
}

const run = (shell: string, script: string, cwd = process.cwd()): string => {
  const { stdout, stderr, status } = spawnSync(shell, ['-c', script], { cwd, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return stdout;
};

/** A folder with a blank in the name of one of its folders, one named as a command is, and a file. */
function place(): string {
  const cwd = freshFolder();
  for (const folder of ['quill papers', 'arrange']) mkdirSync(join(cwd, folder));
  writeFileSync(join(cwd, 'quill.xml'), '');
  return cwd;
}

/** The commands, and the options of each, as the help says them: what stands first on a line of its lists. */
const listed = (help: string, heading: string, form: RegExp): string[] =>
  [...(help.split(`${heading}:\n`)[1]?.split('\n\n')[0] ?? '').matchAll(form)].map(([, word = '']) => word);
const commands = listed(kinfonds(['--help']).out, 'Commands', /^ {2}([a-z-]+)/gm);
const optionsOf = (command: string): string[] =>
  listed(kinfonds([command, '--help']).out, 'Options', /^ {2}(--[a-z-]+)/gm);

describeWithShell('bash', () => {
  const script = kinfonds(['completion', 'bash']).out;
  // What bash itself does at the Tab key. `compopt` works there alone.
  const suggested = (typed: readonly string[], cwd?: string): string[] => {
    const words = typed.map((word) => `'${word}'`).join(' ');
    const ask = `compopt() { :; }; COMP_WORDS=(${words}); COMP_CWORD=${typed.length - 1}; _kinfonds`;
    const out = run('bash', `${script}\n${ask}; printf '%s\\n' "\${COMPREPLY[@]}"`, cwd);
    return out.split('\n').filter((line) => line !== '');
  };

  test('is bound to the program', () => {
    expect(run('bash', `${script}\ncomplete -p kinfonds`)).toBe(
      'complete -o default -F _kinfonds kinfonds\n',
    );
  });

  test('every command of the help, and every option of each', () => {
    expect(commands).toContain('completion');
    expect(suggested(['kinfonds', '']).sort()).toEqual(commands.toSorted());
    for (const command of commands.filter((one) => one !== 'help'))
      expect([command, suggested(['kinfonds', command, '-'])]).toEqual([command, optionsOf(command)]);
    expect(suggested(['kinfonds', 'help', 'ver'])).toEqual(['verify']);
    expect(suggested(['kinfonds', '--v'])).toEqual(['--version']);
  });

  test('values: words, words with commas, after = too', () => {
    expect(suggested(['kinfonds', 'completion', ''])).toEqual(['bash', 'zsh', 'fish']);
    expect(suggested(['kinfonds', 'labels', '--only', 'b'])).toEqual(['boxes']);
    expect(suggested(['kinfonds', 'export', '--to', 'ead'])).toEqual(['ead3', 'ead2002']);
    expect(suggested(['kinfonds', 'export', '--to', 'ead3,d'])).toEqual(['ead3,dc', 'ead3,dcterms']);
    // COMP_WORDBREAKS of bash holds the equals sign.
    expect(suggested(['kinfonds', 'export', '--to', '=', 'h'])).toEqual(['html']);
  });

  test('folders where a folder is wanted; else nothing, so that bash itself offers files', () => {
    const cwd = place();
    expect(suggested(['kinfonds', 'check', 'q'], cwd)).toEqual(['quill papers']);
    expect(suggested(['kinfonds', 'export', '--out', 'q'], cwd)).toEqual(['quill papers']);
    expect(suggested(['kinfonds', 'validate', 'q'], cwd)).toEqual([]);
    expect(suggested(['kinfonds', 'begin', '--title', 'q'], cwd)).toEqual([]);
  });

  test('without compopt, as in bash 3.2, folders are left to bash', () => {
    const ask = `type() { return 1; }; COMP_WORDS=(kinfonds check q); COMP_CWORD=2; _kinfonds; echo \${#COMPREPLY[@]}`;
    expect(run('bash', `${script}\n${ask}`, place())).toBe('0\n');
  });
});

describeWithShell('fish', () => {
  const script = kinfonds(['completion', 'fish']).out;
  const suggested = (typed: string, cwd?: string): string[] =>
    run('fish', `${script}\ncomplete -C '${typed}'`, cwd)
      .split('\n')
      .map((line) => line.split('\t')[0] ?? '')
      .filter((word) => word !== '');

  test('commands, options, values, folders and files', () => {
    const cwd = place();
    expect(suggested('kinfonds ', cwd).sort()).toEqual(commands.toSorted());
    for (const command of commands.filter((one) => one !== 'help'))
      expect(suggested(`kinfonds ${command} --`).sort()).toEqual(optionsOf(command).sort());
    expect(suggested('kinfonds export --to ead3,d').sort()).toEqual(['ead3,dc', 'ead3,dcterms']);
    expect(suggested('kinfonds check q', cwd)).toEqual(['quill papers/']);
    expect(suggested('kinfonds validate q', cwd)).toEqual(['quill papers/', 'quill.xml']);
  });
});

describeWithShell('zsh', () => {
  test('can be read by zsh', () => {
    expect(spawnSync('zsh', ['-n'], { input: kinfonds(['completion', 'zsh']).out }).stderr.toString()).toBe(
      '',
    );
  });
});

describe('words that a shell would take for its own', () => {
  const program = new Command('kin');
  program
    .command('tell')
    .description("what's $HOME, `date`: [all] \\ of it; and more")
    .addOption(new Option('-w, --which <WHICH>', "it's $(one)").choices(['a', 'b']))
    .argument('[FILE]');
  const words = wordsOf(program);

  test('only the first clause of a description is kept, and the forms of an option are one', () => {
    expect(words.commands[0]).toEqual({
      name: 'tell',
      about: "what's $HOME, `date`: [all] \\ of it",
      options: [
        { forms: ['-w', '--which'], about: "it's $(one)", value: { kind: 'word', words: ['a', 'b'] } },
        { forms: ['-h', '--help'], about: 'display help for command' },
      ],
      operands: { kind: 'file' },
    });
  });

  test('stand between quotation marks', () => {
    expect(fish(words)).toContain("-a tell -d 'what\\'s $HOME, `date`: [all] \\\\ of it'");
    // Quotation as POSIX 2.2.2 has it; colons, brackets and backslashes as `_arguments` and `_describe` of zsh do.
    expect(zsh(words)).toContain("'tell:what'\\''s $HOME, `date`\\: \\[all\\] \\\\ of it'");
    expect(zsh(words)).toContain("'--which=[it'\\''s $(one)]:value:(a b)'");
    expect(bash(words)).not.toContain('$HOME');
    expect(bash(words)).toContain("-w|--which) what=word words='a b' ;;");
  });
});

test('a shell that is not known is wrong usage', () => {
  expect(kinfonds(['completion', 'tcsh'])).toMatchObject({ code: 2, out: '' });
});
