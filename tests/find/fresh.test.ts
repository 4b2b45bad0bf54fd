import {
  chmodSync,
  copyFileSync,
  existsSync,
  lstatSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { numbersToCsv } from '../../src/catalogue/numbers-file.ts';
import { find, questionOf } from '../../src/find/index.ts';
import { contentsOf, freshFolder } from '../support/kinfonds.ts';
import { longTest } from '../support/times.ts';

const HERE = { version: '1.0.0', today: '2026-11-25', most: 10 };
const INDEX = '.kinfonds-find';

function catalogueWith(...titles: string[]): string {
  const folder = freshFolder();
  const yaml = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: Quill family\n';
  writeFileSync(join(folder, 'collection.yaml'), yaml);
  writeList(folder, ...titles);
  return folder;
}

const writeList = (folder: string, ...titles: string[]) =>
  writeFileSync(
    join(folder, 'list.csv'),
    `title,date,kind\n${titles.map((title) => `${title},1911,letter\n`).join('')}`,
  );

/** A folder whose things are in a finding aid that was taken in, and not in its list. */
async function takenIn(...titles: string[]): Promise<string> {
  const folder = catalogueWith(...titles);
  await writeFindingAid(folder);
  writeList(folder);
  return folder;
}

async function writeFindingAid(folder: string): Promise<void> {
  const aid = arrange(await loadCatalogue(folder, HERE.today), HERE.today);
  writeFileSync(join(folder, 'finding-aid.json'), [...findingAidToJson(aid)].join(''));
}

/** @returns the titles found, and whether an index was made for it */
async function ask(folder: string, words: string, here = HERE): Promise<{ titles: string[]; made: boolean }> {
  let made = false;
  const step = () => {
    made = true;
  };
  const { hits } = await find(folder, questionOf([words]), { ...here, step });
  return { titles: hits.map(({ title }) => title), made };
}

/** Sets the times of a file back to long ago, so that its stamp can be relied on. */
function asOld(file: string): void {
  utimesSync(file, new Date('2020-01-01'), new Date('2020-01-01'));
}

const indexIn = (folder: string) => join(folder, INDEX);

describe('an index beside the catalogue', () => {
  test('is made once and answers from then on', async () => {
    const folder = catalogueWith('The ferry bell');
    expect(await ask(folder, 'bell')).toEqual({ titles: ['The ferry bell'], made: true });
    expect(await ask(folder, 'bell')).toEqual({ titles: ['The ferry bell'], made: false });
    expect(readFileSync(indexIn(folder)).subarray(0, 14).toString()).toBe('kinfonds find\n');
  });

  test('an edited list is never answered from it: other words of the same length, with the time set back', async () => {
    const folder = catalogueWith('The ferry bell');
    const list = join(folder, 'list.csv');
    asOld(list);
    await ask(folder, 'bell');
    for (const [there, gone] of [
      ['oars', 'bell'],
      ['rope', 'oars'],
      ['bell', 'rope'],
    ] as const) {
      writeList(folder, `The ferry ${there}`);
      asOld(list);
      expect(await ask(folder, there)).toEqual({ titles: [`The ferry ${there}`], made: true });
      expect((await ask(folder, gone)).titles).toEqual([]);
    }
  });

  test('nor is one that was put in its place with all its times', async () => {
    const folder = catalogueWith('The ferry bell');
    const other = catalogueWith('The ferry oars');
    for (const one of [folder, other]) asOld(join(one, 'list.csv'));
    await ask(folder, 'bell');
    renameSync(join(other, 'list.csv'), join(folder, 'list.csv'));
    expect(await ask(folder, 'oars')).toEqual({ titles: ['The ferry oars'], made: true });
  });

  test('many edits within one tick of the clock', async () => {
    const folder = catalogueWith('Thing aaaa');
    for (let edit = 0; edit < 30; edit++) {
      const word = String.fromCharCode(97 + (edit % 26)).repeat(4);
      writeList(folder, `Thing ${word}`);
      expect((await ask(folder, word)).titles).toEqual([`Thing ${word}`]);
    }
  });

  test('nor where collection.yaml or numbers.csv, the program or the day is another', async () => {
    const folder = catalogueWith('The ferry bell');
    const again = async (here = HERE) => (await ask(folder, 'bell', here)).made;
    expect(await again()).toBe(true);
    expect(await again()).toBe(false);
    const yaml = join(folder, 'collection.yaml');
    writeFileSync(yaml, `${readFileSync(yaml, 'utf8')}abstract: Letters\n`);
    expect(await again()).toBe(true);
    writeFileSync(join(folder, 'numbers.csv'), numbersToCsv([]));
    expect(await again()).toBe(true);
    expect(await again()).toBe(false);
    expect(await again({ ...HERE, version: '1.0.1' })).toBe(true);
    expect(await again({ ...HERE, today: '2026-11-26' })).toBe(true);
  });

  test('nor where a finding aid that was taken in has changed', async () => {
    const folder = await takenIn('The ferry bell');
    expect((await ask(folder, 'bell')).titles).toEqual(['The ferry bell']);
    const file = join(folder, 'finding-aid.json');
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll('bell', 'oars'));
    expect(await ask(folder, 'oars')).toEqual({ titles: ['The ferry oars'], made: true });
    expect((await ask(folder, 'bell')).titles).toEqual([]);
  });

  test('nor where a list of another kind comes beside it, or the list has a name of its own', async () => {
    const folder = catalogueWith('The ferry bell');
    await ask(folder, 'bell');
    renameSync(join(folder, 'list.csv'), join(folder, 'list.tsv'));
    writeFileSync(join(folder, 'list.tsv'), 'title\tdate\nThe ferry oars\t1911\n');
    expect(await ask(folder, 'oars')).toEqual({ titles: ['The ferry oars'], made: true });
    const yaml = join(folder, 'collection.yaml');
    writeFileSync(yaml, `${readFileSync(yaml, 'utf8')}list: { file: attic.csv }\n`);
    const attic = (word: string) =>
      writeFileSync(join(folder, 'attic.csv'), `title,date\nThe ferry ${word},1911\n`);
    attic('rope');
    expect(await ask(folder, 'rope')).toEqual({ titles: ['The ferry rope'], made: true });
    expect((await ask(folder, 'rope')).made).toBe(false);
    attic('post');
    expect(await ask(folder, 'post')).toEqual({ titles: ['The ferry post'], made: true });
  });

  test('a copy of the folder has other stamps and the same content: the index serves, and is stamped anew', async () => {
    const folder = catalogueWith('The ferry bell');
    await ask(folder, 'bell');
    const copy = freshFolder();
    for (const name of ['list.csv', 'collection.yaml', INDEX])
      copyFileSync(join(folder, name), join(copy, name));
    expect(await ask(copy, 'bell')).toEqual({ titles: ['The ferry bell'], made: false });
    const before = readFileSync(indexIn(copy));
    // Its stamps are taken once the files have been left alone for a while.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    expect(await ask(copy, 'bell')).toEqual({ titles: ['The ferry bell'], made: false });
    const stamped = readFileSync(indexIn(copy));
    expect(stamped.equals(before)).toBe(false);
    expect(await ask(copy, 'bell')).toEqual({ titles: ['The ferry bell'], made: false });
    expect(readFileSync(indexIn(copy)).equals(stamped)).toBe(true);
  });

  test('a catalogue that cannot be read is said to be so, whatever the index holds', async () => {
    const folder = catalogueWith('The ferry bell');
    await ask(folder, 'bell');
    writeFileSync(join(folder, 'collection.yaml'), 'title: [');
    await expect(ask(folder, 'bell')).rejects.toThrow('collection.yaml');
  });
});

