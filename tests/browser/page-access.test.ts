import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from '../support/browser.ts';
import { pageOf, quillFerry, thumbnailsFor } from '../support/quill-page.ts';

let page: string;
let axe: string;
beforeAll(async () => {
  const aid = await quillFerry();
  page = pageOf(aid, { thumbnails: thumbnailsFor(aid) });
  axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
});

/** What axe finds by the rules of WCAG 2.2, levels A and AA, and by its own good practice. */
async function found(tab: Page): Promise<string[]> {
  // The policy of the page lets no script in but its own; this one comes from the browser's side.
  await tab.evaluate(axe);
  return tab.evaluate(async () => {
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const run = (globalThis as unknown as { axe: { run: (options: object) => Promise<Results> } }).axe.run;
    interface Results {
      violations: { id: string; nodes: { html: string }[] }[];
      passes: unknown[];
    }
    const { violations, passes } = await run({ runOnly: tags });
    if (passes.length < 20) return [`only ${passes.length} rules were tried`];
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
  });
}

describeInBrowser('a page for everybody', (open) => {
  test.each(['light', 'dark'] as const)('axe finds nothing, %s', async (colorScheme) => {
    const { page: tab } = await open(page, '', { colorScheme });
    expect(await found(tab)).toEqual([]);
    await tab.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    expect(await found(tab)).toEqual([]);
    await tab.locator('.bars g[data-y]').first().click();
    await tab.locator('#part\\:found > ol > li').first().waitFor();
    expect(await found(tab)).toEqual([]);
  });

  test('axe would find something', async () => {
    const { page: tab } = await open(page.replace('<h1 dir="auto">', '<img src="data:,"><h1 dir="auto">'));
    expect((await found(tab)).join()).toMatch(/image-alt/);
  });

  // WCAG 2.2, 1.4.10 Reflow: no scrolling in two dimensions at a width of 320 CSS pixels.
  test.each([320, 390, 768, 1024, 1920])('no scrolling from side to side at a width of %i', async (width) => {
    const { page: tab } = await open(page, '', { viewport: { width, height: 800 } });
    const overflow = () =>
      tab.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(await overflow()).toBe(0);
    await tab.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    expect(await overflow()).toBe(0);
    await tab.locator('#find\\:words').fill('letter');
    await tab.locator('#part\\:found > ol > li').first().waitFor();
    expect(await overflow()).toBe(0);
  });

  test('with the keyboard alone: to the contents, a search, the first answer, its place, a folder', async () => {
    const { page: tab } = await open(page);
    const focused = () => tab.evaluate(() => document.activeElement?.outerHTML.slice(0, 120) ?? '');
    await tab.keyboard.press('Tab');
    expect(await focused()).toContain('To the contents');
    await tab.keyboard.press('Enter');
    await tab.keyboard.press('Tab');
    expect(await focused()).toContain('find:words');
    await tab.keyboard.type('pontoon');
    await expect.poll(() => tab.locator('#part\\:found > ol > li').count()).toBe(1);
    await tab.keyboard.press('Enter');
    expect(await focused()).toContain('href="#QF-');
    await tab.keyboard.press('Enter');
    await expect.poll(() => tab.locator('li.u:target').isVisible()).toBe(true);
    await tab.keyboard.press('Shift+Tab');
    await tab.keyboard.press('Shift+Tab');
    expect(await focused()).toBeTruthy();
    const summary = tab.locator('#part\\:list summary').nth(1);
    await summary.focus();
    await tab.keyboard.press('Enter');
    expect(await summary.evaluate((element) => element.parentElement?.hasAttribute('open'))).toBe(true);
  });

  test('every control can be seen to have the focus', async () => {
    const { page: tab } = await open(page);
    const seen = new Set<string>();
    for (let step = 0; step < 140; step++) {
      await tab.keyboard.press('Tab');
      const [name, outline] = await tab.evaluate(() => {
        const element = document.activeElement;
        if (element === null) return ['nothing', ''];
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        return [element.tagName, outlineStyle === 'none' ? '' : outlineWidth];
      });
      seen.add(name ?? '');
      expect(outline, `${name} after ${step} steps`).not.toBe('');
    }
    expect([...seen]).toEqual(expect.arrayContaining(['A', 'INPUT', 'SELECT', 'BUTTON']));
  });
});
