import type { Variant } from './broken-variants.ts';
import { swap } from './change-text.ts';

/** Samples made into files that are no well-formed XML any more. */
export const ILL_FORMED: readonly Variant[] = [
  { name: 'end tags crossed', sample: 'EAD3test.xml', change: swap('</did>', '</unittitle></did>') },
  { name: 'end tag forgotten', sample: 'mss060.xml', change: swap('</p>', '') },
  { name: 'cut off in the middle', sample: 'mc00042.xml', change: (text) => text.slice(0, text.length / 2) },
  { name: 'a bare ampersand', sample: 'mss060.xml', change: swap('Shenehon papers', 'Shenehon & Shenehon') },
  { name: 'a bare less-than sign', sample: 'EAD3test.xml', change: swap('>Diaries<', '>1 < 2<') },
  {
    name: 'an attribute without quotation marks',
    sample: 'EAD3test.xml',
    change: swap('level="series"', 'level=series'),
  },
  {
    name: 'an attribute twice',
    sample: 'EAD3test.xml',
    change: swap('level="series"', 'level="series" level="series"'),
  },
  { name: 'an entity that is not defined', sample: 'naa213.xml', change: swap('</p>', '&nbsp;</p>') },
  { name: 'a control character', sample: 'EAD3test.xml', change: swap('Diaries', 'Di\u0007aries') },
  { name: 'a second root', sample: 'EAD3test.xml', change: swap(/$/, '\n<ead/>') },
  {
    name: 'a comment with two hyphens',
    sample: 'EAD3test.xml',
    change: swap('<!-- issue 507 -->', '<!-- issue -- 507 -->'),
  },
  { name: 'something before the declaration', sample: 'mss060.xml', change: swap('<?xml', '\n<?xml') },
];
