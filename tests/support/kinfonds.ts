import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const MAIN = resolve('dist/cli/main.js');

/** What a run of the program printed, and how it ended. */
export interface Run {
  code: number | null;
  out: string;
  err: string;
}

/** Runs `kinfonds` as a user would; the published schemas are those of the tests, if any. */
export function kinfonds(
  args: readonly string[],
  over: { cwd?: string; env?: Record<string, string> } = {},
): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, ...args], {
    encoding: 'utf8',
    cwd: over.cwd ?? process.cwd(),
    env: { ...process.env, XDG_CACHE_HOME: '/nonexistent', ...over.env },
  });
  return { code: status, out: stdout, err: stderr };
}

/** A fresh folder that no other test uses. */
export function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), 'kinfonds-test-'));
}

/** Every file below a folder with its bytes, to see that nothing was changed. */
export function contentsOf(folder: string): Record<string, string> {
  return Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => statSync(join(folder, name)).isFile())
      .map((name) => [name, readFileSync(join(folder, name)).toString('base64')]),
  );
}
