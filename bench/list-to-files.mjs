// Run as a process of its own, so that start-up and memory are measured with it: a list in, files written, no
// validation. Formats as the third argument, parted by commas.
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { arrange } from '../dist/arrange/index.js';
import { loadCatalogue } from '../dist/catalogue/load.js';
import { stageFolder } from '../dist/catalogue/stage-folder.js';
import { writeWhole } from '../dist/catalogue/write-whole.js';
import { FOLDERS, FORMATS } from '../dist/export/formats.js';

const [folder, out, formats] = process.argv.slice(2);
const catalogue = await loadCatalogue(folder);
const aid = arrange(catalogue, '2026-01-01');
await mkdir(out, { recursive: true });
for (const format of formats.split(',')) {
  const folder = FOLDERS[format] === undefined ? undefined : await stageFolder(join(out, FOLDERS[format]));
  for (const { path, content } of FORMATS[format](aid)) {
    const [inside, name] = path.split('/');
    if (name === undefined) await writeWhole(join(out, inside), content);
    else folder.write(name, content);
  }
  await folder?.commit();
}
process.stdout.write(String(Math.round(process.resourceUsage().maxRSS / 1024)));
