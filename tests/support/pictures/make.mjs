// Makes the pictures of README anew from the example, in docs/pictures. Run: npm run build && node tests/support/pictures/make.mjs
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { labelsPicture } from './labels.mjs';
import { outlinePicture } from './outline.mjs';
import { pagePicture } from './page.mjs';
import { run } from './run.mjs';

const CHROMIUM = process.env.KINFONDS_CHROMIUM ?? '/usr/bin/chromium';
const PLACE = join('docs', 'pictures');

if (!existsSync(CHROMIUM))
  throw new Error(`There is no Chromium at ${CHROMIUM}; KINFONDS_CHROMIUM names another place.`);
run('pdftoppm', ['-v']);

const work = mkdtempSync(join(tmpdir(), 'kinfonds-pictures-'));
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
try {
  // A copy, for the program keeps an index and thumbnails beside a catalogue.
  const example = join(work, 'quill-ferry');
  cpSync(join('examples', 'quill-ferry'), example, { recursive: true });
  mkdirSync(PLACE, { recursive: true });
  const pictures = {
    'outline.svg': outlinePicture(example),
    'page.png': await pagePicture(browser, example, work),
    'labels.png': await labelsPicture(browser, example, work),
  };
  for (const [name, bytes] of Object.entries(pictures)) {
    const file = join(PLACE, name);
    writeFileSync(file, bytes);
    process.stdout.write(`${file}: ${Math.ceil(statSync(file).size / 1000)} kB\n`);
  }
} finally {
  await browser.close();
  rmSync(work, { recursive: true });
}
