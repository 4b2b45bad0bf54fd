import { describe, expect, test } from 'vitest';
import { reviewCopies } from '../../src/review/copies.ts';
import { someThing } from '../support/catalogue.ts';

/** The rules that find something in these names. */
function rules(names: readonly string[], unlisted: readonly string[] = []): string[] {
  const things = names.map((name, at) => someThing({ row: at + 2, copies: [name] }));
  const facts = new Map(names.map((path) => [path, { path, bytes: 1 }]));
  return reviewCopies({ things }, facts, unlisted).map(({ rule }) => rule);
}

// Naming rules of Windows for files, from memory.
describe('names that no other system takes', () => {
  test.each([
    ...['copies/a:b.scan', 'copies/what?.scan', 'copies/a*.scan', 'copies/"home".scan', 'copies/<a>.scan'],
    ...[
      'copies/a|b.scan',
      'copies/CON',
      'copies/nul.scan',
      'copies/Com1.scan',
      'lpt9/a.scan',
      'copies/aux.tar.gz',
    ],
    ...[
      'copies/ferry.',
      'copies/box 1 /a.scan',
      'copies/box 1./a.scan',
      'copies/a\tb.scan',
      'copies/a\u200bb.scan',
    ],
    ...['copies/a\u202eb.scan', 'copies/a\x7f.scan'],
  ])('%j', (name) => {
    expect(rules([name])).toEqual(['copies.name-unsafe']);
  });

  test.each([
    ...[
      'copies/console.scan',
      'copies/com.scan',
      'copies/com10.scan',
      'copies/nullah.scan',
      'copies/my con.scan',
    ],
    ...['copies/Kjære farmor.scan', 'copies/a.b.c.scan', 'copies/scan (2) [final] & more; $5 #1 100%.scan'],
    ...["copies/Quill's Landing.scan", 'copies/渡し船.scan', 'copies/ferry .scan', 'copies/-a_b.scan'],
  ])('%j is safe', (name) => {
    expect(rules([name])).toEqual([]);
  });
});

describe('names that are too long', () => {
  test('255 bytes are the most, in each part of the path', () => {
    expect(rules([`copies/${'x'.repeat(250)}.scan`])).toEqual([]);
    expect(rules([`copies/${'x'.repeat(251)}.scan`])).toEqual(['copies.name-too-long']);
    expect(rules([`${'x'.repeat(200)}/${'y'.repeat(200)}.scan`])).toEqual([]);
  });

  test('bytes count, not letters', () => {
    expect(rules([`copies/${'ø'.repeat(125)}.scan`])).toEqual([]);
    expect(rules([`copies/${'ø'.repeat(126)}.scan`])).toEqual(['copies.name-too-long']);
  });
});

// Unicode Standard Annex #15.
describe('accents', () => {
  test('encoded apart from their letters', () => {
    expect(rules(['copies/he\u0301le\u0300ne.scan'])).toEqual(['copies.name-decomposed']);
    expect(rules(['copies/h\u00e9l\u00e8ne.scan'])).toEqual([]);
  });

  test('in both ways, as two files', () => {
    const both = ['copies/h\u00e9l\u00e8ne.scan', 'copies/he\u0301le\u0300ne.scan'];
    expect(rules(both)).toEqual(['copies.name-decomposed', 'copies.names-collide']);
  });
});

describe('names that differ in capitals alone', () => {
  test('of two copies of the list', () => {
    expect(rules(['copies/Ferry.scan', 'copies/ferry.scan'])).toEqual(['copies.names-collide']);
    expect(rules(['copies/FERRY/a.scan', 'copies/ferry/a.scan'])).toEqual(['copies.names-collide']);
    expect(rules(['copies/ferry.scan', 'copies/fery.scan', 'scans/ferry.scan'])).toEqual([]);
  });

  test('of a copy of the list and a file in no row: said once', () => {
    expect(rules(['copies/Ferry.scan'], ['copies/ferry.scan'])).toEqual(['copies.names-collide']);
  });
});
