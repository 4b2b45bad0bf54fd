import { describe, expect, test } from 'vitest';
import { readList } from '../../src/intake/list.ts';

const read = (...lines: string[]) => readList(Buffer.from(`${lines.join('\n')}\n`), 'list.csv');
const dittosOf = ({ findings }: ReturnType<typeof read>) =>
  findings.filter(({ rule }) => rule === 'list.ditto');

// Common practice: in lists written by hand, such a mark stands for the cell above it.
describe('a mark for the same as above', () => {
  test.each(['""""', '〃', 'do.', 'Ditto', 'dito', 'dto.', 'idem', '– do. –', '"-""-"', '„', "''"])(
    '%s is read as what stands above',
    (mark) => {
      const list = read('title,kind,date', 'First,letter,1931', `Second,${mark},1932`, `Third,${mark},1933`);
      expect(list.things.map(({ kind }) => kind)).toEqual(['letter', 'letter', 'letter']);
      const [said, ...more] = dittosOf(list);
      expect(more).toEqual([]);
      expect(said).toMatchObject({ weight: 'should', place: { row: 3 } });
      expect(said?.found).toContain('row 4');
      expect(said?.found).toContain('“kind”');
    },
  );

  test('is read in every column but that of the numbers', () => {
    const list = read('number,title,date,quantity', '1,Letter of Ada,1931,3', '"""","""","""",""""');
    expect(list.things.map(({ number, title, quantity }) => [number, title, quantity])).toEqual([
      ['1', 'Letter of Ada', 3],
      ['"', 'Letter of Ada', 3],
    ]);
    expect(list.things[1]?.date?.written).toBe('1931');
  });

  test.each(['do', 'Ida', 'id', 'Idema', 'dot', '-', '–', '12"', '"Ada"', 'ditto mark', 'Dodo', "'", '—'])(
    '%s is none',
    (cell) => {
      const list = read('title,occasion', 'First,Regatta', `Second,"${cell.replaceAll('"', '""')}"`);
      expect(list.things[1]?.occasion).toBe(cell);
      expect(dittosOf(list)).toEqual([]);
    },
  );

  test('with nothing above it stays as it is', () => {
    const list = read('title,occasion', 'First,ditto');
    expect(list.things[0]?.occasion).toBe('ditto');
    expect(dittosOf(list)).toEqual([]);
  });
});
