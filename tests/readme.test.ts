import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { copyExample } from './support/example.ts';
import { freshFolder } from './support/kinfonds.ts';
import { type Shown, stepsOf, wordsOf } from './support/readme.ts';
import { partingOf } from './support/shown.ts';

const README = readFileSync('README.md', 'utf8');
const { bin, scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
const PROGRAM = resolve(bin.kinfonds);

// A reader has no published schemas yet, and may have coloured nothing.
const { KINFONDS_SCHEMAS: _, ...rest } = process.env;
const environment = { ...rest, XDG_CACHE_HOME: '/nonexistent', NO_COLOR: '1' };

/** Runs a file of JavaScript, and gives what a terminal would show: results and messages in the order of printing. */
function run(folder: string, file: string, args: readonly string[]): { code: number | null; shown: string } {
  const terminal = join(freshFolder(), 'shown');
  const both = openSync(terminal, 'w');
  const { status } = spawnSync(process.execPath, [file, ...args], {
    cwd: folder,
    env: environment,
    stdio: ['ignore', both, both],
  });
  closeSync(both);
  return { code: status, shown: readFileSync(terminal, 'utf8') };
}

/** What npm would do; what it says of itself is not looked at. */
function runNpm(words: readonly string[], folder: string): ReturnType<typeof run> | undefined {
  expect(words[0]).toBe('npm');
  const [, name = ''] = words;
  if (name === 'ci') expect(existsSync('package-lock.json')).toBe(true);
  else if (name === 'link') expect(existsSync(PROGRAM)).toBe(true);
  else expect(Object.keys(scripts)).toContain(name);
  if (name !== 'start') return undefined;
  const [node, file = '', ...args] = wordsOf(scripts.start);
  expect(node).toBe('node');
  return run(folder, resolve(file), args);
}

function perform({ line, command, output, exitCode }: Shown, folder: string): void {
  const results = command.split(' && ').map((part) => {
    const words = wordsOf(part);
    return words[0] === 'kinfonds' ? run(folder, PROGRAM, words.slice(1)) : runNpm(words, folder);
  });
  const result = results.at(-1);
  if (result === undefined) return void expect([line, output]).toEqual([line, []]);
  const parting = partingOf(output, result.shown);
  const where =
    parting && `README.md, line ${line + 1 + parting.at}, shows: ${output[parting.at] ?? '(no more)'}`;
  expect(where && `${where}\nbut printed is: ${parting?.printed ?? '(no more)'}`).toBeUndefined();
  expect([`README.md, line ${line}: exit code`, result.code]).toEqual([
    `README.md, line ${line}: exit code`,
    exitCode,
  ]);
}

describe('README', () => {
  let folder = '';
  const steps = stepsOf(README);

  beforeAll(() => {
    folder = freshFolder();
    copyExample(join(folder, 'examples', 'quill-ferry'));
  });

  // In this order, and each on what those before it have left.
  for (const step of steps) {
    test(step.do === 'run' ? `line ${step.line}: ${step.command}` : `line ${step.line}: ${step.file}`, () => {
      if (step.do === 'run') return perform(step, folder);
      // The reader fills in what is there already, and makes no file.
      expect([step.line, step.file, existsSync(join(folder, step.file))]).toEqual([
        step.line,
        step.file,
        true,
      ]);
      writeFileSync(join(folder, step.file), step.text);
    });
  }

  test('shows the whole way, from the first command to the last', () => {
    const shown = steps.flatMap((step) => (step.do === 'run' ? [step] : []));
    const commands = shown.map(({ command }) => command);
    expect(commands.slice(0, 2)).toEqual(['npm ci && npm start', 'npm ci && npm test']);
    const names = commands.flatMap((command) => /^kinfonds (\S+)/.exec(command)?.[1] ?? []);
    const way = ['begin', 'arrange', 'check', 'supplies', 'labels', 'find', 'export', 'hand-over', 'verify'];
    expect([...new Set(names)].slice(0, way.length)).toEqual(way);
    // Something must be shown of each, or nothing could differ.
    for (const { line, command, output } of shown)
      if (command.startsWith('kinfonds'))
        expect([line, output.some((text) => text.replaceAll('…', '').trim() !== '')]).toEqual([line, true]);
  });
});

test('README points to headings of its own that there are', () => {
  const headings = [...README.matchAll(/^#+ (.+)$/gm)].map(([, text = '']) =>
    text.toLowerCase().replaceAll(' ', '-'),
  );
  const aims = [...README.matchAll(/\]\(#([^)]+)\)/g)].map(([, aim]) => aim);
  expect(aims.length).toBeGreaterThan(0);
  for (const aim of aims) expect(headings).toContain(aim);
});
