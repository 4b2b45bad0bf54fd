import { cpSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { contentsOf, freshFolder, kinfonds } from '../support/kinfonds.ts';

// A copy of its own: the index comes beside the list.
const PAPERS = join(freshFolder(), 'quill-ferry');
beforeAll(() => cpSync('examples/quill-ferry', PAPERS, { recursive: true }));

const find = (...args: string[]) => kinfonds(['find', PAPERS, ...args]);

/** What the outline says of the numbers of a thing, so that they are not copied from what is tested. */
function outlineOf(title: string): { code: string; folder: string; box: string } {
  const lines = kinfonds(['arrange', PAPERS, '--things']).out.split('\n');
  const at = lines.findIndex((line) => line.includes(title));
  const code = /\S+/.exec(lines[at] ?? '')?.[0] ?? '';
  const above = lines.find((line) => line.trim().startsWith(`${code.replace(/\/\d+$/, '')} `)) ?? '';
  const [, folder = '', box = ''] = /\(folders? (\d+)(?:-\d+)?, box (\d+)/.exec(above) ?? [];
  return { code, folder, box };
}

describe('kinfonds find', () => {
  test('says what a thing is, where it lies, and why it was found', () => {
    const { code, folder, box } = outlineOf('price of a steel cable');
    const { out, err, code: exit } = find('steal', 'cabel', 'edmund');
    expect([exit, err]).toEqual([0, '']);
    expect(out.split('\n')[0]).toBe(
      `${code}  Letter from Edmund to Samuel about the price of a steel cable, 1928 October 14`,
    );
    expect(out).toContain(`in folder ${folder}, box ${box}`);
    expect(out).toContain('title: steal → steel, cabel → cable, Edmund');
  });

  test('says who is meant by another form of a name', () => {
    expect(find('lois', 'recipe', 'notebook').out).toMatch(/Mom's recipe notebook.*\n.*\n.*by: Lois Quill/);
    expect(find('grandpa', 'speech').out).toContain('Grandpa Sam = Samuel Quill');
  });

  test('says around which words it was found, and what is restricted', () => {
    expect(find('nitrate').out).toContain(
      'note: nitrate, in “… and of those years, so it may be nitrate, which burns fiercely.',
    );
    expect(find('adoption').out).toContain("restricted: Closed. Ellen's own");
  });

  test('the same from the index as without it', async () => {
    // Until files have rested for a moment the index is stamped anew, since they could change without a trace.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    const index = join(PAPERS, '.kinfonds-find');
    const [first, made] = [find('last', 'crossing', '--json').out, statSync(index).mtimeMs];
    expect(find('last', 'crossing', '--json').out).toBe(first);
    expect(statSync(index).mtimeMs).toBe(made);
  });

  test('more than are shown, and those that lack a word', () => {
    const { out, err } = find('letter', '--most', '3');
    expect(out.match(/^QF\//gm)).toHaveLength(3);
    expect(err).toMatch(/^\d+ things found; the first 3 are shown/);
    const lacking = find('zeppelin', 'bell', '--most', '1');
    expect([lacking.code, lacking.out]).toEqual([0, expect.stringContaining('without: zeppelin')]);
    expect(lacking.err).toContain('Nothing has all that was asked for');
  });

  test('filters, alone and with words', () => {
    const codes = (...args: string[]) => find(...args, '--json', '--most', '999');
    const albums = JSON.parse(codes('--kind', 'album').out);
    expect(albums.hits.map(({ title }: { title: string }) => title).sort()).toEqual([
      "Ada's album of the Norway visit",
      'Ada\'s album, "Home"',
      "Album, Ruth's courting",
    ]);
    const early = JSON.parse(codes('--person', 'Miss Quill', '--to', '1915').out);
    expect(early.hits.map(({ title }: { title: string }) => title)).toEqual(
      expect.arrayContaining([
        'School report for Ada, Landing School, eighth grade',
        'Birth certificate, Ada',
      ]),
    );
    // Its date, "when Ada was small", is no year.
    expect(early.hits.map(({ title }: { title: string }) => title)).not.toContain('Ada with the heifer');
    for (const { years, people } of early.hits) {
      expect(years[0] ?? 0).toBeLessThanOrEqual(1915);
      expect(people).toContain('Ada Quill');
    }
    const { box } = outlineOf('price of a steel cable');
    for (const hit of JSON.parse(codes('letter', '--box', box).out).hits)
      expect(hit.boxes).toContainEqual({ type: 'box', number: box });
  });

  test('nothing: exit 1, the nearest words, what the filters hide', () => {
    const { code, out, err } = find('zzyzzyx');
    expect([code, out, err]).toEqual([
      1,
      '',
      'Nothing found. Fewer words, or another spelling of them, may help.\n',
    ]);
    expect(find('bell', '--kind', 'map').err).toMatch(/Without --kind, .* there would be \d+ things?\./);
    expect(find('zzyzzyx', '--json')).toMatchObject({ code: 1, err: '' });
  });

  test('nothing, for there is no such box or kind: which there are, and no advice on words', () => {
    const boxes = new Set(
      JSON.parse(find('--from', '1', '--most', '999', '--json').out).hits.flatMap(
        ({ boxes }: { boxes: { number: string }[] }) => boxes.map(({ number }) => number),
      ),
    );
    const { code, out, err } = find('--box', '4711');
    expect([code, out]).toEqual([1, '']);
    const last = /^Nothing found: there is no box 4711\. The boxes are 1-(\d+)\.\n$/.exec(err)?.[1];
    expect(boxes).toContain(last);
    expect(find('--kind', 'zork').err).toMatch(
      /^Nothing found: the catalogue has no kind “zork”\. Kinds in it: letters, .* and \d+ more\.\n$/,
    );
    expect(find('--kind', 'snapshott').err).toBe(
      'Nothing found: the catalogue has no kind “snapshott”. Nearest to it: photographs.\n',
    );
    expect(find('--person', 'Zork').err).toBe('Nothing found.\n');
    expect(find('--kind', 'leter', '--most', '1').out).toMatch(/^QF\/\S+ {2}\S/);
  });

  test('the code on the label of a folder: the folder, then what is in it', () => {
    const { code, folder, box } = outlineOf('price of a steel cable');
    const label = code.replace(/\/\d+$/, '');
    const [first = '', place, ...rest] = find(label, '--most', '1000').out.split('\n');
    expect(first.startsWith(`${label}  `)).toBe(true);
    expect(place?.trim()).toBe(`In folder ${folder}, box ${box}`);
    const codes = rest.flatMap((line) => line.match(/^\S+/g) ?? []);
    expect(codes).toContain(code);
    for (const one of codes) expect(one.startsWith(`${label}/`)).toBe(true);
    expect(rest.filter((line) => line.trim() === `in folder ${label}`)).toHaveLength(codes.length);
    const found = JSON.parse(find(label.toLowerCase(), '--json').out);
    expect(found).toMatchObject({ found: codes.length, unit: { referenceCode: label } });
  });

  test('words that are a box point to the filter for it, and only where there is such a box', () => {
    expect(find('box', '1').err).toContain('For what lies in box 1: --box 1');
    expect(find('box', '4711').err).not.toContain('--box 4711');
    expect(find('ferry', 'box').err).not.toContain('For what lies');
  });

  test('JSON has every field, whatever was found', () => {
    const found = JSON.parse(find('bell', '--json').out);
    expect(Object.keys(found)).toEqual(['found', 'unit', 'hits', 'proposals', 'withoutFilters', 'notThere']);
    expect(JSON.parse(find('zzyzzyx', '--json').out)).toEqual({
      found: 0,
      unit: null,
      hits: [],
      proposals: [],
      withoutFilters: null,
      notThere: { box: null, kind: null },
    });
    const fields = [
      'referenceCode',
      'title',
      'dates',
      'years',
      'people',
      'lies',
      'boxes',
      'folder',
      'position',
      'restricted',
      'reasons',
      'lacks',
    ];
    for (const query of ['bell', 'letter', '1918']) {
      for (const hit of JSON.parse(find(query, '--json').out).hits) {
        expect(Object.keys(hit)).toEqual(fields);
        for (const reason of hit.reasons)
          expect(Object.keys(reason)).toEqual(['field', 'typed', 'found', 'within']);
      }
    }
  });
});

describe('which argument is the folder', () => {
  test('in a catalogue folder the first argument is a word, unless it is a catalogue itself', () => {
    const here = kinfonds(['find', 'ferry', 'bell'], { cwd: PAPERS });
    expect(here.out).toBe(find('ferry', 'bell').out);
    expect(kinfonds(['find', '.', 'ferry', 'bell'], { cwd: PAPERS }).out).toBe(here.out);
    // A folder of that name which is no catalogue is no folder to look in.
    mkdirSync(join(PAPERS, 'bell'), { recursive: true });
    expect(kinfonds(['find', 'bell'], { cwd: PAPERS }).out).toContain('The ferry bell');
  });

  test('where neither is a catalogue', () => {
    const empty = freshFolder();
    const { code, out, err } = kinfonds(['find', 'ferry', 'bell'], { cwd: empty });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('neither “ferry” nor the current folder is a catalogue folder');
    mkdirSync(join(empty, 'ferry'));
    const wrong = kinfonds(['find', 'ferry', 'bell'], { cwd: empty });
    expect(wrong.code).toBe(1);
    expect(wrong.err).toContain('collection.yaml');
  });

  test.each([
    [[], 'nothing to look for'],
    [['--from', '1930', '--to', '1920', 'bell'], '--from 1930 is after --to 1920'],
    [['bell', '--from', 'long ago'], 'It is a year'],
    [['bell', '--most', '0'], 'It is a number from 1 on'],
  ])('wrong usage: %j', (args, message) => {
    const { code, out, err } = find(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
});

test('hostile text in the list is shown as text', () => {
  const folder = freshFolder();
  writeFileSync(join(folder, 'collection.yaml'), 'title: T\nprefix: QF\nrepository:\n  name: Quill family\n');
  writeFileSync(join(folder, 'list.csv'), 'title,kind\n"Ferry \u009B31mred \u202Egnol\u202C",letter\n');
  const before = readFileSync(join(folder, 'list.csv'));
  const { out } = kinfonds(['find', folder, 'ferry']);
  expect(out).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E]/);
  expect(readFileSync(join(folder, 'list.csv'))).toEqual(before);
  expect(Object.keys(contentsOf(folder)).sort()).toEqual(['.kinfonds-find', 'collection.yaml', 'list.csv']);
});