describe('a damaged index', () => {
  const whole = { folder: '', bytes: Buffer.alloc(0) };
  const ready = async () => {
    if (whole.folder === '') {
      whole.folder = catalogueWith('The ferry bell', 'The ferry oars', 'Æbler på fergen');
      await ask(whole.folder, 'bell');
      whole.bytes = readFileSync(indexIn(whole.folder));
    }
    return whole;
  };

  test('cut off anywhere, it is made anew', async () => {
    const { folder, bytes } = await ready();
    await fc.assert(
      fc.asyncProperty(fc.nat({ max: bytes.length - 1 }), async (length) => {
        writeFileSync(indexIn(folder), bytes);
        truncateSync(indexIn(folder), length);
        expect((await ask(folder, 'ferry bell')).titles).toEqual(['The ferry bell']);
        expect((await ask(folder, 'ferry bell')).made).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  longTest('with any byte changed, the answer is the same', async () => {
    const { folder, bytes } = await ready();
    await fc.assert(
      fc.asyncProperty(
        fc.nat({ max: bytes.length - 1 }),
        fc.integer({ min: 1, max: 255 }),
        async (at, change) => {
          const damaged = Buffer.from(bytes);
          damaged[at] = (damaged[at] ?? 0) ^ change;
          writeFileSync(indexIn(folder), damaged);
          expect((await ask(folder, 'ferri')).titles).toEqual(['The ferry bell', 'The ferry oars']);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('something else under its name is replaced', async () => {
    const { folder } = await ready();
    for (const content of ['', 'kinfonds find\n', 'kinfonds find\n\xFF\xFF\xFF\xFF', '{}']) {
      writeFileSync(indexIn(folder), content, 'latin1');
      expect(await ask(folder, 'bell')).toEqual({ titles: ['The ferry bell'], made: true });
      expect((await ask(folder, 'bell')).made).toBe(false);
    }
  });
});

describe('the file itself', () => {
  test('whoever may not read the list may not read it there', async () => {
    const folder = catalogueWith('The ferry bell');
    chmodSync(join(folder, 'list.csv'), 0o600);
    await ask(folder, 'bell');
    expect(statSync(indexIn(folder)).mode & 0o777).toBe(0o600);
  });

  test('nor who may not read the settings, or a finding aid that was taken in', async () => {
    for (const name of ['collection.yaml', 'finding-aid.json']) {
      const folder = await takenIn('The ferry bell');
      chmodSync(join(folder, name), 0o600);
      await ask(folder, 'bell');
      expect(statSync(indexIn(folder)).mode & 0o777, name).toBe(0o600);
    }
  });

  test('a link in its place is neither followed nor replaced', async () => {
    const folder = catalogueWith('The ferry bell');
    const elsewhere = join(freshFolder(), 'mine');
    writeFileSync(elsewhere, 'mine');
    symlinkSync(elsewhere, indexIn(folder));
    expect((await ask(folder, 'bell')).titles).toEqual(['The ferry bell']);
    expect(readFileSync(elsewhere, 'utf8')).toBe('mine');
    expect(lstatSync(indexIn(folder)).isSymbolicLink()).toBe(true);
  });

  test('where nothing can be written the answer is the same, and nothing is left behind', async () => {
    const folder = catalogueWith('The ferry bell');
    // A folder in its place cannot be replaced, not even by the superuser, whom permissions do not stop.
    const before = contentsOf(folder);
    const { mkdirSync } = await import('node:fs');
    mkdirSync(indexIn(folder));
    expect((await ask(folder, 'bell')).titles).toEqual(['The ferry bell']);
    expect((await ask(folder, 'bell')).made).toBe(true);
    expect(contentsOf(folder)).toEqual(before);
    expect(existsSync(join(folder, 'list.csv'))).toBe(true);
  });
});
