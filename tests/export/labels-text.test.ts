import { expect, test } from 'vitest';
import { cleanText } from '../../src/export/labels/text-breaks.ts';

// UAX #44, Default_Ignorable_Code_Point: what is not seen where a font has no sign for it, which would draw a box.
test('what cannot be seen is not set, and joiners, which shape letters, are', () => {
  expect(cleanText('\u{E01F0}ðљ\uFE0F\u{E0100}a\u034F\u3164b\u0000')).toBe('ðљab');
  expect(cleanText('می\u200Cخواهد')).toBe('می\u200Cخواهد');
});
