import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

const YAML = `title: Quill family papers
prefix: QF
repository: {name: Quill family, address: [Ellersby], country: US}
creators: [Quill family]
people: [{name: Quill family, type: family}]
languages: [English]
scope: Letters of the ferry.
access: Open to everybody.
rights: CC0 1.0 Universal
author: Nora Quill
history: The family kept a ferry.
`;

const LIST = 'title,date,kind\r\nAda to Nils on the flood,1913-04-06,letter\r\nTickets,,\r\n';

function catalogue(list = LIST): string {
  const folder = join(freshFolder(), 'quill papers');
  mkdirSync(folder);
  writeFileSync(join(folder, 'collection.yaml'), YAML);
  writeFileSync(join(folder, 'list.csv'), list);
  return folder;
}

/** What is to be run next, by what is printed. */
const nextIn = (cwd: string) => /^Next: +kinfonds (.*)$/m.exec(kinfonds([], { cwd }).out)?.[1];

describe('kinfonds without a command', () => {
  test('elsewhere prints the help; --json alone is then wrong usage', () => {
    const cwd = freshFolder();
    expect(kinfonds([], { cwd })).toEqual(kinfonds(['--help'], { cwd }));
    expect(kinfonds(['--json'], { cwd })).toMatchObject({ code: 2, out: '' });
    expect(kinfonds(['--help']).out).toContain(
      'Without a command, in a catalogue folder: where things stand',
    );
  });

  test('above a catalogue says where it is', () => {
    const cwd = dirname(catalogue());
    mkdirSync(join(cwd, 'empty'));
    expect(kinfonds([], { cwd })).toMatchObject({ code: 0, err: '' });
    expect(kinfonds([], { cwd }).out).toMatch(/^No catalogue here; there is one in quill papers\/\.\n/);
    for (const name of ['heron', 'rook']) {
      mkdirSync(join(cwd, name));
      writeFileSync(join(cwd, name, 'collection.yaml'), YAML);
    }
    expect(kinfonds([], { cwd }).out).toContain('there are some in heron/, quill papers/ and rook/.');
  });

  test('a mistyped command is still named as such', () => {
    const { code, err } = kinfonds(['arange'], { cwd: catalogue() });
    expect([code, err]).toEqual([2, expect.stringContaining("unknown command 'arange'")]);
  });

  test('a folder in the place of a command is named as one', () => {
    const cwd = catalogue();
    const { code, err } = kinfonds(['quill papers'], { cwd: dirname(cwd) });
    expect([code, err]).toEqual([2, expect.stringContaining('“quill papers” is a folder. Go into it')]);
  });

  test('says where things stand, and changes nothing', () => {
    const cwd = catalogue();
    const before = contentsOf(cwd);
    const { code, out, err } = kinfonds([], { cwd });
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Quill family papers\n');
    expect(out).toMatch(/^list +2 things in list\.csv, 1 without kind, 1 without date$/m);
    expect(out).toMatch(/^numbers +not settled$/m);
    expect(out).toMatch(/^Next: +kinfonds \S/m);
    expect(contentsOf(cwd)).toEqual(before);
  });

  test('what it counts is what check and settling count', () => {
    const cwd = catalogue();
    const { findings } = JSON.parse(kinfonds(['--json'], { cwd }).out);
    const checked: { weight: string }[] = JSON.parse(kinfonds(['check', '--json'], { cwd }).out);
    for (const [weight, count] of Object.entries(findings))
      expect([weight, count]).toEqual([weight, checked.filter((one) => one.weight === weight).length]);
    const settling = kinfonds(['arrange', '--settle'], { cwd }).out;
    const { list, shelf, numbers } = JSON.parse(kinfonds(['--json'], { cwd }).out);
    expect(numbers).toEqual({ settled: 2, notSettled: 0, notListed: 0 });
    expect(settling).toContain(`Settled: ${list.things} things in ${shelf.folders} folder`);
  });

  test('each step that it names leads to the next, up to the last', () => {
    const cwd = catalogue('title,date,kind\r\nAda to Nils on the flood,1913-04-06,letter\r\n');
    const taken: string[] = [];
    for (let step = nextIn(cwd); step !== undefined && taken.length < 9; step = nextIn(cwd)) {
      taken.push(step);
      // A finding is answered by its owner, not by the program.
      if (step === 'check' || step === 'find WORDS') break;
      const words = [...step.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);
      expect([step, kinfonds(words, { cwd }).code]).toEqual([step, 0]);
    }
    expect(taken).toEqual(['arrange --settle', 'labels --out labels.pdf', 'export', 'find WORDS']);
  });

  test('an empty list is where everybody begins; what is broken is said as ever', () => {
    const empty = kinfonds([], { cwd: catalogue('title,date\r\n') });
    expect(empty).toMatchObject({ code: 0, err: '' });
    expect(empty.out).toMatch(/^Next: +kinfonds begin --preview$/m);
    const json = JSON.parse(kinfonds(['--json'], { cwd: catalogue('title,date\r\n') }).out);
    expect(json).toMatchObject({ list: { things: 0 }, next: { command: 'kinfonds begin --preview' } });
    const broken = catalogue();
    writeFileSync(join(broken, 'collection.yaml'), 'title: Quill family papers\n');
    const { code, out, err } = kinfonds([], { cwd: broken });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('collection.yaml');
  });
});
