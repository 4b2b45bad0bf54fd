import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';

const SOURCES = [
  'src',
  'bundle.mjs',
  'bundling.mjs',
  'package-lock.json',
  'tsconfig.json',
  'tsconfig.build.json',
];
/** What each of the two steps writes. */
const BUILT = ['dist/index.js', 'dist/cli/main.js'];

/** Builds `dist` before the tests if it is older than what it is made of: those of the command line run it as a user would. */
export default function build(): void {
  if (BUILT.every(existsSync) && newest(SOURCES) < Math.min(...BUILT.map(changed))) return;
  for (const script of [['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], ['bundle.mjs']])
    execFileSync(process.execPath, script, { stdio: 'inherit' });
}

const changed = (path: string): number => statSync(path).mtimeMs;

/** When the last of these was changed; a folder is changed by what is taken out of it, too. */
const newest = (paths: readonly string[]): number =>
  Math.max(
    ...paths.map((path) =>
      statSync(path).isDirectory()
        ? Math.max(changed(path), newest(readdirSync(path).map((name) => `${path}/${name}`)))
        : changed(path),
    ),
  );
