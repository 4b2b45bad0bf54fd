import { beforeAll, describe, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { isSafeAddress } from '../../src/export/html/link.ts';
import { escaped } from '../../src/export/html/markup.ts';
import { faults } from '../support/html-faults.ts';
import { jsonLdOf, pageOf, quillFerry, withThing } from '../support/quill-page.ts';

let quill: FindingAid;
beforeAll(async () => {
  quill = await quillFerry();
});

describe('texts that are after something', () => {
  const hostile = [
    '<script>alert(1)</script>',
    '</script><script>alert(1)</script>',
    '<!--',
    '" onmouseover="alert(1)',
    "' onfocus='alert(1)",
    '</noscript></details><b>',
    '&lt;b&gt; &amp;amp;',
    '$& $1 {x} RUNNING-HEAD',
  ];

  test.each(hostile)('%s is text, in HTML and in JSON-LD', (text) => {
    const aid = withThing(quill, {
      title: text,
      scopeAndContent: text,
      digitalCopies: [{ file: text, title: text }],
    });
    const page = pageOf({ ...aid, people: [{ id: 'a', type: 'person', name: text }] });
    expect(page).toContain(`<bdi class="n">${escaped(text)}</bdi>`);
    expect(page.match(/<script/g)).toHaveLength(2);
    expect(page.match(/<\/script/g)).toHaveLength(2);
    expect(page).not.toMatch(/ on(?:mouseover|focus)="/);
    expect(JSON.stringify(jsonLdOf(page))).toContain(JSON.stringify(text));
  });

  // HTML Standard, 13.1.2: these may stand in no document. The model lets none in, but a page is made from whatever comes.
  test.each(['a\uD800b', 'a\uDC00b', 'a\u0000b', 'a\u0085b', 'a\uFFFEb', 'a\u{1FFFF}b'])(
    '%j has a replacement character',
    async (text) => {
      const page = pageOf({ ...quill, collection: { ...quill.collection, title: text } });
      expect(page).toContain('<bdi class="n">a\uFFFDb</bdi>');
      expect(page).not.toContain(text);
      expect(await faults(page)).toEqual([]);
    },
  );

  test('letters beyond the basic plane stay whole', () => {
    expect(escaped('𝒜𠮷 👩‍👧 é')).toBe('𝒜𠮷 👩‍👧 é');
  });

  test('an override of the direction ends where its text ends', () => {
    const text = '\u202Egpj.exe';
    const page = pageOf(
      withThing(quill, { title: text, scopeAndContent: text, accessPoints: [{ type: 'place', term: text }] }),
    );
    for (const [, before, after] of page
      .replace(/<script.*?<\/script>/gs, '')
      .matchAll(/(<[^<>]*>)?\u202Egpj\.exe(<[^<>]*>)?/g)) {
      expect(before).toMatch(/^<bdi|dir="auto"|^<title|^<option/);
      expect(after).toMatch(/^<\//);
    }
    expect(page.match(/\u202E/g)?.length).toBeGreaterThan(3);
  });

  test.each([
    ['copies/a.jpg', true],
    ['../copies/a.jpg', true],
    ['https://example.org/a.jpg', true],
    ['javascript:alert(1)', false],
    [' javascript:alert(1)', false],
    ['\u0001javascript:alert(1)', false],
    ['java\nscript:alert(1)', false],
    ['javascript://example.org/%0Aalert(1)', false],
    ['data:text/html,x', false],
    ['file:///etc/passwd', false],
    ['//example.org/a', false],
    ['/etc/passwd', false],
    ['\\\\host\\a', false],
    ['', false],
  ])('an address such as %j is followed: %s', (address, isSafe) => {
    expect(isSafeAddress(address)).toBe(isSafe);
  });

  test('an address of another kind is shown and not linked', () => {
    const file = 'javascript://example.org/%0Aalert(1)';
    const page = pageOf(withThing(quill, { digitalCopies: [{ file, title: 'A copy' }] }));
    expect(page).toContain('A copy');
    expect(page).not.toMatch(/href="javascript/i);
    expect(JSON.stringify(jsonLdOf(page))).not.toContain('javascript');
  });
});
