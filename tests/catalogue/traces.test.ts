import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { tracesOf } from '../../src/catalogue/traces.ts';
import { someSettings } from '../support/catalogue.ts';
import { freshFolder } from '../support/kinfonds.ts';

/** A catalogue folder on a shelf of its own, and its traces. */
function shelf() {
  const above = freshFolder();
  const folder = join(above, 'quill-papers');
  mkdirSync(folder);
  const put = (path: string, text: string, when: Date) => {
    const file = join(above, path);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, text);
    utimesSync(file, when, when);
  };
  const traces = () => tracesOf({ folder, listFile: 'list.xlsx', settings: someSettings() });
  return { folder, put, traces };
}

// Noon by the clock on the wall, wherever the test runs.
const noon = (day: number) => new Date(2026, 4, day, 12);

// By the labels that RFC 8493, 2.2.2, reserves.
const info = (day: string, prefix = 'QF', what = 'Quill family papers, 1911-1920: 3 boxes.') =>
  `External-Description: ${what}\nBagging-Date: ${day}\nInternal-Sender-Identifier: ${prefix}\n`;

describe('what earlier commands left', () => {
  test('nothing', async () => {
    const { put, traces } = shelf();
    put('quill-papers/collection.yaml', 'title: Quill family papers\n', noon(3));
    put('quill-papers/list.xlsx', 'x', noon(7));
    // Not the list: another is.
    put('quill-papers/list.csv', 'x', noon(9));
    expect(await traces()).toEqual({
      printed: new Map(),
      changed: { at: noon(7).getTime(), day: '2026-05-07' },
      packages: [],
    });
  });

  test('the last export is as old as the newest file in it, and an empty folder is none', async () => {
    const { put, traces } = shelf();
    put('quill-papers/finding-aid/ead3.xml', 'x', noon(3));
    put('quill-papers/finding-aid/finding-aid.csv', 'x', noon(5));
    expect((await traces()).exported).toEqual({
      folder: 'finding-aid',
      at: noon(5).getTime(),
      day: '2026-05-05',
    });
    const empty = shelf();
    mkdirSync(join(empty.folder, 'finding-aid'));
    expect((await empty.traces()).exported).toBeUndefined();
    const none = shelf();
    none.put('quill-papers/finding-aid', 'a file of that name', noon(3));
    expect((await none.traces()).exported).toBeUndefined();
  });

  test('packages of this catalogue alone, and a title folded over two lines is one', async () => {
    const { put, traces } = shelf();
    put('quill-2025/bag-info.txt', info('2025-12-01'), noon(1));
    put('quill 2026/bag-info.txt', info('2026-05-01', 'QF', 'Quill\n  family papers'), noon(1));
    put('rook/bag-info.txt', info('2026-05-01', 'RF', 'Rook family papers'), noon(1));
    put('orchard/bag-info.txt', info('2026-05-01', 'QF', 'Papers of the orchard'), noon(1));
    put('no-day/bag-info.txt', info('soon'), noon(1));
    put('a file', 'x', noon(1));
    const { packages } = await traces();
    expect(packages.toSorted((one, other) => (one.day < other.day ? -1 : 1))).toEqual([
      { path: '../quill-2025', day: '2025-12-01' },
      { path: '../quill 2026', day: '2026-05-01' },
    ]);
  });

  test('labels as they were printed; a record that is none is said, not passed over', async () => {
    const { put, traces } = shelf();
    put('quill-papers/labels-printed.csv', 'label,text\r\nbox 1,Box 1 | 1913\r\n', noon(1));
    expect((await traces()).printed).toEqual(new Map([['box 1', 'Box 1 | 1913']]));
    put('quill-papers/labels-printed.csv', 'something else\r\n', noon(1));
    await expect(traces()).rejects.toThrow(CatalogueError);
  });
});
