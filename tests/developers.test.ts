import { cpSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { freshFolder } from './support/kinfonds.ts';
import { longSuite } from './support/times.ts';
import { changesIn, make, runIn } from './support/walks.ts';

const PAGE = readFileSync('DEVELOPERS.md', 'utf8');
const CHANGES = changesIn(PAGE);

const COPIED = [
  ...['src', 'xsd', 'tests', 'examples', 'docs', 'README.md', 'package.json', 'package-lock.json'],
  ...['tsconfig.json', 'tsconfig.build.json', 'vitest.config.ts', 'biome.json', 'bundle.mjs', 'bundling.mjs'],
];

/** The quick tests that hold the tables of the walks against what else depends on them. */
const GUARDS = [
  ...['tests/kinds', 'tests/housing/pieces.test.ts', 'tests/housing/box-measures.test.ts'],
  ...['tests/standards/dublin-core-kinds.test.ts', 'tests/intake/sheets-words.test.ts'],
  ...[
    'tests/standards/crosswalk-page.test.ts',
    'tests/formats-said.test.ts',
    'tests/review/rules.test.ts',
    'tests/review/titles.test.ts',
  ],
];

/** The tests that make a page of `docs/` anew where they are told to. */
const PAGES_MADE = ['tests/review/rules.test.ts', 'tests/standards/crosswalk-page.test.ts'];

longSuite('the changes that DEVELOPERS.md walks through', () => {
  const project = freshFolder();
  const kinfonds = (...args: string[]) => runIn(project, join('dist', 'cli', 'main.js'), ...args);

  /** What a command says of a list, in a project without the changes it would say otherwise. */
  function of(list: string, command: string, ...options: string[]): string {
    mkdirSync(join(project, 'quill'), { recursive: true });
    writeFileSync(
      join(project, 'quill', 'collection.yaml'),
      'title: Quill family papers\nprefix: QF\nrepository: { name: Quill family }\n',
    );
    writeFileSync(join(project, 'quill', 'list.csv'), list);
    return kinfonds(command, 'quill', ...options);
  }

  beforeAll(() => {
    for (const path of COPIED) cpSync(path, join(project, path), { recursive: true });
    symlinkSync(resolve('node_modules'), join(project, 'node_modules'), 'junction');
    for (const change of CHANGES) make(project, change);
    const built = runIn(project, 'node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json');
    const bundled = built === '' ? runIn(project, 'bundle.mjs') : built;
    if (bundled !== '') throw new Error(bundled);
  }, 120_000);

  /** Runs tests of the changed project; what they print, where they fail or none is run. */
  function failing(...args: string[]): string {
    const told = runIn(project, 'node_modules/vitest/vitest.mjs', 'run', ...args);
    return /^ended with/m.test(told) || !/Tests +\d+ passed/.test(told) ? told : '';
  }

  test('there are some, each with the name of its file', () => {
    expect(CHANGES.length).toBeGreaterThanOrEqual(5);
    expect(PAGE.match(/^```diff/gm)?.length).toBe(CHANGES.length);
  });

  test('are written as Biome writes them', () => {
    const files = [...new Set(CHANGES.map(({ path }) => path))].filter((path) => path.endsWith('.ts'));
    const told = runIn(project, 'node_modules/@biomejs/biome/bin/biome', 'check', ...files);
    expect(told, 'DEVELOPERS.md is to show these changes as Biome would have them').toContain(
      'No fixes applied',
    );
    expect(told).not.toContain('ended with');
  });

  test('leave the tests of the tables green, once the pages made from them are made anew', () => {
    for (const file of PAGES_MADE) expect(PAGE).toContain(`npx vitest run ${file} -u`);
    expect(failing(...PAGES_MADE, '-u')).toBe('');
    expect(failing(...GUARDS)).toBe('');
    // Of these only what has to do with the formats: the others take long.
    expect(failing('tests/cli/commands.test.ts', '-t', 'wrong usage ends|gives the same bytes')).toBe('');
  }, 120_000);

  test('a kind of material', () => {
    const told = of('title,kind,quantity\nApplegarth regatta ball,Dance cards,2\n', 'arrange', '--things');
    expect(told).toContain('Printed matter');
    expect(told).toContain('2 dance cards');
  });

  test('a rule', () => {
    const list = 'title,kind\nADA TO NILS ON THE FLOOD,letter\nNils to Ada on the QF toll,letter\n';
    const told = of(list, 'check');
    expect(told).toContain('This title is written in capitals only: “ADA TO NILS ON THE FLOOD”');
    expect(told).not.toMatch(/capitals only.*toll/);
  });

  test('a box', () => {
    const told = of('title,kind,size\nThe landing,glass plate,10x12 in\n', 'arrange', '--boxes');
    expect(told).toContain('glass plate box, 10 × 12 in');
  });

  test('a language', () => {
    const told = of('Nimeke,Päiväys,Laji\nKirje Nilsille,1912,letter\n', 'arrange', '--things');
    expect(told).toContain('Kirje Nilsille, 1912');
  });

  test('a format', () => {
    const told = of('title,date\nThe landing,1912\n', 'export', '--to', 'txt', '--out', 'out');
    expect(told).toContain(join('out', 'finding-aid.txt'));
    const written = readFileSync(join(project, 'out', 'finding-aid.txt'), 'utf8');
    expect(written).toMatch(/^QF {2}Quill family papers/);
    expect(written).toContain('The landing, 1912');
  });
});
