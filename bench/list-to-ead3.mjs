// Run as a process of its own, so that start-up and memory are measured with it: list in, ead3.xml written, no validation.
import { arrange } from '../dist/arrange/index.js';
import { loadCatalogue } from '../dist/catalogue/load.js';
import { writeWhole } from '../dist/catalogue/write-whole.js';
import { ead3 } from '../dist/export/ead3/index.js';
import { writeXml } from '../dist/xml/write.js';

const [folder, file] = process.argv.slice(2);
const catalogue = await loadCatalogue(folder);
await writeWhole(file, writeXml(ead3(arrange(catalogue, '2026-01-01'))));
process.stdout.write(String(Math.round(process.resourceUsage().maxRSS / 1024)));
