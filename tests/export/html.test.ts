import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Component } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { fullFindingAid, isMarked, leavesOf } from '../support/full-finding-aid.ts';
import { faults } from '../support/html-faults.ts';
import { pageOf, quillFerry, thumbnailsFor, withThing } from '../support/quill-page.ts';

let quill: FindingAid;
beforeAll(async () => {
  quill = await quillFerry();
});

describe('one page', () => {
  test('the same finding aid gives the same bytes', () => {
    expect(pageOf(quill)).toBe(pageOf(quill));
  });

  test('is valid HTML', async () => {
    expect(await faults(pageOf(quill, { thumbnails: thumbnailsFor(quill) }))).toEqual([]);
    expect(await faults(pageOf(fullFindingAid()))).toEqual([]);
    expect(
      await faults(
        '<!DOCTYPE html><html lang="en"><head><title>x</title></head><body><p><div></div></p></body></html>',
      ),
    ).not.toEqual([]);
  });

  test('is valid HTML whatever the texts', async () => {
    for (const aid of fc.sample(arbitraryFindingAid({ largest: 4 }), { numRuns: 60, seed: 7 }))
      expect(await faults(pageOf(aid))).toEqual([]);
  });

  test('box by box, what lies apart from its folder says so, and what a box alone holds does not', () => {
    const box = [{ id: 'b', type: 'box', number: '9' }];
    const lineOf = (over: Partial<Component>) =>
      /<h3>Box 9<\/h3>\s*<ul><li><span>([^<]*)<\/span>/.exec(
        pageOf(withThing(quill, { containers: box, ...over })),
      )?.[1];
    expect(lineOf({ physicalLocation: 'Apart from folder 2, in box 9: rolled' })).toBe('Apart');
    expect(lineOf({})).toBe('In no folder');
  });

  test('tells everything that the finding aid describes', () => {
    const aid = fullFindingAid();
    const seen = pageOf(aid).replace(/<script type="application\/ld\+json">.*?<\/script>/s, '');
    const untold = new Set(
      leavesOf(aid)
        // What was found elsewhere is kept for the format it was found in.
        .filter(({ field }) => !field.includes('.kept.'))
        .flatMap((leaf) => (isMarked(leaf) && !seen.includes(String(leaf.value)) ? [leaf.field] : [])),
    );
    expect([...untold].sort()).toEqual([
      // The heading holds them.
      'agent.nameParts[].text',
      // How containers stand in one another is told by the order of the words.
      'component.containers[].id',
      'component.containers[].parent',
      // What differs from the words shown in its figures is told; these have none.
      'component.dates[].written',
      // Latin, which the page itself is set in.
      'component.languages[].script.name',
      'control.languages[].script.name',
    ]);
  });
});

describe('the policy', () => {
  const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

  test('names the one style and the one script by their hashes, and lets nothing else in', () => {
    const page = pageOf(quill);
    const policy =
      /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1]?.replaceAll('&#39;', "'") ??
      '';
    const style = /<style>(.*?)<\/style>/s.exec(page)?.[1] ?? '';
    const script = /<script>(.*?)<\/script>/s.exec(page)?.[1] ?? '';
    expect(policy.split('; ')).toEqual([
      "default-src 'none'",
      `style-src ${hash(style)}`,
      `script-src ${hash(script)}`,
      'img-src data:',
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    expect([...page.matchAll(/<script/g)]).toHaveLength(2);
    expect(page).not.toMatch(/ style="| on[a-z]+="/);
  });

  test('holds where the title tries to leave the style', () => {
    const title = '"; } </style><script>alert(1)</script> \\\n@import "//x"; é';
    const aid = { ...quill, collection: { ...quill.collection, title } };
    const page = pageOf(aid);
    const style = /<style>(.*?)<\/style>/s.exec(page)?.[1] ?? '';
    // CSS Syntax Level 3, 4.3.7: a backslash, the code point, a blank.
    expect(style).toContain(
      'content: "\\22 ; } \\3c /style\\3e \\3c script\\3e alert(1)\\3c /script\\3e  \\5c \\a @import \\22 //x\\22 ; é";',
    );
    expect(page.match(/<style/g)).toHaveLength(1);
    expect(page.match(/<script/g)).toHaveLength(2);
  });
});

describe('what is restricted', () => {
  const closed = (over: Partial<Component> = {}) => ({
    accessConditions: { statement: 'Closed', restricted: true },
    digitalCopies: [{ file: 'copies/secret.jpg', origin: 'derived' }],
    ...over,
  });

  test('says so at its line and below it, and shows no copy', () => {
    const page = pageOf(
      withThing(quill, {
        level: 'file',
        ...closed(),
        children: [{ id: 'QF-1-1', level: 'item', title: 'y', ...closed({ accessConditions: undefined }) }],
      }),
      {
        thumbnails: new Map([
          ['copies/secret.jpg', { source: 'data:image/webp;base64,SECRET', width: 1, height: 1 }],
        ]),
      },
    );
    expect(page.match(/<span class="x">restricted<\/span>/g)?.length).toBeGreaterThanOrEqual(2);
    expect(page).not.toMatch(/secret/i);
  });

  test('is said at the folded line of what holds it', () => {
    const lineOf = (over: object) => {
      const children = [{}, over].map((more, at) => ({
        id: `QF-1-${at}`,
        level: 'item',
        title: 'y',
        ...more,
      }));
      const folder = {
        level: 'file' as const,
        title: 'Folder of letters',
        children: children as Component[],
      };
      const folded = pageOf(withThing(quill, folder)).split('<summary').slice(1);
      return folded.find((line) => line.includes('Folder of letters'))?.split('</summary>')[0];
    };
    expect(lineOf(closed())).toContain('<span class="x">restricted in part</span>');
    expect(lineOf({})).not.toContain('restricted');
  });

  test('leaves no trace where it is left out', () => {
    const page = pageOf(quill, { withoutRestricted: true, thumbnails: thumbnailsFor(quill) });
    // In examples/quill-ferry/list.csv these occur in rows that are not open, and in no other.
    for (const words of ['Adoption', 'Ellen at college', 'the operation', 'Bank book', '1951-1953'])
      expect(page.includes(words), words).toBe(false);
    expect(pageOf(quill)).toContain('Adoption');
  });
});

test('the model takes the example', () => {
  expect(findingAid.safeParse(quill).success).toBe(true);
});
