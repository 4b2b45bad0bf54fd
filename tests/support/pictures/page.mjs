import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { framed } from './framed.mjs';
import { kinfonds } from './run.mjs';

// In CSS pixels.
const WIDTH = 1100;
const TALLEST = 900;
// Below a row is a line, and a little room before the next.
const BELOW = 10;

/** The top of the finding-aid page of the example, down to the end of a row: a PNG. */
export async function pagePicture(browser, example, work) {
  kinfonds('export', example, '--to', 'html', '--out', join(work, 'page'));
  const page = await browser.newPage({
    viewport: { width: WIDTH, height: TALLEST },
    deviceScaleFactor: 1.5,
    colorScheme: 'light',
  });
  await page.goto(pathToFileURL(join(work, 'page', 'finding-aid.html')).href);
  await page.waitForSelector('#part\\:find:not([aria-busy])');
  const ends = await page.$$eval('dl dd', (rows) => rows.map((row) => row.getBoundingClientRect().bottom));
  const height = Math.floor(Math.max(...ends.filter((end) => end < TALLEST - BELOW)) + BELOW);
  const bytes = await page.screenshot({ clip: { x: 0, y: 0, width: WIDTH, height } });
  await page.close();
  return framed(bytes);
}
