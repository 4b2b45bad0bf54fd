import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { element, shared, type XmlElement } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';

const written = (root: XmlElement) => [...writeXml(root)].join('');

test('a character that XML forbids is refused, by its code point and its path', () => {
  // XML 1.0 (Fifth Edition), 2.2: all C0 controls but tab, line feed and carriage return; surrogates; FFFE, FFFF.
  const forbidden = fc.oneof(
    fc.integer({ min: 0, max: 0x1f }).filter((code) => ![9, 10, 13].includes(code)),
    fc.integer({ min: 0xd800, max: 0xdfff }),
    fc.constantFrom(0xfffe, 0xffff),
  );
  fc.assert(
    fc.property(forbidden, fc.boolean(), (code, inText) => {
      const bad = `a${String.fromCharCode(code)}b`;
      const c = inText ? element('c', {}, bad) : element('c', { level: bad });
      const what = inText ? 'The text' : 'The attribute level';
      const point = code.toString(16).toUpperCase().padStart(4, '0');
      expect(() =>
        written(element('ead', {}, [element('c', {}), element('dsc', {}, [element('c', {}), c])])),
      ).toThrow(`${what} of /ead/dsc/c[2] holds the character U+${point}, which no XML document can hold.`);
    }),
  );
});

describe('layout', () => {
  test('elements stand on lines of their own; one with any text stands on one line with all that is in it', () => {
    const root = element('ead', { xmlns: 'http://ead3.archivists.org/schema/', audience: undefined }, [
      element('did', {}, [element('unittitle', {}, 'Letters'), element('unitid', {})]),
      element('p', {}, [
        'By ',
        element('persname', {}, [element('part', {}, 'Ada Quill'), element('part', {}, '')]),
        '.',
      ]),
      element('dsc', {}, new Set([element('c', { level: 'item', id: 'a' })])),
    ]);
    expect(written(root)).toBe(
      [
        '<?xml version="1.0" encoding="UTF-8"?>',
        '<ead xmlns="http://ead3.archivists.org/schema/">',
        '  <did>',
        '    <unittitle>Letters</unittitle>',
        '    <unitid/>',
        '  </did>',
        '  <p>By <persname><part>Ada Quill</part><part/></persname>.</p>',
        '  <dsc>',
        '    <c level="item" id="a"/>',
        '  </dsc>',
        '</ead>',
        '',
      ].join('\n'),
    );
  });

  test('what needs escaping, and only that', () => {
    const root = element('p', { a: '<&">\'\t\n\r' }, '<&">\'\t\n\r ]]>');
    expect(written(root).split('?>\n')[1]).toBe(
      '<p a="&lt;&amp;&quot;>\'&#9;&#10;&#13;">&lt;&amp;"&gt;\'\t\n&#13; ]]&gt;</p>\n',
    );
  });
});

describe('lazy lists', () => {
  const many = function* (state: { pulled: number; closed: boolean }) {
    try {
      for (; state.pulled < 100_000; state.pulled++) yield element('c', {}, [element('did', {}, 'A letter')]);
    } finally {
      state.closed = true;
    }
  };

  test('are pulled as they are written, and stopped where the reader stops', () => {
    const state = { pulled: 0, closed: false };
    const chunks = writeXml(element('dsc', {}, many(state)));
    const first = chunks.next().value ?? '';
    expect(first.length).toBeGreaterThanOrEqual(65_536);
    expect(first.length).toBeLessThan(66_000);
    expect(state.pulled).toBeLessThan(2000);
    chunks.return();
    expect(state.closed).toBe(true);
  });

  test('give the same text as an array, in chunks of about 64 KB', () => {
    const chunks = [...writeXml(element('dsc', {}, many({ pulled: 0, closed: false })))];
    expect(chunks.slice(0, -1).every(({ length }) => length >= 65_536 && length < 66_000)).toBe(true);
    expect(chunks.join('')).toBe(written(element('dsc', {}, [...many({ pulled: 0, closed: false })])));
  });

  test('hold no text', () => {
    const root = element('ead', {}, [element('dsc', {}, [element('c', {}), 'stray'].values())]);
    expect(() => written(root)).toThrow('The children of /ead/dsc are a lazy list and hold a text');
  });

  test('a path counts what has been pulled', () => {
    const root = element(
      'dsc',
      {},
      [element('head', {}), element('c', {}), element('c', {}, '\u0001')].values(),
    );
    expect(() => written(root)).toThrow('The text of /dsc/c[2] holds the character U+0001');
  });
});

describe('the path in a message', () => {
  const bad = () => element('c', {}, '\u0001');

  test('counts an element among those of its name only, and only where there are several', () => {
    const around = [element('head', {}), element('c', {}), element('head', {})];
    const dsc = (...children: XmlElement[]) => element('dsc', {}, children);
    expect(() => written(dsc(...around, bad(), element('c', {})))).toThrow('The text of /dsc/c[2] holds');
    expect(() => written(dsc(bad(), ...around))).toThrow('The text of /dsc/c[1] holds');
    expect(() => written(dsc(element('head', {}), bad()))).toThrow('The text of /dsc/c holds');
  });

  test('counts no text', () => {
    const mixed = element('p', {}, ['c', element('c', {}, 'Ada'), 'c', bad(), 'c']);
    expect(() => written(mixed)).toThrow('The text of /p/c[2] holds');
    expect(() => written(element('p', {}, ['c', bad()]))).toThrow('The text of /p/c holds');
  });
});

test.each(['', '1a', 'a b', 'a>', '-a', 'a:b:c', ':a', '\u0301a'])('%j is no name', (bad) => {
  expect(() => written(element(bad, {}))).toThrow('cannot be the name of an element');
  expect(() => written(element('c', { [bad]: 'x' }))).toThrow('cannot be the name of an attribute');
});

test('elements in elements 100,000 deep are written without exhausting the stack', () => {
  let tree = element('c', {}, 'deep');
  for (let depth = 1; depth < 100_000; depth++) tree = element('c', {}, ['', tree]);
  expect(written(tree)).toContain(`${'<c>'.repeat(100_000)}deep${'</c>'.repeat(100_000)}`);
});

describe('an element that is shared', () => {
  const name = (text: string) =>
    element('persname', { relator: 'creator' }, [
      element('part', {}, text),
      element('part', {}, ['b', element('lb', {})]),
    ]);

  test('looks as one that is not, wherever and however often it stands', () => {
    const places = (one: XmlElement) =>
      element('ead', {}, [
        ...[one, one, one],
        element('did', {}, [one, one, element('p', {}, ['By ', one, ' and ', one]), element('p', {}, [one])]),
        element('dsc', {}, new Set([element('c', {}, [one, shared(element('c', {}, [one])), one])])),
      ]);
    const one = name('Quill & Heron');
    expect(written(places(shared(one)))).toBe(written(places(one)));
  });

  test('is refused where it stands first, if it holds what XML forbids', () => {
    const bad = shared(name('a\u0001'));
    expect(() => written(element('ead', {}, [element('did', {}, [bad]), bad]))).toThrow(
      'The text of /ead/did/persname/part[1] holds the character U+0001',
    );
  });
});
