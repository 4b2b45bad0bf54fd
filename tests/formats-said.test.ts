import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { FORMAT_NAMES } from '../src/catalogue/format-names.ts';
import { FORMATS } from '../src/export/formats.ts';
import { fullFindingAid } from './support/full-finding-aid.ts';
import { codeIn, rowsUnder } from './support/tables.ts';

const AID = fullFindingAid();
const written = FORMAT_NAMES.map((format) => ({
  format,
  paths: [...FORMATS[format](AID)].map(({ path }) => path),
}));

/** Whether a table that has these names tells of a file, by itself or by the folder that it is in. */
const tells = (names: readonly string[], path: string): boolean =>
  names.some((name) => (name.endsWith('/') ? path.startsWith(name) : path === name));

describe('README', () => {
  const rows = rowsUnder(readFileSync('README.md', 'utf8'), '`--to`').map(([to, what]) => ({
    ...{ to: codeIn(to)[0], names: codeIn(what) },
  }));

  test('has a row for each format', () => {
    expect(
      rows.map(({ to }) => to),
      'The table under `--to` in README.md is to have a row for each of FORMAT_NAMES, in their order',
    ).toEqual([...FORMAT_NAMES]);
  });

  test.each(written)('names the files of $format', ({ format, paths }) => {
    const names = rows.find(({ to }) => to === format)?.names ?? [];
    expect(
      paths.filter((path) => !tells(names, path)),
      `The row of ${format} in the table under \`--to\` in README.md does not name these files`,
    ).toEqual([]);
  });
});

describe('docs/receiving-archive.md', () => {
  const rows = rowsUnder(readFileSync('docs/receiving-archive.md', 'utf8'), 'in `finding-aid/`');
  const names = rows.flatMap(([file]) => codeIn(file));

  test.each(written)('names the files of $format', ({ paths }) => {
    expect(
      paths.filter((path) => !tells(names, path)),
      'The table under `finding-aid/` in docs/receiving-archive.md needs a row that names these files',
    ).toEqual([]);
  });

  test('names none that nothing writes', () => {
    const all = written.flatMap(({ paths }) => paths);
    expect(names.filter((name) => !all.some((path) => tells([name], path)))).toEqual([]);
  });
});
