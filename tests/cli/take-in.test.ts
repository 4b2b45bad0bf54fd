import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

const EXAMPLE = 'examples/quill-ferry';

test('a finding aid taken in is a catalogue: it is shown, extended by a list, and exported as it came', () => {
  const out = freshFolder();
  expect(kinfonds(['export', EXAMPLE, '--to', 'ead3', '--out', out]).code).toBe(0);
  const folder = join(freshFolder(), 'taken in');
  const taken = kinfonds(['take-in', join(out, 'ead3.xml'), '--into', folder]);
  expect(taken).toMatchObject({ code: 0, err: '' });
  expect(taken.out).toContain('Kept as found');

  expect(kinfonds(['arrange', folder]).out).toContain('QF/2  Correspondence');
  const again = join(freshFolder(), 'out');
  expect(kinfonds(['export', folder, '--to', 'ead3', '--out', again]).code).toBe(0);
  expect(readFileSync(join(again, 'ead3.xml'), 'utf8')).toBe(readFileSync(join(out, 'ead3.xml'), 'utf8'));

  writeFileSync(
    join(folder, 'list.csv'),
    'title,date,kind,series\nA letter found behind the drawer,1931,letter,Correspondence\n',
  );
  const lines = kinfonds(['arrange', folder, '--things']).out.split('\n');
  const at = lines.findIndex((line) => line.includes('A letter found behind the drawer'));
  expect(at).toBeGreaterThan(lines.findIndex((line) => line.includes('QF/2  Correspondence')));
  expect(at).toBeLessThan(lines.findIndex((line) => line.includes('QF/3  ')));
  // Its code would be that of another thing.
  expect(lines[at]).not.toContain('QF/1');
});

test('nothing is taken in where there is a catalogue, and nothing exported into one', () => {
  const out = freshFolder();
  kinfonds(['export', EXAMPLE, '--to', 'ead2002', '--out', out]);
  const folder = freshFolder();
  writeFileSync(join(folder, 'collection.yaml'), 'title: X\n');
  const before = contentsOf(folder);
  expect(kinfonds(['take-in', join(out, 'ead2002.xml'), '--into', folder])).toMatchObject({
    code: 1,
    out: '',
  });
  expect(kinfonds(['export', folder, '--to', 'json', '--out', folder])).toMatchObject({ code: 2, out: '' });
  expect(contentsOf(folder)).toEqual(before);
});
