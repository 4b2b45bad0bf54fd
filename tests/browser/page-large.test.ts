import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { describeInBrowser } from '../support/browser.ts';
import { everyComponent, pageOf } from '../support/quill-page.ts';

const THINGS = 10_000;

let folder: string;
let aid: FindingAid;
let page: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-page-'));
  const bench: string = '../../bench/list-of-things.mjs';
  const { writeCatalogue } = (await import(bench)) as {
    writeCatalogue: (folder: string, rows: number) => void;
  };
  writeCatalogue(folder, THINGS);
  aid = arrange(await loadCatalogue(folder), '2026-01-01');
  page = pageOf(aid);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const report = (what: string, figure: string) =>
  process.stdout.write(`${THINGS} things: ${what} ${figure}\n`);

describeInBrowser('a page of ten thousand things', (open, browser) => {
  test('is at most six times as large as the JSON of the same catalogue', () => {
    const size = (text: string) => Buffer.byteLength(text, 'utf8');
    const ratio = size(page) / size([...findingAidToJson(aid)].join(''));
    report('size beside finding-aid.json', `${ratio.toFixed(2)} times, at most 6`);
    expect(ratio).toBeLessThanOrEqual(6);
  });

  // Times are told and not asserted: they say as much of the machine and of what else it does.
  test('can be searched soon after it is opened, and answers at every stroke of a key', async () => {
    const start = performance.now();
    const { page: tab, messages, requests } = await open(page);
    report('opened and all of it to be found after', `${Math.round(performance.now() - start)} ms`);
    const strokes = await tab.evaluate(() => {
      const field = document.getElementById('find:words') as HTMLInputElement;
      return [...'ferry lettr orchard'].map((letter) => {
        const pressed = performance.now();
        field.value += letter;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        // Asking for a height makes the browser lay the answer out.
        const height = document.body.offsetHeight;
        return height > 0 ? performance.now() - pressed : Number.NaN;
      });
    });
    report('a stroke of a key is answered in at most', `${Math.round(Math.max(...strokes))} ms`);
    expect(await tab.locator('#part\\:found > ol > li').count()).toBe(25);
    await tab.getByRole('button', { name: 'Show more' }).click();
    expect(await tab.locator('#part\\:found > ol > li').count()).toBe(50);
    expect([messages, requests]).toEqual([[], []]);
  });

  test('finds a thing that waits in a closed folder, and leads to it', async () => {
    const { page: tab } = await open(page);
    await tab.locator('#find\\:words').fill('no. 7314');
    const found = tab.locator('#part\\:found > ol > li').first();
    await expect.poll(() => found.textContent()).toContain('no. 7314');
    await found.locator('a').first().click();
    await expect.poll(() => tab.locator('li.u:target').textContent()).toContain('no. 7314');
  });

  test('an address leads into a folder that waits; a folder that is opened is filled', async () => {
    const things = [...everyComponent(aid.collection)].filter(({ children }) => children.length === 0);
    const last = things.at(-1);
    const { page: tab } = await open(page, `#${last?.id}`);
    await expect.poll(() => tab.locator(`[id="${last?.id}"]`).isVisible()).toBe(true);
    const folder = aid.collection.children[0]?.children[0];
    await tab.locator(`[id="${aid.collection.children[0]?.id}"] > details > summary`).click();
    await tab.locator(`[id="${folder?.id}"] > details > summary`).click();
    await expect.poll(() => tab.locator(`[id="${folder?.children[0]?.id}"]`).isVisible()).toBe(true);
  });

  test('in time everything is there for the search of the browser itself', async () => {
    const { page: tab } = await open(page);
    await expect.poll(() => tab.locator('#part\\:list noscript').count(), { timeout: 40_000 }).toBe(0);
    expect(await tab.locator('#part\\:list li.u').count()).toBe(
      [...everyComponent(aid.collection)].length - 1,
    );
  });

  test('without scripts nothing waits', async () => {
    const { page: tab } = await open(page, '', { javaScriptEnabled: false });
    expect(await tab.locator('#part\\:list li.u').count()).toBe(
      [...everyComponent(aid.collection)].length - 1,
    );
  });

  test('the browser is a real one', () => {
    expect(browser().version()).toMatch(/^\d+\./);
  });
});
