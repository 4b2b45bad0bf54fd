import { expect, test } from 'vitest';
import { describeInBrowser } from '../support/browser.ts';
import { faults } from '../support/html-faults.ts';
import { pageOf, quillFerry, withThing } from '../support/quill-page.ts';

/** Texts that are after something, and what is to be read in their place. */
const TEXTS: readonly (readonly [text: string, read: string])[] = [
  ['<script>document.title="taken"</script>', '<script>document.title="taken"</script>'],
  [
    '</script><img src=x onerror=document.title="taken">',
    '</script><img src=x onerror=document.title="taken">',
  ],
  ['<style>*{display:none}</style>', '<style>*{display:none}</style>'],
  ['" autofocus onfocus="document.title=1', '" autofocus onfocus="document.title=1'],
  ['&lt;b&gt;bold&lt;/b&gt;', '&lt;b&gt;bold&lt;/b&gt;'],
  ['a\uD800b', 'a\uFFFDb'],
  ['\u202Etxt.exe', '\u202Etxt.exe'],
  ['אדה קוויל', 'אדה קוויל'],
  ['constructor __proto__ toString', 'constructor __proto__ toString'],
];

describeInBrowser('hostile texts in a browser', (open) => {
  test.each(TEXTS)('%j is read as text, in the tree and among the answers', async (text, read) => {
    const quill = await quillFerry();
    const aid = withThing(quill, {
      level: 'file',
      title: 'A folder',
      children: [{ id: 'QF-1-1', level: 'item', title: 'x', containers: [{ type: 'box', number: '1' }] }],
    });
    const [folder] = aid.collection.children;
    const [thing] = folder?.children ?? [];
    if (folder === undefined || thing === undefined) throw new Error('There is no thing.');
    Object.assign(thing, {
      title: text,
      scopeAndContent: text,
      containers: [{ type: text, number: text }],
      accessPoints: [{ type: 'place', term: text, identifier: text }],
      digitalCopies: [{ file: text, origin: 'derived' }],
      creators: [{ agent: 'x' }],
    });
    const html = pageOf({ ...aid, people: [{ id: 'x', type: 'person', name: text, history: text }] });
    expect(await faults(html)).toEqual([]);
    const { page: tab, messages, requests } = await open(html, '#QF-1-1');
    expect(await tab.locator('#QF-1-1 .n').textContent()).toBe(read);
    await tab.locator('#find\\:words').fill(read);
    await expect.poll(() => tab.locator('#part\\:found .n').count()).toBe(1);
    expect(await tab.locator('#part\\:found .n').textContent()).toBe(read);
    await tab.locator('#find\\:words').fill('');
    await tab.getByRole('button', { name: 'Show in the list' }).first().click();
    expect(await tab.locator('#find\\:chosen').textContent()).toBe(`With ${read}`);
    expect(await tab.title()).toBe(aid.control.title);
    expect([messages, requests]).toEqual([[], []]);
  });

  test('a text from right to left leaves what stands beside it in its place', async () => {
    const quill = await quillFerry();
    const dates = [{ type: 'inclusive', expression: '1923', edtf: '1923' }];
    const { page: tab } = await open(pageOf(withThing(quill, { title: '\u202Eabc אדה', dates })));
    const [title, date] = await tab
      .locator('#QF-1 .t bdi')
      .evaluateAll((parts) => parts.map((part) => part.getBoundingClientRect().left));
    expect(title ?? 0).toBeLessThan(date ?? 0);
    // Read by a machine for the order of the glyphs, the date still runs from left to right.
    expect(await tab.locator('#QF-1 .d').evaluate((part) => getComputedStyle(part).unicodeBidi)).toBe(
      'isolate',
    );
  });
});
