import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { describeInBrowser } from '../support/browser.ts';
import { freshFolder } from '../support/kinfonds.ts';
import { everyComponent, pageOf, quillFerry, thumbnailsFor } from '../support/quill-page.ts';

let aid: FindingAid;
let page: string;
beforeAll(async () => {
  aid = await quillFerry();
  page = pageOf(aid, { thumbnails: thumbnailsFor(aid) });
});

const hasPoppler = ['pdftotext', 'pdfinfo'].every((tool) => spawnSync(tool, ['-v']).error === undefined);
if (!hasPoppler) {
  if (process.env.CI === 'true')
    throw new Error('In CI every outside check must run, but pdftotext is missing.');
  process.stderr.write('Left out: the page on paper: the programs pdftotext and pdfinfo are missing.\n');
}

describeInBrowser('the page on paper', (open) => {
  test.skipIf(!hasPoppler)(
    'on paper it is a booklet: page numbers, running heads, everything pulled out',
    async () => {
      const { page: tab } = await open(page);
      const file = join(freshFolder(), 'page.pdf');
      writeFileSync(file, await tab.pdf({ preferCSSPageSize: true, format: 'A4' }));
      const pages = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
        .stdout.split('\f')
        .slice(0, -1);
      expect(pages.length).toBeGreaterThan(20);
      for (const [at, text] of pages.entries()) {
        expect(text.trimEnd().split('\n').at(-1)?.trim()).toBe(`${at + 1} / ${pages.length}`);
        if (at > 0) expect(text.trimStart().split('\n')[0]).toContain(aid.collection.title);
      }
      const running = pages.map((text) => text.trimStart().split('\n')[0]?.trim() ?? '');
      expect(running.some((head) => /Contents$/.test(head))).toBe(true);
      expect(running.some((head) => /Box by box$/.test(head))).toBe(true);
      const words = (text: string) =>
        text.replace(/\s+/g, '').replaceAll('ﬁ', 'fi').replaceAll('ﬂ', 'fl').replaceAll('ﬀ', 'ff');
      const all = words(pages.join('\n'));
      const missing = [...everyComponent(aid.collection)].filter(
        ({ referenceCode, level }) => level === 'item' && !all.includes(words(referenceCode ?? '')),
      );
      expect(missing.map(({ referenceCode }) => referenceCode)).toEqual([]);
      for (const forScreens of ['any kind', 'Choose a bar', 'Show in the list', 'To the contents'])
        expect(all).not.toContain(words(forScreens));
    },
  );

  test.skipIf(!hasPoppler)('on paper without scripts nothing is closed either', async () => {
    const { page: tab } = await open(page, '', { javaScriptEnabled: false });
    const file = join(freshFolder(), 'plain.pdf');
    writeFileSync(file, await tab.pdf({ format: 'A4' }));
    const text = spawnSync('pdftotext', [file, '-'], { encoding: 'utf8' }).stdout;
    for (const { referenceCode } of everyComponent(aid.collection)) expect(text).toContain(referenceCode);
  });
});
