import { describe, expect, it } from 'vitest';
import { INCH } from '../../src/housing/measures.ts';
import type { Form } from '../../src/housing/model.ts';
import { readSizeOf } from '../../src/housing/read-size.ts';

const faceOf = (phrase: string, form: Form | undefined) => {
  const reading = readSizeOf(phrase, form);
  if (reading.kind !== 'size') return reading.kind;
  const { long, short } = reading.size;
  return [Math.round(long), Math.round(short)];
};

// Common practice: tape is described by its width and its running length, and its reel by how far it is across. Only
// the last says how large a box it needs.
describe('the size of what is known to be a tape', () => {
  it.each(['1200 ft', '366 m', '1/4 in', '1/4 in, 1200 ft', '1/4 in x 1200 ft', '1200 ft x 1/4 in'])(
    '%s says nothing of the reel',
    (phrase) => expect(faceOf(phrase, 'tape')).toBe('unknown'),
  );

  it.each(['7 in', '7 in, 1200 ft', '1200 ft, 7 in', '7 in, 1/4 in', '7 in, 1/4 in, 1200 ft'])(
    '%s is that of a reel of 7 in',
    (phrase) => expect(faceOf(phrase, 'tape')).toEqual([Math.round(7 * INCH), Math.round(7 * INCH)]),
  );
});

describe('a long narrow thing', () => {
  // No film and no tape is 4 in wide: 120 in × 4 in, as it is written.
  it.each<Form | undefined>(['textile', 'tape', 'film', undefined])(
    'of 4 in by 10 ft has its two sides (%s)',
    (form) => expect(faceOf('4 in x 10 ft', form)).toEqual([Math.round(120 * INCH), Math.round(4 * INCH)]),
  );

  it('of 16 mm by 10 ft is no film where it is known to be a ribbon', () => {
    expect(faceOf('16 mm x 10 ft', 'textile')).toEqual([Math.round(120 * INCH), 16]);
    expect(readSizeOf('16 mm x 10 ft', undefined)).toMatchObject({ kind: 'size', form: 'film' });
  });
});
