// Makes the command line, dist/cli, of fewer files: to read thirty small ones takes longer than most answers. The library
// stays as tsc makes it, a file for each source.
import { copyFileSync, readFileSync } from 'node:fs';
import { build } from 'rolldown';

/** Packages that nearly every call needs, and of many files, go into it. */
const WITHIN = ['commander', 'yaml', 'zod'];

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
const beside = Object.keys(dependencies).filter((name) => !WITHIN.includes(name));

await build({
  // A worker is started from the file `thread.js` beside the program's own.
  input: { main: 'src/cli/main.ts', thread: 'src/handover/bag/thread.ts' },
  platform: 'node',
  external: beside.map((name) => new RegExp(`^${name}(?:/|$)`)),
  output: {
    dir: 'dist/cli',
    cleanDir: true,
    entryFileNames: '[name].js',
    chunkFileNames: '[name].js',
    minify: { compress: false, mangle: false, codegen: true },
  },
  logLevel: 'warn',
});

// Their licences ask to go with them.
for (const name of WITHIN) copyFileSync(`node_modules/${name}/LICENSE`, `dist/cli/${name}-LICENSE`);
