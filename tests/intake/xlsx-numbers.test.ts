import { describe, expect, it } from 'vitest';
import { listSettings } from '../../src/catalogue/list-settings.ts';
import { withNumbers } from '../../src/intake/number-cells.ts';
import { canTakeNumbers, noNumbersInto, sayNumbersDown } from '../../src/intake/numbers-not-written.ts';

const AS_IT_IS = listSettings.parse({});

describe('numbers for a list as people keep it', () => {
  it('go into a text of one byte a letter without a change to any other byte', () => {
    // E9 is é and 92 is ’ in Windows-1252; 8E is é in Mac Roman (Unicode mapping tables).
    const windows = Buffer.from('no,title\n,The ferry\u0092s caf\u00e9\n', 'latin1');
    const written = Buffer.from(withNumbers(windows, new Map([[2, '1']]))).toString('latin1');
    expect(written).toBe('no,title\n1,The ferry\u0092s caf\u00e9\n');
    const mac = Buffer.from('no,title\n,Un caf\u008e, s\u009frement\n', 'latin1');
    const settings = { ...AS_IT_IS, encoding: 'mac-roman' as const };
    expect(Buffer.from(withNumbers(mac, new Map([[2, '1']]), settings)).toString('latin1')).toBe(
      'no,title\n1,Un caf\u008e, s\u009frement\n',
    );
  });

  it('go below headings that are not first, and headings that collection.yaml explains', () => {
    const list = Buffer.from('Papers of the ferry house,,\nLfd,title,date\n,A letter,1950\n,A map,1951\n');
    const settings = { ...AS_IT_IS, columns: { Lfd: 'number' as const } };
    const written = Buffer.from(
      withNumbers(
        list,
        new Map([
          [3, '1'],
          [4, '2'],
        ]),
        settings,
      ),
    ).toString();
    expect(written).toBe('Papers of the ferry house,,\nLfd,title,date\n1,A letter,1950\n2,A map,1951\n');
  });

  it('go into UTF-16 without a mark, if it stays that', () => {
    const list = Buffer.from('no;title\n;A caf\u00e9 at the ferry\n', 'utf16le');
    expect(Buffer.from(withNumbers(list, new Map([[2, '1']]))).toString('utf16le')).toBe(
      'no;title\n1;A caf\u00e9 at the ferry\n',
    );
  });

  it('are not written into a workbook, and the way out is said', () => {
    expect(['list.csv', 'list.tsv', 'list.xlsx', 'list.ods'].filter(canTakeNumbers)).toEqual(['list.csv']);
    const { weight, found, advice } = noNumbersInto('list.xlsx', ['31', '32', '33']);
    expect(weight).toBe('must');
    expect(found).toMatch(/^3 things have no number.*list\.csv/);
    expect(advice).toMatch(/downwards 31, 32 and so on to 33;.*may replace the empty list\.csv/);
  });

  it.each([
    [['7'], '7'],
    [['7', '8'], '7, 8'],
    [['7', '8', '9', '10'], '7, 8 and so on to 10'],
  ])('%j are said as %s', (numbers, said) => {
    expect(sayNumbersDown(numbers)).toBe(said);
  });
});
