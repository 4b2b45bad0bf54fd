import { describe, expect, test } from 'vitest';
import { readList } from '../../src/intake/list.ts';

const read = (list: string) => readList(Buffer.from(list), 'list.csv');

describe('the columns that are for the family alone', () => {
  test.each(['stays', 'Stays with us', 'We keep', 'KEEP?', 'Keep'])('%s marks what stays', (heading) => {
    const { things, findings } = read(
      `title,${heading}\nLog,\nRing,x\nCake,no\nHat,"no, I am not sure"\nPin,FALSE\n`,
    );
    expect(findings).toEqual([]);
    expect(things.map(({ stays }) => stays)).toEqual([
      undefined,
      'x',
      undefined,
      'no, I am not sure',
      undefined,
    ]);
    expect(things.flatMap(({ extra }) => extra)).toEqual([]);
  });

  test.each(['family note', 'Private note', 'For us only'])('%s is a note for the family', (heading) => {
    const { things, findings } = read(`title,note,${heading}\nLog,In the loft,Tom wants it back\nRing,,\n`);
    expect(findings).toEqual([]);
    expect(things.map(({ note, familyNote }) => [note, familyNote])).toEqual([
      ['In the loft', 'Tom wants it back'],
      [undefined, undefined],
    ]);
  });

  test('a second column of the same meaning is no common note either', () => {
    const { things } = read('title,family note,For us only,stays,Keep\nLog,One,Two,,x\n');
    expect(things).toMatchObject([{ familyNote: 'One\nTwo', stays: 'x', extra: [] }]);
  });
});
