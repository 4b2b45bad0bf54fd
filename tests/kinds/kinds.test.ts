import { describe, expect, test } from 'vitest';
import { fold } from '../../src/catalogue/fold.ts';
import { KINDS } from '../../src/kinds/kinds.ts';

describe('the table of kinds', () => {
  test('has each word under one kind only', () => {
    const kinds = new Map<string, string[]>();
    for (const { one, many, also } of KINDS) {
      for (const word of new Set([one, many, ...also].map(fold)))
        kinds.set(word, [...(kinds.get(word) ?? []), one]);
    }
    const doubled = [...kinds].filter(([, of]) => of.length > 1);
    expect(
      doubled.map(([word, of]) => `“${word}” stands with ${of.map((one) => `“${one}”`).join(' and ')}`),
      'In src/kinds/kinds.ts a word means one kind: take it out of all rows but one',
    ).toEqual([]);
  });
});
