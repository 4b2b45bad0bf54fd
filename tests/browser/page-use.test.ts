import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { describeInBrowser } from '../support/browser.ts';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';
import { everyComponent, pageOf, quillFerry, thumbnailsFor } from '../support/quill-page.ts';

// What readers do with the page. The answers that are expected were read in the list of the example, examples/quill-ferry.

let aid: FindingAid;
let page: string;
beforeAll(async () => {
  aid = await quillFerry();
  page = pageOf(aid, { thumbnails: thumbnailsFor(aid), copyAddress: (file) => `../${file}` });
});

const titles = '#part\\:found .n';

describeInBrowser('the page in a browser, from a file', (open) => {
  test('search as one types, by words of any part, forgiving mistakes', async () => {
    const { page: tab } = await open(page);
    const said = tab.locator('#find\\:said');
    await tab.locator('#find\\:words').pressSequentially('apple butt');
    await expect
      .poll(() => tab.locator(titles).first().textContent())
      .toBe('Recipe for apple butter, forty quarts');
    expect(await tab.locator('#part\\:list').isHidden()).toBe(true);
    // Two mistakes in a long word, one in a short one: Ternesund, pontoon.
    await tab.locator('#find\\:words').fill('ponton brigde');
    await expect.poll(() => tab.locator(titles).first().textContent()).toContain('pontoon bridge');
    expect(await said.textContent()).toMatch(/^Nothing has these words as they are written\./);
    // Without the accents: Nygård.
    await tab.locator('#find\\:words').fill('nygard wedding');
    await expect
      .poll(() => tab.locator(titles).first().textContent())
      .toBe('Letter from Kari about her wedding');
    await tab.locator('#find\\:words').fill('zeppelin hangar');
    await expect.poll(() => said.textContent()).toMatch(/^Nothing found/);
    await tab.getByRole('button', { name: 'Clear' }).click();
    await expect.poll(() => tab.locator('#part\\:list').isVisible()).toBe(true);
    expect(await said.textContent()).toBe('');
  });

  test('the code on the label of a folder finds the folder first, then what is in it', async () => {
    const folder = [...everyComponent(aid.collection)].find(
      ({ level, children }) => level === 'file' && children.length > 2,
    );
    const wanted = [folder?.title, ...(folder?.children ?? []).map(({ title }) => title)];
    const { page: tab } = await open(page);
    await tab.locator('#find\\:words').fill(folder?.referenceCode ?? '');
    await expect.poll(() => tab.locator(titles).allTextContents()).toEqual(wanted);
  });

  test('a folder with one thing in it shows its title while closed, and finds nothing twice', async () => {
    const folder = [...everyComponent(aid.collection)].find(
      ({ level, title, containers, children: [only, ...more] }) =>
        level === 'file' &&
        containers.length > 0 &&
        only !== undefined &&
        more.length === 0 &&
        only.title !== title,
    );
    const [thing] = folder?.children ?? [];
    const { page: tab } = await open(page);
    const line = tab.locator(`[id="${folder?.id}"] > details > summary`);
    // biome-ignore lint/performance/useDomNodeTextContent: `textContent` gives what is hidden too.
    const seen = (one: typeof line) => one.innerText();
    expect(await seen(line)).toContain(thing?.title);
    expect(await line.locator('.w').isVisible()).toBe(true);
    await line.click();
    expect(await seen(line)).not.toContain(thing?.title);
    expect(await line.locator('.w').isVisible()).toBe(false);
    expect(await seen(tab.locator(`[id="${thing?.id}"]`))).toContain(thing?.title);
    await tab.locator('#find\\:words').fill(thing?.title ?? '');
    await expect.poll(() => tab.locator(titles).first().textContent()).toBe(thing?.title);
    const [ids, found] = [`a[href="#${folder?.id}"]`, tab.locator('#part\\:found')];
    expect(await found.locator(ids).count()).toBe(0);
  });

  test('the search is the first of the ways at the left, and takes the keyboard', async () => {
    const { page: tab } = await open(page);
    await tab.locator('nav a').first().press('Enter');
    await tab.keyboard.type('apple butt');
    await expect
      .poll(() => tab.locator(titles).first().textContent())
      .toBe('Recipe for apple butter, forty quarts');
    await expect.poll(() => tab.locator('#find\\:words').isVisible()).toBe(true);
  });

  test('the page of the built program does the same: its script goes through the bundler', async () => {
    const out = freshFolder();
    const written = kinfonds(['export', 'examples/quill-ferry', '--to', 'html', '--out', out]);
    expect(written.code).toBe(0);
    const { page: tab, messages } = await open(readFileSync(join(out, 'finding-aid.html'), 'utf8'));
    await tab.locator('#find\\:words').fill('ponton brigde');
    await expect.poll(() => tab.locator(titles).first().textContent()).toContain('pontoon bridge');
    await tab.getByRole('button', { name: 'Clear' }).click();
    await tab.getByText('The same as a table').click();
    await tab.locator('.years td[data-y] button').first().click();
    await expect.poll(() => tab.locator('#find\\:said').textContent()).toMatch(/\d entr/);
    expect(messages).toEqual([]);
  });

  test('by years, box, kind and copy, each narrowing further', async () => {
    const { page: tab } = await open(page);
    const shown = () => tab.locator('#part\\:found > ol > li').count();
    await tab.getByLabel('From the year').fill('1922');
    await tab.getByLabel('to', { exact: true }).fill('1923');
    await expect.poll(shown).toBeGreaterThan(5);
    const years = await tab.locator('#part\\:found .d').allTextContents();
    // A span that only touches these years counts; a date wholly outside does not.
    expect(years.filter((date) => /^19(?:0|1[0-8]|[3-9])\d?(?!.*-)/.test(date))).toEqual([]);
    await tab.getByLabel('Kind').selectOption({ label: 'letters' });
    await tab.getByLabel('with a digital copy').check();
    await expect
      .poll(() => tab.locator(titles).allTextContents())
      .toEqual(['Letter from Edmund to Samuel: the crossing to Norway']);
    const box = await tab.locator('#part\\:found .w').first().textContent();
    await tab.getByLabel('Box').selectOption({ label: box?.split(',')[0] ?? '' });
    await expect.poll(shown).toBe(1);
    await tab.getByLabel('Box').selectOption({ label: 'Box 1' });
    await expect.poll(shown).toBe(0);
  });

  test('a bar of the years filters the list, and so does its number in the table', async () => {
    const { page: tab } = await open(page);
    const letters = aid.collection.children.find(({ title }) => title === 'Correspondence');
    const bar = tab.locator(`.bars svg[data-g="${letters?.id}"] g[data-y="1920/1929"]`);
    await bar.click();
    await expect.poll(() => tab.getByLabel('From the year').inputValue()).toBe('1920');
    const paths = await tab.locator('#part\\:found .path').allTextContents();
    expect(paths.length).toBeGreaterThan(5);
    expect(paths.every((path) => path.startsWith('Correspondence'))).toBe(true);
    const count = (await tab.locator('#find\\:said').textContent())?.split(' ')[0];
    expect(await bar.locator('title').textContent()).toBe(`1920s: ${count}`);
    await tab.getByRole('button', { name: 'Clear' }).click();
    await tab.getByText('The same as a table').click();
    const cell = tab.locator(`td[data-g="${letters?.id}"][data-y="1920/1929"] button`);
    expect(await cell.textContent()).toBe(count);
    await cell.press('Enter');
    await expect.poll(() => tab.locator('#find\\:said').textContent()).toBe(`${count} entries found.`);
  });

  test('every component has its own address, which opens the way to it', async () => {
    const letter = [...everyComponent(aid.collection)].find(({ title }) =>
      title.includes('the crossing to Norway'),
    );
    const { page: tab } = await open(page, `#${letter?.id}`);
    const place = tab.locator(`#${letter?.id}`);
    await expect.poll(() => place.isVisible()).toBe(true);
    expect(await place.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await place.evaluate((element) => element.getBoundingClientRect().top)).toBeLessThan(400);
    for (const { id } of everyComponent(aid.collection)) {
      if (id === aid.collection.id) continue;
      expect(await tab.locator(`[id="${id}"]`).count(), id).toBe(1);
    }
  });

  test('from an answer to its place and back again', async () => {
    const { page: tab } = await open(page);
    await tab.locator('#find\\:words').fill('apple butter');
    await tab.locator('#part\\:found a').first().click();
    await expect.poll(() => tab.locator('#part\\:list').isVisible()).toBe(true);
    expect(await tab.locator('li.u:target').isVisible()).toBe(true);
    await tab.goBack();
    await expect.poll(() => tab.locator('#part\\:found').isVisible()).toBe(true);
  });

  test('a person in the index shows what they occur in', async () => {
    const { page: tab } = await open(page);
    await tab.getByRole('button', { name: 'Show in the list: Amos Pell' }).click();
    await expect
      .poll(() => tab.locator(titles).allTextContents())
      .toEqual(['Letter from Reverend Pell to Thomas and Hester about the prayers for Samuel']);
    await tab.getByRole('button', { name: 'Take away: With Amos Pell' }).click();
    await expect.poll(() => tab.locator('#part\\:list').isVisible()).toBe(true);
  });

  test('thumbnails open the copy beside the page; nothing is asked of any network, and nothing complained of', async () => {
    const { page: tab, requests, messages } = await open(page);
    const links = await tab
      .locator('#part\\:list .copies a')
      .evaluateAll((all) => all.map((a) => a.getAttribute('href')));
    const copies = [...everyComponent(aid.collection)].flatMap(({ digitalCopies }) => digitalCopies);
    expect(links).toEqual(copies.map(({ file }) => `../${file}`));
    await tab.locator('#find\\:copy').check();
    await expect.poll(() => tab.locator('#part\\:found img').count()).toBe(copies.length);
    await tab.locator('#part\\:found img').first().scrollIntoViewIfNeeded();
    await expect
      .poll(() =>
        tab
          .locator('#part\\:found img')
          .first()
          .evaluate((image) => (image as HTMLImageElement).naturalWidth),
      )
      .toBe(1);
    expect(requests).toEqual([]);
    expect(messages).toEqual([]);
  });

  test('the policy lets no other script in', async () => {
    const { page: tab, messages } = await open(
      page.replace('</main>', '<script>document.title = "changed"</script></main>'),
    );
    expect(await tab.title()).toBe(aid.control.title);
    expect(messages.join()).toMatch(/Content Security Policy/);
  });

  test('the page is in quirks mode nowhere, and says its language', async () => {
    const { page: tab } = await open(page);
    expect(await tab.evaluate(() => document.compatMode)).toBe('CSS1Compat');
    expect(await tab.evaluate(() => document.documentElement.lang)).toBe('en');
  });

  test('the example is still the one these answers were read in', () => {
    const list = readFileSync('examples/quill-ferry/list.csv', 'utf8');
    for (const words of ['apple butter', 'pontoon bridge', 'Amos Pell', 'Letter from Kari about her wedding'])
      expect(list).toContain(words);
  });
});
