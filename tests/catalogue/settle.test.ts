import { chmodSync, mkdirSync, renameSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CatalogueError, type Finding } from '../../src/catalogue/finding.ts';
import { finishSettling } from '../../src/catalogue/finish-settling.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { numbersToCsv } from '../../src/catalogue/numbers-file.ts';
import { writeSettled } from '../../src/catalogue/settle.ts';
import type { Settled } from '../../src/catalogue/settled.ts';
import { JOURNAL_FILE } from '../../src/catalogue/settling-journal.ts';
import { longTest } from '../support/times.ts';
import { built, runAsAnyone } from './own-program.ts';
import {
  afterNoReturn,
  asItIsToBe,
  asItWas,
  KEPT,
  KEPT_NUMBERS,
  NEW_LIST,
  NEW_NUMBERS,
  namesIn,
  OLD_LIST,
  OLD_NUMBERS,
  oldFolder,
  seen,
  settling,
  stoppedWhere,
  textOf,
} from './settle-folder.ts';

const settle = (folder: string, list = NEW_LIST, expected = OLD_LIST) =>
  writeSettled(folder, {
    numbers: numbersToCsv(NEW_NUMBERS),
    list: Buffer.from(list),
    expected: Buffer.from(expected),
  });

async function findingsOf(work: Promise<unknown>): Promise<readonly Finding[]> {
  const error: unknown = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  return error.findings;
}
const rulesOf = async (work: Promise<unknown>) => (await findingsOf(work)).map(({ rule }) => rule);

/** Every file with its content. */
const all = (folder: string) => namesIn(folder).map((name) => [name, textOf(folder, name)]);

describe('settling', () => {
  it('writes both files, and keeps the list as it was', async () => {
    const folder = oldFolder(false);
    await settle(folder);
    expect(await seen(folder)).toEqual(asItIsToBe);
    expect(namesIn(folder)).toEqual(['collection.yaml', KEPT, 'list.csv', 'numbers.csv']);
    expect(textOf(folder, KEPT)).toBe(OLD_LIST);
  });

  it('leaves the list alone where it has all its numbers', async () => {
    const folder = oldFolder(true);
    const { mtimeMs, ino } = statSync(join(folder, 'list.csv'));
    await writeSettled(folder, { numbers: numbersToCsv(NEW_NUMBERS), expected: Buffer.from(OLD_LIST) });
    expect(statSync(join(folder, 'list.csv'))).toMatchObject({ mtimeMs, ino });
    expect((await loadCatalogue(folder)).settled).toEqual(NEW_NUMBERS);
    expect(namesIn(folder)).toEqual(['collection.yaml', 'list.csv', KEPT_NUMBERS, 'numbers.csv']);
  });

  it('keeps the numbers as they were where they change, and never writes over what was kept', async () => {
    const folder = oldFolder(true);
    const write = (rows: readonly Settled[]) =>
      writeSettled(folder, { numbers: numbersToCsv(rows), expected: Buffer.from(OLD_LIST) });
    await write(OLD_NUMBERS);
    expect(namesIn(folder)).toEqual(['collection.yaml', 'list.csv', 'numbers.csv']);
    await write(NEW_NUMBERS);
    expect(textOf(folder, KEPT_NUMBERS)).toBe(numbersToCsv(OLD_NUMBERS));
    await write(OLD_NUMBERS);
    expect(textOf(folder, KEPT_NUMBERS)).toBe(numbersToCsv(OLD_NUMBERS));
    expect(textOf(folder, 'numbers.before-2.csv')).toBe(numbersToCsv(NEW_NUMBERS));
    // What is kept already is not kept twice.
    await write(NEW_NUMBERS);
    expect(namesIn(folder).filter((name) => name.startsWith('numbers.before'))).toEqual([
      'numbers.before-2.csv',
      KEPT_NUMBERS,
    ]);
  });

  it('keeps them as private as they were', async () => {
    const folder = oldFolder(true);
    chmodSync(join(folder, 'numbers.csv'), 0o600);
    chmodSync(join(folder, 'list.csv'), 0o644);
    await writeSettled(folder, { numbers: numbersToCsv(NEW_NUMBERS), expected: Buffer.from(OLD_LIST) });
    expect(statSync(join(folder, KEPT_NUMBERS)).mode & 0o777).toBe(0o600);
  });

  it('never writes over a list that was kept before, and keeps none twice', async () => {
    const folder = oldFolder(false);
    const lists = [OLD_LIST, NEW_LIST, OLD_LIST, `${NEW_LIST}3,A quilt\n`];
    writeFileSync(join(folder, KEPT), 'kept by hand');
    mkdirSync(join(folder, 'list.before-numbers-2.csv'));
    for (const [index, list] of lists.slice(1).entries()) await settle(folder, list, lists[index]);
    expect(namesIn(folder).filter((name) => name.includes('before'))).toEqual([
      'list.before-numbers-2.csv',
      'list.before-numbers-3.csv',
      'list.before-numbers-4.csv',
      KEPT,
    ]);
    expect(textOf(folder, KEPT)).toBe('kept by hand');
    expect(textOf(folder, 'list.before-numbers-3.csv')).toBe(OLD_LIST);
    expect(textOf(folder, 'list.before-numbers-4.csv')).toBe(NEW_LIST);
  });

  it('makes nothing public that is private', async () => {
    const folder = oldFolder(false);
    chmodSync(join(folder, 'list.csv'), 0o600);
    await settle(folder);
    for (const name of ['list.csv', 'numbers.csv', KEPT])
      expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
  });

  it('follows a link to the list', async () => {
    const folder = oldFolder(false);
    const elsewhere = oldFolder(false);
    renameSync(join(folder, 'list.csv'), join(elsewhere, 'the list.csv'));
    symlinkSync(join(elsewhere, 'the list.csv'), join(folder, 'list.csv'));
    await settle(folder);
    expect(textOf(elsewhere, 'the list.csv')).toBe(NEW_LIST);
    expect(await seen(folder)).toEqual(asItIsToBe);
    expect(namesIn(elsewhere)).toEqual(['collection.yaml', 'list.csv', 'the list.csv']);
  });

  it('sweeps away what a crash has left, and nothing else', async () => {
    const folder = oldFolder(false);
    writeFileSync(join(folder, '.kinfonds-0123456789ab.part'), 'left over');
    writeFileSync(join(folder, '.kinfonds-notes.part'), 'of somebody');
    await settle(folder);
    expect(namesIn(folder)).toContain('.kinfonds-notes.part');
    expect(namesIn(folder)).not.toContain('.kinfonds-0123456789ab.part');
  });
});

