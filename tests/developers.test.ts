import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { freshFolder } from './support/kinfonds.ts';
import { longSuite } from './support/times.ts';

const PAGE = readFileSync('DEVELOPERS.md', 'utf8');
const BLOCK = /^```diff (\S+)\n([\s\S]*?)^```$/gm;

/** The lines of a change that are there before it, or after it. */
const side = (change: string, sign: '-' | '+') =>
  change
    .split(/(?<=\n)/)
    .filter((line) => line.startsWith(' ') || line.startsWith(sign))
    .map((line) => line.slice(1))
    .join('');

/** Makes one of the changes that the page shows. What is there before it has to stand in the file just once. */
function make(project: string, path: string, change: string): void {
  const file = join(project, path);
  const [before, after] = [side(change, '-'), side(change, '+')];
  if (before === '') {
    if (existsSync(file)) throw new Error(`${path} is to be a new file, and is there already.`);
    writeFileSync(file, after);
    return;
  }
  const parts = readFileSync(file, 'utf8').split(before);
  if (parts.length !== 2)
    throw new Error(`In ${path} this stands ${parts.length - 1} times, not once:\n${before}`);
  writeFileSync(file, parts.join(after));
}

function run(project: string, ...args: string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: project, encoding: 'utf8' });
  return `${stdout}${stderr}${status === 0 ? '' : `\nended with ${status}`}`;
}

longSuite('the changes that DEVELOPERS.md walks through', () => {
  const project = freshFolder();
  const kinfonds = (...args: string[]) => run(project, join('dist', 'cli', 'main.js'), ...args);

  /** What a command says of a list, in a project without the changes it would say otherwise. */
  function of(list: string, command: string, ...options: string[]): string {
    mkdirSync(join(project, 'quill'), { recursive: true });
    writeFileSync(
      join(project, 'quill', 'collection.yaml'),
      'title: Quill family papers\nprefix: QF\nrepository: { name: Quill family }\n',
    );
    writeFileSync(join(project, 'quill', 'list.csv'), list);
    return kinfonds(command, 'quill', ...options);
  }

  beforeAll(() => {
    for (const path of [
      'src',
      'xsd',
      'package.json',
      'tsconfig.json',
      'tsconfig.build.json',
      'bundle.mjs',
      'bundling.mjs',
    ])
      cpSync(path, join(project, path), { recursive: true });
    symlinkSync(resolve('node_modules'), join(project, 'node_modules'), 'junction');
    for (const [, path = '', change = ''] of PAGE.matchAll(BLOCK)) make(project, path, change);
    // The project's own settings but for the tests, which are not there.
    const types = run(project, 'node_modules/typescript/bin/tsc', '--noEmit', '-p', 'tsconfig.build.json');
    if (types !== '') throw new Error(types);
    const bundled = run(project, 'bundle.mjs');
    if (bundled !== '') throw new Error(bundled);
  }, 120_000);

  test('there are some, each with the name of its file', () => {
    expect(PAGE.match(BLOCK)?.length).toBeGreaterThanOrEqual(5);
    expect(PAGE.match(/^```diff/gm)?.length).toBe(PAGE.match(BLOCK)?.length);
  });

  test('a kind of material', () => {
    const told = of('title,kind,quantity\nApplegarth regatta ball,Dance cards,2\n', 'arrange', '--things');
    expect(told).toContain('Printed matter');
    expect(told).toContain('2 dance cards');
  });

  test('a rule', () => {
    const list = 'title,kind\nADA TO NILS ON THE FLOOD,letter\nNils to Ada on the QF toll,letter\n';
    const told = of(list, 'check');
    expect(told).toContain('This title is written in capitals only: “ADA TO NILS ON THE FLOOD”');
    expect(told).not.toMatch(/capitals only.*toll/);
  });

  test('a box', () => {
    const told = of('title,kind,size\nThe landing,glass plate,10x12 in\n', 'arrange', '--boxes');
    expect(told).toContain('glass plate box, 10 × 12 in');
  });

  test('a language', () => {
    const told = of('Nimeke,Päiväys,Laji\nKirje Nilsille,1912,letter\n', 'arrange', '--things');
    expect(told).toContain('Kirje Nilsille, 1912');
  });

  test('a format', () => {
    const told = of('title,date\nThe landing,1912\n', 'export', '--to', 'txt', '--out', 'out');
    expect(told).toContain(join('out', 'finding-aid.txt'));
    const written = readFileSync(join(project, 'out', 'finding-aid.txt'), 'utf8');
    expect(written).toMatch(/^QF {2}Quill family papers/);
    expect(written).toContain('The landing, 1912');
  });
});
