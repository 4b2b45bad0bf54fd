import { beforeAll, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { describeInBrowser } from '../support/browser.ts';
import { child, type Story } from '../support/ead-story.ts';
import { ead3Story } from '../support/ead3-story.ts';
import { everyComponent, pageOf, quillFerry, thumbnailsFor } from '../support/quill-page.ts';
import { elementsOf, everyElement, parseTree, textOf } from '../support/xml-tree.ts';

let aid: FindingAid;
let page: string;
beforeAll(async () => {
  aid = await quillFerry();
  page = pageOf(aid, { thumbnails: thumbnailsFor(aid) });
});

/** What a line of the tree tells: title, dates, place. */
interface Line {
  title: string;
  dates: string[];
  place: string;
}

describeInBrowser('the page by itself', (open) => {
  test('without scripts it is all there, and no control that would do nothing', async () => {
    const { page: tab } = await open(page, '', { javaScriptEnabled: false });
    expect(await tab.locator('#part\\:list li.u').count()).toBe(
      [...everyComponent(aid.collection)].length - 1,
    );
    expect(await tab.locator('button:visible, input:visible, select:visible').count()).toBe(0);
    expect(await tab.locator('noscript p').isVisible()).toBe(true);
    const folder = [...everyComponent(aid.collection)].find(
      ({ level, children }) => level === 'file' && children.length > 0,
    );
    const thing = tab.locator(`[id="${folder?.children[0]?.id}"]`);
    expect(await thing.isVisible()).toBe(false);
    await tab.locator(`[id="${folder?.id}"] summary`).click();
    expect(await thing.isVisible()).toBe(true);
    await tab.getByRole('link', { name: 'Box by box' }).click();
    expect(
      await tab.locator('#part\\:boxes').evaluate((part) => part.getBoundingClientRect().top),
    ).toBeLessThan(100);
  });

  test('without scripts an address leads through closed folders', async () => {
    const deep = [...everyComponent(aid.collection)].filter(({ children }) => children.length === 0).at(-1);
    const { page: tab } = await open(page, `#${deep?.id}`, { javaScriptEnabled: false });
    await expect.poll(() => tab.locator(`#${deep?.id}`).isVisible()).toBe(true);
  });

  test('title, dates and place of every component are those of the EAD3 export', async () => {
    const { page: tab } = await open(page, '', { javaScriptEnabled: false });
    const lines = await tab.evaluate(() => {
      const text = (element: Element | null) => element?.textContent ?? '';
      const told: [string, Line][] = [...document.querySelectorAll('#part\\:list li.u')].map((unit) => {
        const own = unit.querySelector(':scope > details > summary') ?? unit;
        return [
          unit.id,
          {
            title: text(own.querySelector('.n')),
            dates: [...own.querySelectorAll('.d')].map(text),
            place: [...own.querySelectorAll('.w')].map(text).join('; '),
          },
        ];
      });
      return Object.fromEntries(told);
    });
    const tree = parseTree([...writeXml(ead3(aid))].join(''));
    const figures = (text: string) => text.match(/\d{4}/g) ?? [];
    const inStructures = new Map(
      everyElement(tree)
        .filter(({ element: { name } }) => name === 'c')
        .map(({ element }) => [
          element.attributes.id,
          elementsOf(child(element, 'did'), 'unitdatestructured').map((date) =>
            everyElement(date).flatMap(({ element: part }) =>
              elementsOf(part).length === 0 ? figures(textOf(part)) : [],
            ),
          ),
        ]),
    );
    let compared = 0;
    const compare = (unit: Story, above: Story['containers']) => {
      const containers = unit.containers.length > 0 ? unit.containers : above;
      const line = lines[unit.id ?? ''];
      if (line !== undefined) {
        compared += 1;
        expect([line.title], unit.id).toEqual(unit.titles);
        expect(line.dates.length, unit.id).toBe(unit.dates.length);
        for (const [at, { words }] of unit.dates.entries()) {
          const shown = line.dates[at] ?? '';
          // Where the structure says it all EAD3 has no words; then the years must be the same.
          if (words !== undefined) expect(shown, unit.id).toBe(words);
          else expect(inStructures.get(unit.id ?? ''), unit.id).toContainEqual(figures(shown));
        }
        const place = containers.map(
          ({ type, number }) => `${type}${/^\d+-\d+$/.test(number ?? '') ? 's' : ''} ${number}`,
        );
        // Containers that stand in one another are parted by commas on the page, others by semicolons.
        expect(
          line.place
            .toLowerCase()
            .split(/[,;] /)
            .filter((part) => part !== ''),
          unit.id,
        ).toEqual(place);
      }
      for (const below of unit.children) compare(below, containers);
    };
    compare(ead3Story(tree), []);
    expect(compared).toBe([...everyComponent(aid.collection)].length - 1);
  });
});
