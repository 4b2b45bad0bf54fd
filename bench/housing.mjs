// What it takes to give 100,000 things a folder and a box, on top of sorting and describing them: the best of three
// runs. Part of `npm run bench`.
import { gatherAgents } from '../dist/arrange/agents.js';
import { describeCollection } from '../dist/arrange/collection.js';
import { describeGroups } from '../dist/arrange/describe.js';
import { placeThings } from '../dist/arrange/place.js';
import { sortThings } from '../dist/arrange/sort.js';
import { loadCatalogue } from '../dist/catalogue/load.js';
import { foldersOf } from '../dist/housing/placed.js';
import { shelve } from '../dist/housing/shelve.js';
import { stockFrom } from '../dist/housing/stock.js';
import { counted, freshRuns, inSeconds, ROWS, say, timed } from './fresh-runs.mjs';

/** The steps of `arrangement`, one by one, in seconds. */
async function run(folder) {
  const { settings, things, settled } = await loadCatalogue(folder);
  const agents = gatherAgents(settings);
  const stock = stockFrom(settings.housing, settings.repository.country);
  const [sorted, sorting] = timed(() => sortThings(things, settings.sort, agents));
  const [groups, placing] = timed(() => placeThings(sorted, settled, stock));
  const [boxes, shelving] = timed(() => shelve(groups, stock));
  const folders = foldersOf(groups);
  const [, describing] = timed(() => {
    const children = describeGroups(groups, settings, agents);
    return describeCollection(settings, things, { folders, boxes }, children, agents);
  });
  return { sorting, placing, shelving, describing, folders: folders.length, boxes: boxes.length };
}

await freshRuns(import.meta.url, run, (runs) => {
  const best = (seconds) => inSeconds(Math.min(...runs.map(seconds)));
  const [{ folders, boxes }] = runs;
  say(
    `${counted(ROWS)} things sorted and described`,
    best((one) => one.sorting + one.describing),
  );
  say(
    '  folders and boxes on top of that',
    best((one) => one.placing + one.shelving),
    'less than 1 s',
  );
  say(
    `    ${counted(folders)} numbers for folders, and what lies in each`,
    best(({ placing }) => placing),
  );
  say(
    `    ${counted(boxes)} boxes and packages`,
    best(({ shelving }) => shelving),
  );
});
