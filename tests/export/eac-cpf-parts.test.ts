import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Agent } from '../../src/catalogue/agent.ts';
import { addressOf } from '../../src/export/eac-cpf/address.ts';
import { fileNames } from '../../src/export/file-names.ts';
import { ADA, aidWith, all, texts, treeOf } from '../support/eac-cpf-tree.ts';
import { textOf } from '../support/xml-tree.ts';

describe('names', () => {
  const partsOf = (agent: Agent) =>
    all(treeOf(agent), 'nameEntry').map((entry) =>
      all(entry, 'part').map((part) => [part.attributes.localType, textOf(part)]),
    );
  const nameParts: Agent['nameParts'] = [
    { type: 'surname', text: 'Quill' },
    { type: 'forename', text: 'Ada' },
  ];

  test.each([
    ['Quill, Ada', []],
    ['Quill, Ada, 1902-1988', [['dates', '1902-1988']]],
    ['Quill, Ada, approximately 1902-', [['dates', 'approximately 1902-']]],
    ['Quill, Ada, of the ferry', [[undefined, 'of the ferry']]],
  ])('the heading %s is taken apart, and its parts give it back', (authorizedForm, more) => {
    const [heading, ...others] = partsOf({ ...ADA, authorizedForm, nameParts });
    expect(heading).toEqual([['surname', 'Quill'], ['forename', 'Ada'], ...more]);
    expect(heading?.map(([, text]) => text).join(', ')).toBe(authorizedForm);
    expect(others).toEqual([[[undefined, 'Ada Quill']]]);
  });

  test.each(['Quill, Adam', 'Miss Quill', 'Quill, Ada, '])(
    'the heading %s, which its parts do not give, stays whole beside them',
    (authorizedForm) => {
      expect(partsOf({ ...ADA, authorizedForm, nameParts }).slice(0, 2)).toEqual([
        [[undefined, authorizedForm]],
        [
          ['surname', 'Quill'],
          ['forename', 'Ada'],
        ],
      ]);
    },
  );

  test('none is written twice', () => {
    const agent = { ...ADA, authorizedForm: 'Ada Quill', variants: ['Ada Quill', 'Ada', 'Ada'] };
    expect(partsOf(agent)).toEqual([[[undefined, 'Ada Quill']], [[undefined, 'Ada']]]);
  });
});

describe('dates of existence', () => {
  const lifeOf = (birth?: string, death?: string) => {
    const tree = treeOf({ ...ADA, ...(birth && { birth }), ...(death && { death }) });
    return ['fromDate', 'toDate'].map((name) => {
      const [end] = all(tree, name);
      return end && { ...end.attributes, text: textOf(end) };
    });
  };

  // Of each, what lies within the years, months and days that EAD's date attributes allow; ISO 8601-2, level 1.
  test.each([
    ['1902-05-14', { standardDate: '1902-05-14', text: '1902 May 14' }],
    ['1878~', { certainty: 'approximate', standardDate: '1878', text: 'circa 1878' }],
    ['186X', { notBefore: '1860', notAfter: '1869', text: '1860s' }],
    ['[1892,1893]', { notBefore: '1892', notAfter: '1893', text: '1892 or 1893' }],
    ['{1892,1895}', { notBefore: '1892', notAfter: '1895', text: '1892, 1895' }],
    ['1861/1863-05', { notBefore: '1861', notAfter: '1863-05', text: '1861-1863 May' }],
    ['1861/..', { notBefore: '1861', text: '1861-ongoing' }],
    ['../1861', { notAfter: '1861', text: 'until 1861' }],
    ['-0043', { text: '44 BC' }],
    ['when the river froze', { text: 'when the river froze' }],
  ])('born %s', (edtf, expected) => {
    expect(lifeOf(edtf)).toEqual([expected, undefined]);
    expect(lifeOf(undefined, edtf)).toEqual([undefined, expected]);
  });

  test('from and to stand together', () => {
    expect(lifeOf('1902', '1988')).toMatchObject([{ standardDate: '1902' }, { standardDate: '1988' }]);
  });
});

describe('file names', () => {
  test.each([
    [
      ['ada-quill', 'Ada-Quill', 'ADA-QUILL'],
      ['ada-quill', 'Ada-Quill-2', 'ADA-QUILL-3'],
    ],
    [
      ['a', 'a-2', 'A'],
      ['a', 'a-2', 'A-3'],
    ],
    [
      ['con', 'Nul.x', 'aux', 'console', 'com1'],
      ['con_', 'Nul_.x', 'aux_', 'console', 'com1_'],
    ],
  ])('%j become %j', (ids, names) => {
    expect(ids.map(fileNames())).toEqual(names);
  });

  test('are short, safe on any system and unique when case is ignored', () => {
    const id = fc.stringMatching(/^[A-Za-z_][A-Za-z0-9_.-]*$/, { maxLength: 300 });
    fc.assert(
      fc.property(
        fc.array(fc.oneof(id, fc.constantFrom('a', 'A', 'a-2', 'con', 'CON')), { maxLength: 20 }),
        (ids) => {
          const names = ids.map(fileNames());
          expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(ids.length);
          for (const name of names) expect(name).toMatch(/^[A-Za-z_][A-Za-z0-9_.-]{0,110}$/);
        },
      ),
    );
  });
});

// Source: RFC 3986.
test.each([
  ['https://example.org/n79?a=1&b=2#c', 'https://example.org/n79?a=1&b=2#c'],
  ['https://example.org/Åse %zz', 'https://example.org/%C3%85se%20%25zz'],
  ['http://u@host:80', 'http://u@host:80'],
  ['http://[::1]/', undefined],
  ['http://host:port/', undefined],
  ['http://a/#b#c', undefined],
  ['n79-12345', undefined],
  ['//example.org/', undefined],
])('the address %s is %s', (text, address) => {
  expect(addressOf(text)).toBe(address);
});

test('an address of the rights that no link can hold is told in words', () => {
  const aid = aidWith([ADA]);
  const rights = [{ citation: 'CC0', address: 'see the noticeboard', statement: 'Free.' }];
  const tree = treeOf(ADA, { ...aid, control: { ...aid.control, rights } });
  const [declaration] = all(tree, 'rightsDeclaration');
  expect(declaration && texts(declaration, 'p')).toEqual(['Free.', 'see the noticeboard']);
  expect(all(tree, 'reference').at(-1)?.attributes).toEqual({});
});
