import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** Runs a program to its end, and gives what it printed; throws where it cannot be run or fails. */
export function run(program, args) {
  const { status, stdout, stderr, error } = spawnSync(program, args, { encoding: 'utf8' });
  if (error !== undefined) throw error;
  if (status !== 0) throw new Error(`${program} ${args.join(' ')} ended with ${status}: ${stderr}`);
  return stdout;
}

/** Runs `kinfonds`, as it is built. */
export const kinfonds = (...args) => run(process.execPath, [join('dist', 'cli', 'main.js'), ...args]);
