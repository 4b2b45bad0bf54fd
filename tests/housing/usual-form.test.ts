import { describe, expect, test } from 'vitest';
import { readSizeOf } from '../../src/housing/read-size.ts';
import { sizeFindings } from '../../src/housing/size-findings.ts';
import { usualOf } from '../../src/housing/usual-form.ts';
import { someThing } from '../support/catalogue.ts';

// English: who writes "letters" and no number has more than one of them; who writes "dress" or "glass" has one.
describe('whether a kind says that there are several', () => {
  test.each(['letters', 'ledgers', 'ambrotypes', 'teapots', 'bundle of letters', 'old letters, torn'])(
    '%s',
    (kind) => expect(usualOf(kind)?.plural).toBe(true),
  );

  test.each(['letter', 'ledger', 'ambrotype', 'teapot', 'dress', 'old brown ledger', 'map with stains'])(
    '%s does not',
    (kind) => expect(usualOf(kind)?.plural).toBe(false),
  );

  test('of what nobody knows nothing is said', () => expect(usualOf('punt pole')).toBeUndefined());
});

// 78, 45 and 33 are speeds of records. On paper they are figures and no more.
describe('figures that are the name of a record', () => {
  test.each(['78', '45s', '33'])('%s names the size of a disc only', (figures) => {
    expect(readSizeOf(figures, 'disc')).toMatchObject({ kind: 'size', form: 'disc' });
    expect(readSizeOf(figures, undefined)).toMatchObject({ kind: 'size', form: 'disc' });
    for (const form of ['sheet', 'photograph', 'textile'] as const)
      expect(readSizeOf(figures, form)).not.toMatchObject({ form: 'disc' });
  });
});

describe('what is said of a size that is none', () => {
  const adviceOn = (size: string) =>
    sizeFindings([someThing({ row: 2, kind: 'photograph', size })]).map(({ advice }) => advice)[0];

  test('asks for the name that was nearly written, and for none where nothing is near', () => {
    expect(adviceOn('cabnet card')).toBe('Is “cabinet card” meant?');
    expect(adviceOn('as it came from the ferry')).toContain('Leave it blank where it is not known.');
    expect(adviceOn('as it came from the ferry')).not.toContain('meant?');
  });

  test('names one row alone without a word of others', () => {
    const [finding] = sizeFindings([someThing({ row: 2, kind: 'map', size: '0 x 5 in' })]);
    expect(finding?.found).toMatch(/^“0 x 5 in” cannot be a size\. /);
    const [unlikely] = sizeFindings([someThing({ row: 2, kind: 'map', size: '90 x 5 m' })]);
    expect(unlikely?.found).toMatch(/^“90 x 5 m” is hardly a size\. .+ is longer than 5 m\./);
  });

  // A quilt has no size of paper; the names of beds are common practice.
  test('asks width × height of a textile, and offers no name of paper', () => {
    const of = (kind: string, size: string) => sizeFindings([someThing({ row: 2, kind, size })]);
    expect(of('quilt', 'dubble dem')[0]?.advice).toBe(
      'Write width × height, such as 240 × 200 cm. Leave it blank where it is not known.',
    );
    expect(of('quilt', 'doubel bed')[0]?.advice).toBe('Is “double bed” meant?');
    expect(of('map', 'dubble demy')[0]?.advice).toBe('Is “double demy” meant?');
    for (const size of ['double bed', 'king size', 'single']) {
      expect(of('quilt', size)).toEqual([]);
      expect(readSizeOf(size, 'textile')).toMatchObject({ kind: 'size', form: 'textile' });
    }
    expect(readSizeOf('king size', 'sheet').kind).toBe('unknown');
  });
});
