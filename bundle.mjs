// Makes the command line, dist/cli, of fewer files: to read thirty small ones takes longer than most answers. The library
// stays as tsc makes it, a file for each source.
import { copyFileSync } from 'node:fs';
import { build } from 'rolldown';
import { bundledInto, WITHIN } from './bundling.mjs';

// A worker is started from the file `thread.js` beside the program's own.
await build({
  input: { main: 'src/cli/main.ts', thread: 'src/handover/bag/thread.ts' },
  ...bundledInto('dist/cli'),
});

// Their licences ask to go with them.
for (const name of WITHIN) copyFileSync(`node_modules/${name}/LICENSE`, `dist/cli/${name}-LICENSE`);
