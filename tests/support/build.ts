import { execFileSync } from 'node:child_process';

/** Builds `dist` anew before the tests, since those of the command line run it as a user would. */
export default function build(): void {
  for (const script of [['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], ['bundle.mjs']])
    execFileSync(process.execPath, script, { stdio: 'inherit' });
}
