import { describe, expect, it } from 'vitest';
import { quoted } from '../../src/catalogue/quoted.ts';
import { sayCommand } from '../../src/catalogue/say-command.ts';
import { sayCount, sayMoreRows } from '../../src/catalogue/say-count.ts';
import { textTable } from '../../src/catalogue/text-table.ts';

describe('what messages are made of', () => {
  it('counts one thing as one', () => {
    expect([0, 1, 2].map((number) => sayCount(number, 'box', 'boxes'))).toEqual([
      '0 boxes',
      '1 box',
      '2 boxes',
    ]);
    expect([1, 2, 3].map(sayMoreRows)).toEqual(['', ' (and in 1 more row)', ' (and in 2 more rows)']);
  });

  it('names a command as it can be typed, whatever the folder is called', () => {
    expect(sayCommand('arrange', 'my-family', '--settle')).toBe('kinfonds arrange my-family --settle');
    expect(sayCommand('arrange', '../Quill papers')).toBe('kinfonds arrange "../Quill papers"');
    expect(sayCommand('check', '.', '--work')).toBe('kinfonds check --work');
  });

  it('quotes on one line, and no more than is read at a glance', () => {
    expect(quoted(' Ada\nto  Nils ')).toBe('“Ada to Nils”');
    expect(quoted('flood '.repeat(50))).toMatch(/^“(?:flood ){9}flo…”$/);
  });

  it('sets figures to the right, and counts characters, not units of UTF-16', () => {
    expect(
      textTable([
        ['number', 'what'],
        ['7', '📦 box'],
        ['12', 'tube', 'long'],
      ]),
    ).toEqual(['number  what', '     7  📦 box', '    12  tube   long']);
  });
});
