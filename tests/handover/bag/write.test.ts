import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { CatalogueError } from '../../../src/catalogue/finding.ts';
import { type BagEntry, verifyBag, writeBag } from '../../../src/handover/bag/index.ts';
import { contentsOf, freshFolder } from '../../support/kinfonds.ts';
import { times } from '../../support/times.ts';
import { judgeByRfc } from './rfc-validator.ts';

let folder: string;
let bag: string;
beforeEach(() => {
  folder = freshFolder();
  bag = join(folder, 'bag');
});

/** A file to be copied. */
function original(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** What is found where the work is refused; nothing may then stand at the target, nor be left beside it. */
async function refusal(entries: readonly BagEntry[], within?: string): Promise<string[]> {
  const error: unknown = await writeBag(bag, entries, [], { ...(within !== undefined && { within }) }).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (!(error instanceof CatalogueError)) throw new Error(`no clear word, but ${error}`);
  expect(existsSync(bag)).toBe(false);
  return error.findings.map(({ rule, place }) => `${rule} ${place.file}`);
}

describe('packing a bag', () => {
  test('copies and contents, valid to the validator written from the RFC', async () => {
    const entries: BagEntry[] = [
      { path: 'copies/bell.jpg', from: original('bell.jpg', Buffer.from([0, 255, 1])) },
      { path: 'list.csv', content: 'title\nFerry bell\n' },
      { path: 'finding-aid/ead3.xml', content: ['<ead', Buffer.from('>'), 'x\uD83C', '\uDF4E</ead>'] },
      { path: 'empty.txt', content: '' },
    ];
    const info: [string, string][] = [
      ['Source-Organization', 'Quill family'],
      ['Bagging-Date', '2026-05-14'],
    ];
    // 3 + 17 + 15 bytes: "title" and "Ferry bell" with their line ends; <ead>x, an apple of four bytes, </ead>.
    expect(await writeBag(bag, entries, info)).toEqual({ files: 4, bytes: 3 + 17 + 16 });
    expect(judgeByRfc(bag)).toEqual([]);
    expect(await verifyBag(bag)).toMatchObject({ valid: true, findings: [], files: 4, bytes: 36 });
    expect(readdirSync(folder).sort()).toEqual(['bag', 'bell.jpg']);
    expect(readFileSync(join(bag, 'bagit.txt'), 'utf8')).toBe(
      'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
    );
    expect(readFileSync(join(bag, 'bag-info.txt'), 'utf8')).toBe(
      'Source-Organization: Quill family\nBagging-Date: 2026-05-14\nPayload-Oxum: 36.4\n',
    );
    expect(readFileSync(join(bag, 'data/finding-aid/ead3.xml'), 'utf8')).toBe('<ead>x🍎</ead>');
  });

  test('twice, the same bytes, in whatever order the files come', async () => {
    const entries: BagEntry[] = ['b', 'a/z', 'a/é', 'a.b', 'B2', '🍎', '\uFFFD'].map((path) => ({
      path,
      content: path,
    }));
    await writeBag(bag, entries, [['Bagging-Date', '2026-05-14']]);
    const again = join(folder, 'again');
    await writeBag(again, [...entries].reverse(), [['Bagging-Date', '2026-05-14']]);
    expect(contentsOf(again)).toEqual(contentsOf(bag));
    const paths = readFileSync(join(bag, 'manifest-sha512.txt'), 'utf8')
      .trimEnd()
      .split('\n')
      .map((line) => line.slice(130));
    // By the bytes of UTF-8: U+FFFD is EF BF BD, the apple F0 9F 8D 8E; UTF-16 would have them the other way round.
    expect(paths).toEqual([
      'data/B2',
      'data/a.b',
      'data/a/z',
      'data/a/é',
      'data/b',
      'data/\uFFFD',
      'data/🍎',
    ]);
  });

  test('without a payload', async () => {
    expect(await writeBag(bag, [], [])).toEqual({ files: 0, bytes: 0 });
    expect(judgeByRfc(bag)).toEqual([]);
    expect((await verifyBag(bag)).valid).toBe(true);
  });

  test('a copy keeps the day on which its original was last changed', async () => {
    const from = original('bell.jpg', 'x');
    utimesSync(from, 1_000_000_000, 1_000_000_000);
    await writeBag(bag, [{ path: 'bell.jpg', from }], []);
    expect(statSync(join(bag, 'data/bell.jpg')).mtimeMs).toBe(1_000_000_000_000);
  });

  // RFC 8493, 2.2.2: label, colon, blank; lines of no more than 79 characters, folded with blanks before.
  test('a long value of bag-info.txt is folded, and line ends in it become blanks', async () => {
    const value = `The ferry\nand ${'orchard '.repeat(30)}end`;
    await writeBag(
      bag,
      [],
      [
        ['External-Description', value],
        ['Contact-Name', ' '],
        ['Payload-Oxum', '9.9'],
      ],
    );
    const lines = readFileSync(join(bag, 'bag-info.txt'), 'utf8').trimEnd().split('\n');
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(79);
    expect(lines.at(-1)).toBe('Payload-Oxum: 0.0');
    const [first = '', ...more] = lines.slice(0, -1);
    for (const line of more) expect(line).toMatch(/^ {2}\S/);
    const whole = [first, ...more.map((line) => line.trim())].join(' ');
    expect(whole).toBe(`External-Description: ${value.replace('\n', ' ')}`);
  });

  test('any tree of files, valid to the validator written from the RFC', async () => {
    const part = fc.string({
      unit: fc.constantFrom('a', 'b', ' ', '%', '2', '5', 'é', '\n', '\r', '~', '🍎', "'", '*'),
      minLength: 1,
      maxLength: 8,
    });
    const path = fc.array(part, { minLength: 1, maxLength: 3 }).map((parts) => ['p', ...parts].join('/'));
    const content = fc.oneof(fc.string({ unit: 'binary', maxLength: 50 }), fc.uint8Array({ maxLength: 50 }));
    const key = (name: string) => name.normalize('NFD').toUpperCase();
    const files = fc
      .uniqueArray(fc.tuple(path, content), { maxLength: 6, selector: ([name]) => key(name) })
      // A name cannot be both a file and a folder.
      .filter((all) => !all.some(([one]) => all.some(([other]) => key(other).startsWith(`${key(one)}/`))));
    let run = 0;
    await fc.assert(
      fc.asyncProperty(files, async (all) => {
        const target = join(folder, `bag-${run++}`);
        await writeBag(
          target,
          all.map(([name, text]) => ({ path: name, content: text })),
          [],
        );
        expect(judgeByRfc(target)).toEqual([]);
        expect((await verifyBag(target)).valid).toBe(true);
        for (const [name, text] of all)
          expect(readFileSync(join(target, 'data', name))).toEqual(Buffer.from(text as string));
      }),
      { numRuns: times(60) },
    );
  });
});

describe('what is refused', () => {
  test('a target that is there, be it an empty folder', async () => {
    mkdirSync(bag);
    await expect(writeBag(bag, [], [])).rejects.toThrow('A package is never written over another');
    expect(readdirSync(folder)).toEqual(['bag']);
  });

  test('paths that lead out, or are no plain paths', async () => {
    const paths = ['../x', 'a/../../x', '/etc/x', '~/x', 'C:\\x', 'a\\x', './x', 'a//x', 'a/', ''];
    const found = await refusal(paths.map((path) => ({ path, content: 'x' })));
    expect(found).toEqual(paths.map((path) => `bag.path ${path}`));
    expect(readdirSync(folder)).toEqual([]);
  });

  test('paths that on some system would be one', async () => {
    const paths = [
      'Bell.txt',
      'bell.txt',
      'Núñez'.normalize('NFC'),
      'Núñez'.normalize('NFD'),
      'a',
      'a/b',
      'C/d',
      'c/e',
    ];
    const found = await refusal(paths.map((path) => ({ path, content: 'x' })));
    expect(found).toEqual([1, 3, 5, 7].map((at) => `bag.path ${paths[at]}`));
  });

  test('originals that are missing, folders, or out of the catalogue, all said at once', async () => {
    const outside = join(freshFolder(), 'secret.txt');
    writeFileSync(outside, 'secret');
    const link = join(folder, 'link.txt');
    symlinkSync(outside, link);
    const inner = join(folder, 'inner.txt');
    symlinkSync(original('real.txt', 'x'), inner);
    mkdirSync(join(folder, 'sub'));
    const from = (name: string) => ({ path: name, from: join(folder, name) });
    expect(await refusal([from('none.txt'), from('gone.txt')], folder)).toEqual([
      `bag.source-missing ${join(folder, 'none.txt')}`,
      `bag.source-missing ${join(folder, 'gone.txt')}`,
    ]);
    expect((await refusal([from('link.txt'), from('sub'), from('inner.txt')], folder)).sort()).toEqual([
      `bag.source-leads-out ${link}`,
      `bag.source-not-a-file ${join(folder, 'sub')}`,
    ]);
  });

  test.skipIf(process.getuid?.() === 0)('an original that may not be read', async () => {
    const from = original('locked.txt', 'x');
    chmodSync(from, 0);
    expect(await refusal([{ path: 'x', from }])).toEqual([`bag.source-unreadable ${from}`]);
  });

  test('a name of 300 bytes, in words', async () => {
    await expect(writeBag(bag, [{ path: 'n'.repeat(300), content: 'x' }], [])).rejects.toThrow(
      'longer than this disk',
    );
  });
});