describe('settling is refused, and every file stays as it was', () => {
  it.each([
    [
      'where the list was changed since it was read',
      (file: string) => writeFileSync(file, `${OLD_LIST}2,b\n`),
    ],
    ['where the list is gone', (file: string) => rmSync(file)],
  ])('%s', async (_, change) => {
    const folder = oldFolder(true);
    change(join(folder, 'list.csv'));
    const files = all(folder);
    expect(await rulesOf(settle(folder))).toEqual(['settle.list-changed']);
    expect(all(folder)).toEqual(files);
  });

  longTest('while another command settles', async () => {
    const folder = stoppedWhere(afterNoReturn);
    const files = all(folder);
    expect(await rulesOf(settle(folder))).toEqual(['settle.at-the-same-time']);
    expect(all(folder)).toEqual(files);
  });

  it.each(['numbers.csv', 'list.csv'])('where one may not write %s', (name) => {
    const folder = oldFolder(true);
    chmodSync(join(folder, name), 0o444);
    const files = all(folder);
    expect(runAsAnyone(settling(folder))).toMatch(new RegExp(`${name}: You are not permitted`));
    expect(all(folder)).toEqual(files);
  });

  it('where a folder stands in place of numbers.csv', async () => {
    const folder = oldFolder(false);
    mkdirSync(join(folder, 'numbers.csv'));
    const names = namesIn(folder);
    expect(await rulesOf(settle(folder))).toEqual(['catalogue.unreadable']);
    expect(namesIn(folder)).toEqual(names);
  });

  it('where the folder may not be written to', () => {
    const folder = oldFolder(true);
    chmodSync(folder, 0o555);
    const files = all(folder);
    expect(runAsAnyone(settling(folder))).toMatch(/You are not permitted/);
    expect(all(folder)).toEqual(files);
    chmodSync(folder, 0o755);
  });
});

describe('bringing it to its end', () => {
  it('does nothing where nothing is unfinished', async () => {
    const folder = oldFolder(true);
    const files = all(folder);
    expect(await finishSettling(folder)).toEqual([]);
    expect(all(folder)).toEqual(files);
  });

  it('twice is as good as once', async () => {
    const folder = stoppedWhere(afterNoReturn);
    expect(await finishSettling(folder)).toEqual([]);
    const files = all(folder);
    expect(await finishSettling(folder)).toEqual([]);
    expect(all(folder)).toEqual(files);
  });

  it('says what was given up', async () => {
    const folder = stoppedWhere(afterNoReturn);
    writeFileSync(join(folder, 'list.csv'), `${OLD_LIST},A quilt\n`);
    const { findings } = await loadCatalogue(folder);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      rule: 'settle.given-up',
      weight: 'should',
      place: { file: 'list.csv' },
    });
    expect(findings[0]?.found).toMatch(/has been changed since\. It was kept/);
    expect((await loadCatalogue(folder)).findings).toEqual([]);
  });

  it('waits where the folder may not be written to', async () => {
    const folder = stoppedWhere(afterNoReturn);
    chmodSync(folder, 0o555);
    const files = all(folder);
    const load = `const { loadCatalogue } = await import(${built('catalogue/load.js')});
      await loadCatalogue(${JSON.stringify(folder)});`;
    expect(runAsAnyone(load)).toMatch(/^CatalogueError: .*cannot be written to, so it cannot be finished/);
    expect(all(folder)).toEqual(files);
    chmodSync(folder, 0o755);
    expect(await seen(folder)).toEqual(asItIsToBe);
  });

  const journal = (staged: string, name = 'list.csv') =>
    JSON.stringify({
      format: 'kinfonds settling',
      version: 1,
      files: [{ name, staged, was: null, becomes: '0'.repeat(64) }],
    });
  it.each([
    ['no JSON', '{'],
    ['nothing', ''],
    ['another version', journal('.kinfonds-0123456789ab.part').replace('1', '2')],
    ['a path that leads elsewhere', journal('../.kinfonds-0123456789ab.part')],
    ['another file', journal('.kinfonds-0123456789ab.part', '../list.csv')],
  ])('refuses a journal that holds %s', async (_, text) => {
    const folder = oldFolder(true);
    writeFileSync(join(folder, JOURNAL_FILE), text);
    const files = all(folder);
    expect(await rulesOf(loadCatalogue(folder))).toEqual(['settle.journal']);
    expect(all(folder)).toEqual(files);
    rmSync(join(folder, JOURNAL_FILE));
    expect(await seen(folder)).toEqual(asItWas(true));
  });
});
