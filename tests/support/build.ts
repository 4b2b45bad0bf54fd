import { execFileSync } from 'node:child_process';

/** Builds `dist` anew before the tests, since those of the command line run it as a user would. */
export default function build(): void {
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
    stdio: 'inherit',
  });
}
