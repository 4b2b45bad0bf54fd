import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

// As README says: 0 when all is well, 1 for findings or invalid input, 2 for wrong usage.

const SETTINGS = `title: Quill family papers
prefix: QF
dates: 1912
creators: [Quill family]
repository: { name: Quill family, address: [Applegarth], country: US }
language: eng
languages: [English]
scope: What the family kept of the ferry.
access: Open.
rights: CC0 1.0 Universal
history: They kept the ferry.
author: Ada Quill
people: [{ name: Quill family, type: family }]
`;
const LIST = 'title,date,kind\nAda to Nils on the flood,1912-04-14,letter\n';

/** A folder with a catalogue, the finding aid and the package made of it, and files that are none of these. */
function table(): string {
  const folder = freshFolder();
  const write = (path: string, text: string) => writeFileSync(join(folder, path), text);
  for (const name of ['good', 'bad', 'empty']) mkdirSync(join(folder, name));
  write('good/collection.yaml', SETTINGS);
  write('good/list.csv', LIST);
  write('bad/collection.yaml', 'title: Quill family papers\nprefix: QF\nrepository: Applegarth\n');
  write('bad/list.csv', LIST);
  write('text.xml', 'Ada to Nils on the flood');
  write('wrong.xml', '<ead xmlns="http://ead3.archivists.org/schema/"><boat/></ead>');
  for (const words of [
    ['export', 'good', '--to', 'ead3', '--out', 'aid'],
    ['hand-over', 'good', '--out', 'package'],
    ['hand-over', 'good', '--out', 'broken'],
  ])
    kinfonds(words, { cwd: folder });
  write('broken/data/added.txt', 'not listed');
  return folder;
}

const FINE = 0;
const FINDINGS = 1;
const USAGE = 2;

const CALLS: readonly [code: number, ...words: string[]][] = [
  [FINE, '--help'],
  [FINE, '--version'],
  [USAGE, 'ferry'],
  [USAGE, '--ferry'],
  [FINE, 'begin', 'new', '--title', 'Quill family papers', '--prefix', 'QF'],
  [FINDINGS, 'begin', 'good', '--title', 'Quill family papers', '--prefix', 'QF'],
  [USAGE, 'begin', 'other', '--from', 'good/list.csv', '--copies', 'good'],
  [FINE, 'arrange', 'good'],
  [FINDINGS, 'arrange', 'bad'],
  [FINDINGS, 'arrange', 'empty'],
  [USAGE, 'arrange', 'good', '--move'],
  [FINE, 'check', 'good', '--work'],
  [FINDINGS, 'check', 'bad'],
  [USAGE, 'check', 'good', '--loudly'],
  [FINE, 'supplies', 'good'],
  [FINDINGS, 'supplies', 'bad'],
  [USAGE, 'supplies', 'good', 'other'],
  [FINE, 'labels', 'good', '--out', 'labels.pdf'],
  [FINDINGS, 'labels', 'bad', '--out', 'labels.pdf'],
  [USAGE, 'labels', 'good', '--out', 'labels.pdf', '--start', '0'],
  [FINE, 'find', 'good', 'flood'],
  [FINDINGS, 'find', 'good', 'zeppelin'],
  [USAGE, 'find', 'good'],
  [FINE, 'export', 'good', '--out', 'again'],
  [FINDINGS, 'export', 'bad', '--out', 'again'],
  [USAGE, 'export', 'good', '--to', 'papyrus'],
  [FINE, 'validate', 'aid/ead3.xml'],
  [FINDINGS, 'validate', 'wrong.xml'],
  [FINDINGS, 'validate', 'aid/ead3.xml', 'nowhere.xml'],
  [USAGE, 'validate'],
  [FINE, 'take-in', 'aid/ead3.xml', '--into', 'taken'],
  [FINDINGS, 'take-in', 'text.xml', '--into', 'taken-text'],
  [USAGE, 'take-in', 'aid/ead3.xml'],
  [FINE, 'compare', 'good', 'good'],
  [FINDINGS, 'compare', 'good', 'nowhere'],
  [USAGE, 'compare', 'good'],
  [FINE, 'hand-over', 'good', '--out', 'package-2'],
  [FINDINGS, 'hand-over', 'bad', '--out', 'package-3'],
  [USAGE, 'hand-over', 'good'],
  [FINE, 'verify', 'package'],
  [FINDINGS, 'verify', 'broken'],
  [USAGE, 'verify', 'package', 'broken', '--twice'],
  [FINE, 'schemas'],
  [USAGE, 'schemas', '--schemas', 'nowhere'],
  [FINE, 'completion', 'bash'],
  [USAGE, 'completion', 'latin'],
];

describe('the exit code', () => {
  const folder = table();
  test.each(CALLS.map(([code, ...words]) => ({ code, words, call: words.join(' ') })))(
    '$code: $call',
    ({ code, words }) => {
      const answer = kinfonds(words, { cwd: folder });
      expect([answer.code, answer.code === code ? '' : answer.out + answer.err]).toEqual([code, '']);
      // What went wrong is said, and on standard error where it is no result.
      if (code === USAGE) expect([answer.out, answer.err]).toEqual(['', expect.stringMatching(/\S/)]);
      if (code === FINDINGS) expect(answer.out + answer.err).toMatch(/\S/);
    },
  );

  test('there is a call of each kind for every command of the help', () => {
    const { out } = kinfonds(['--help']);
    const [, list = ''] = out.split('Commands:\n');
    // A name stands two spaces in; the lines that go on with what it does stand further in.
    const names = [...list.matchAll(/^ {2}([a-z-]+) /gm)].map(([, name = '']) => name);
    expect(names).toContain('hand-over');
    const codes = (name: string) =>
      new Set(CALLS.filter(([, command]) => command === name).map(([code]) => code));
    for (const name of names.filter((one) => one !== 'help')) {
      // Of these nothing can be wrong but how they are called.
      const all = ['schemas', 'completion'].includes(name) ? [FINE, USAGE] : [FINE, FINDINGS, USAGE];
      expect([name, [...codes(name)].sort()]).toEqual([name, all]);
    }
  });
});
