import { expect, test } from 'vitest';
import { token } from '../../src/export/ead2002/token.ts';
import { hrefOf } from '../../src/export/href.ts';

// XML Schema part 2, 3.2.17: an anyURI is a URI reference of RFC 3986 (2396 then), appendix A.
test.each([
  ['copies/heron 1.tif', 'copies/heron%201.tif'],
  ['a:b#c?d.jpg', 'a%3Ab%23c%3Fd.jpg'],
  ['https://example.org/a?b=1&c=2#d', 'https://example.org/a?b=1&c=2#d'],
  ['https://example.org/50%25/é', 'https://example.org/50%25/%C3%A9'],
  ['https://example.org/50%', 'https://example.org/50%25'],
  ['http://[::1]:80/x', 'http://[::1]:80/x'],
  ['http://[', 'http%3A//%5B'],
  ['http://host:port/', 'http%3A//host%3Aport/'],
  ['http://x/a#b#c', 'http%3A//x/a%23b%23c'],
])('a link to %s', (file, href) => {
  expect(hrefOf(file)).toBe(href);
});

// XML 1.0, 2.3, production [7] Nmtoken.
test.each([
  ['box', 'box'],
  ['oversize  folder ', 'oversize-folder'],
  ['Bündel', 'Bündel'],
  ['Bu\u0308ndel', 'Bündel'],
  ['盒子', '盒子'],
  ['(a/b)', 'a-b'],
  ['📦', undefined],
])('%s as one word', (text, expected) => {
  expect(token(text)).toBe(expected);
});
