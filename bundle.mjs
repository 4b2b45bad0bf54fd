// Makes the command line, dist/cli, of few files: to read thirty small ones takes longer than most answers. The library
// stays as tsc makes it, a file for each source.
import { copyFileSync, readFileSync } from 'node:fs';
import { build } from 'rolldown';

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'));

await build({
  // A worker is started from the file `thread.js` beside the program's own.
  input: { main: 'src/cli/main.ts', thread: 'src/handover/bag/thread.ts' },
  platform: 'node',
  external: Object.keys(dependencies).map((name) => new RegExp(`^${name}(?:/|$)`)),
  output: { dir: 'dist/cli', cleanDir: true, entryFileNames: '[name].js', chunkFileNames: '[name].js' },
  logLevel: 'warn',
});

// It is within, as every call needs it; its licence asks to go with it.
copyFileSync('node_modules/commander/LICENSE', 'dist/cli/commander-LICENSE');
