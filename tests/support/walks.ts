import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** One of the changes that DEVELOPERS.md shows: lines with a blank, `-` or `+` before them, as `diff` writes them. */
export interface Change {
  path: string;
  lines: string;
}

const BLOCK = /^```diff (\S+)\n([\s\S]*?)^```$/gm;

/** The changes that a document shows, in its order. */
export const changesIn = (document: string): Change[] =>
  [...document.matchAll(BLOCK)].map(([, path = '', lines = '']) => ({ path, lines }));

/** The lines of a change that are there before it, or after it. */
const side = (lines: string, sign: '-' | '+') =>
  lines
    .split(/(?<=\n)/)
    .filter((line) => line.startsWith(' ') || line.startsWith(sign))
    .map((line) => line.slice(1))
    .join('');

/**
 * Makes a change in a project.
 * @throws Error where what is there before it does not stand in the file just once, or a new file is there already
 */
export function make(project: string, { path, lines }: Change): void {
  const file = join(project, path);
  const [before, after] = [side(lines, '-'), side(lines, '+')];
  if (before === '') {
    if (existsSync(file))
      throw new Error(`DEVELOPERS.md shows ${path} as a new file, and it is there already.`);
    writeFileSync(file, after);
    return;
  }
  const parts = readFileSync(file, 'utf8').split(before);
  if (parts.length !== 2)
    throw new Error(
      `DEVELOPERS.md shows these lines of ${path}, which stand there ${parts.length - 1} times, not once. Let it show what stands there now:\n${before}`,
    );
  writeFileSync(file, parts.join(after));
}

/** Runs a script of JavaScript in a project; what it prints, and how it ended where that was not well. */
export function runIn(project: string, ...args: string[]): string {
  // The tests that are run there are no part of this run.
  const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith('VITEST')));
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    ...{ cwd: project, encoding: 'utf8' },
    env: { ...env, NO_COLOR: '1' },
  });
  return `${stdout}${stderr}${status === 0 ? '' : `\nended with ${status}`}`;
}
