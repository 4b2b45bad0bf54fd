import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SHEETS } from '../../../dist/export/labels/sheets.js';
import { framed } from './framed.mjs';
import { kinfonds, run } from './run.mjs';

const SHEET = 'letter 3x10';
// So many rows of labels are shown: what is on the rest of the sheet looks the same.
const ROWS = 5;
// In CSS pixels, and pixels of the picture to each.
const WIDTH = 860;
const SCALE = 1.5;

/** The upper half of the first sheet of labels of the example; the edges of the labels are drawn in: a PNG. */
export async function labelsPicture(browser, example, work) {
  const sheet = SHEETS.find(({ name }) => name === SHEET);
  if (sheet === undefined) throw new Error(`There is no sheet ${SHEET}.`);
  const pdf = join(work, 'labels.pdf');
  kinfonds('labels', example, '--out', pdf, '--sheet', SHEET);
  const dots = Math.round((WIDTH * SCALE) / (sheet.page[0] / 25.4));
  run('pdftoppm', ['-png', '-r', `${dots}`, '-f', '1', '-singlefile', pdf, join(work, 'labels')]);
  const picture = readFileSync(join(work, 'labels.png')).toString('base64');
  const page = await browser.newPage({ viewport: { width: WIDTH, height: 1200 }, deviceScaleFactor: SCALE });
  await page.setContent(sheetPage(sheet, picture));
  // From within the upper margin down to the lower edge of a row, where the next begins.
  const px = WIDTH / sheet.page[0];
  const y = Math.round((sheet.first[1] * px) / 2);
  const height = Math.round((sheet.first[1] + ROWS * sheet.step[1]) * px) - y;
  const bytes = await page.screenshot({ clip: { x: 0, y, width: WIDTH, height } });
  await page.close();
  return framed(bytes);
}

// The backing of the sheet is tinted and the labels are white; what is printed lies over both as ink does.
function sheetPage({ page, columns, first, step, label }, picture) {
  const px = (mm) => `${((mm * WIDTH) / page[0]).toFixed(2)}px`;
  const labels = Array.from({ length: columns * ROWS }, (_, index) => {
    const left = first[0] + (index % columns) * step[0];
    const top = first[1] + Math.floor(index / columns) * step[1];
    return `<i style="left:${px(left)};top:${px(top)};width:${px(label[0])};height:${px(label[1])}"></i>`;
  });
  return `<style>
    body { margin: 0; position: relative; width: ${px(page[0])}; height: ${px(page[1])}; background: #efece4 }
    i { position: absolute; box-sizing: border-box; background: #fff; border: 1px solid #d6d2c6; border-radius: 6px }
    img { position: absolute; inset: 0; width: 100%; height: 100%; mix-blend-mode: multiply }
  </style>${labels.join('')}<img src="data:image/png;base64,${picture}" alt="">`;
}
