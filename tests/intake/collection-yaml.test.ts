import { describe, expect, it } from 'vitest';
import { readSettings } from '../../src/intake/collection-yaml.ts';

const read = (text: string) => readSettings(Buffer.from(text), 'collection.yaml');
const SMALL = 'title: Quill family papers\nprefix: QF\nrepository:\n  name: The Ferry House\n';
/** Line and words of every finding, each of which stops the work. */
const troubles = (text: string) => {
  const { settings, findings } = read(text);
  expect(settings).toBeUndefined();
  expect(
    findings.filter(({ weight, place }) => weight !== 'must' || place.file !== 'collection.yaml'),
  ).toEqual([]);
  return findings.map(({ place, found, advice }) => ({ line: place.line, text: `${found} ${advice ?? ''}` }));
};
const expectTroubles = (text: string, expected: readonly (readonly [line: number, ...words: string[]])[]) => {
  const found = troubles(text);
  expect(found.map(({ line }) => line)).toEqual(expected.map(([line]) => line));
  expected.forEach(([, ...words], at) => {
    for (const word of words) expect(found[at]?.text).toContain(word);
  });
};

describe('collection.yaml', () => {
  it('needs no more than a title, a prefix and who keeps it', () => {
    const { settings, findings } = read(SMALL);
    expect(findings).toEqual([]);
    expect(settings).toMatchObject({
      title: 'Quill family papers',
      separator: '/',
      language: 'eng',
      people: [],
    });
  });

  it('takes years as numbers, empty entries as not written, and a byte order mark', () => {
    const { settings, findings } = read(
      `\uFEFF${SMALL}dates: 1902\nhistory:\nnotes:\npeople:\n  - name: Ada\n    born: 1902\n    died:\naccess:\n  statement: Closed.\n  until: 2040\n`,
    );
    expect(findings).toEqual([]);
    expect(settings).toMatchObject({
      dates: '1902',
      notes: [],
      access: { statement: 'Closed.', until: '2040' },
    });
    expect(settings?.people[0]).toMatchObject({ name: 'Ada', born: '1902' });
    expect(settings?.history).toBeUndefined();
  });

  it('may repeat a part of itself', () => {
    expect(read(`${SMALL}custody: &told By Ada.\nprocessing: *told\n`).settings?.processing).toBe('By Ada.');
  });

  it.each([
    ['nothing', ''],
    ['comments', '# title\n'],
    ['a list', '- title\n'],
    ['a text', 'Quill family papers\n'],
  ])('that holds only %s says what it must hold', (_, text) => {
    const { settings, findings } = read(text);
    expect(settings).toBeUndefined();
    expect(findings).toHaveLength(1);
    expect(findings[0]?.advice).toMatch(/title, prefix and repository/);
  });

  it('in another encoding, or binary, is called so', () => {
    expect(
      readSettings(Buffer.from('title: caf\u00E9\n', 'latin1'), 'collection.yaml').findings[0],
    ).toMatchObject({
      rule: 'file.encoding',
      place: { line: 1 },
    });
  });
});

describe('slips in YAML', () => {
  it.each([
    ['a tab', 'title: x\nrepository:\n\tname: y\n', [[3, 'tab', 'blanks']]],
    ['a name twice', `${SMALL}title: again\n`, [[5, '“title”', 'twice']]],
    ['a name twice further in', `${SMALL}people:\n  - name: a\n    name: b\n`, [[7, '“name”', 'twice']]],
    ['a colon in a text', `${SMALL}history: Ada: her life\n`, [[5, 'colon', 'quotation marks']]],
    [
      'an open quotation mark',
      `title: "Quill papers\nprefix: QF\n`,
      [[1, 'quotation mark', 'none closes it']],
    ],
    ['a line that is no entry', `${SMALL}history\n`, [[5, 'no entry', 'name: value']]],
    ['an asterisk', `${SMALL}history: *Ada\n`, [[5, 'asterisk', 'quotation marks']]],
    ['an at sign', `${SMALL}history: @home\n`, [[5, 'sign', 'quotation marks']]],
    ['an exclamation mark', `${SMALL}history: !Ada said\n`, [[5, 'exclamation mark', 'quotation marks']]],
    ['a backslash', `${SMALL}history: "C:\\pictures"\n`, [[5, 'backslash', 'single']]],
    ['two documents', `${SMALL}---\n${SMALL}`, [[5, 'second document']]],
    [
      'several of them',
      'title: x: y\nrepository:\n\tname: y\nhistory: @\n',
      [
        [1, 'colon'],
        [3, 'tab'],
        [4, 'sign'],
      ],
    ],
  ] as const)('%s', (_, text, expected) => expectTroubles(text, expected));

  it('many aliases in aliases end at once, with a clear word', () => {
    const level = (name: string, of: string) => `${name}: &${name} [${Array(10).fill(of).join(', ')}]\n`;
    const bomb = `a: &a [x, x]\n${level('b', '*a')}${level('c', '*b')}${level('d', '*c')}${level('e', '*d')}`;
    const { settings, findings } = read(bomb + SMALL);
    expect(settings).toBeUndefined();
    expect(findings.map(({ rule }) => rule)).toEqual(['yaml.aliases']);
  });

  it('a part that repeats itself, and no end of brackets, end with a clear word', () => {
    expectTroubles(`${SMALL}people: &p\n  - *p\n`, [[6, '“*p”', 'quotation marks']]);
    const { settings, findings } = read(`${SMALL}people: ${'['.repeat(100_000)}`);
    expect(settings).toBeUndefined();
    expect(findings.some(({ weight }) => weight === 'must')).toBe(true);
  });
});

describe('wrong entries', () => {
  it('are all reported, each with its line, its path and what would be accepted', () => {
    expectTroubles(
      [
        'titel: Quill family papers',
        'title: 1950',
        'prefix: "!"',
        'separator: ","',
        'repository:',
        '  name:',
        '  country: us',
        'access: {statment: Closed., until: 2040}',
        'history: [a, b]',
        'notes: one note',
        'people:',
        '  - name: Ada',
        '    typ: person',
        '    type: persn',
        '  - Nils',
        'sort:',
        '  groups: [kinds]',
        '  order: []',
        '  folders: weekly',
        'groups:',
        '  Letters: {acess: Closed.}',
        '__proto__: {x: 1}',
      ].join('\n'),
      [
        [1, '“titel” is not known', 'title'],
        [2, '“title” must be text', '1950', 'quotation marks'],
        [3, '“prefix”', '“!”', 'QF'],
        [4, '“separator”', '“,”', '/ . : - _'],
        [6, '“name” in “repository”', 'missing'],
        [7, '“country”', '“us”', 'US'],
        [8, '“statement” in “access”', 'missing'],
        [8, '“statment” in “access”', 'statement'],
        [9, '“history” must be text', 'list'],
        [10, '“notes” must be a list', 'dash'],
        [13, '“typ” in entry 1 of “people”', 'type'],
        [14, '“type” in entry 1 of “people”', '“persn”', 'corporateBody'],
        [15, 'Entry 2 of “people”', '“Nils”'],
        [17, 'Entry 1 of “groups” in “sort”', '“kinds”', 'kind'],
        [18, '“order” in “sort”', 'empty'],
        [19, '“folders” in “sort”', '“weekly”', 'decade'],
        [21, '“acess” in “Letters” in “groups”', 'access'],
        [22, '“__proto__”'],
      ],
    );
  });

  it('hold no character that XML forbids', () => {
    expectTroubles(`${SMALL}history: "a\\u0001b"\n`, [[5, '“history”', 'no XML document can hold']]);
  });

  it('are dates that cannot be read, wherever they stand', () => {
    const dates =
      'dates: long ago\naccess: {statement: Closed., until: never}\npeople:\n  - name: Ada\n    born: in spring\n    died: 1988\ngroups:\n  Letters:\n    access:\n      statement: Closed.\n      until: when we are gone\n';
    expectTroubles(SMALL + dates, [
      [5, '“long ago”', '“dates”', '1962-05-14'],
      [6, '“never”', '“until” in “access”'],
      [9, '“in spring”', '“born” in entry 1 of “people”'],
      [15, '“when we are gone”', '“until” in “access” in “Letters” in “groups”'],
    ]);
  });

  it('are two people who are written alike', () => {
    expectTroubles(
      `${SMALL}people:\n  - name: Ada Quill\n  - name: Ada Reed\n    also: [Aunt Ada, ada quill]\n`,
      [[7, '“Ada Reed” and “Ada Quill” (line 6)', '“ada quill”']],
    );
  });
});

describe('the end of a restriction', () => {
  const SETTINGS = 'title: T\nprefix: T\nrepository: {name: R}\n';
  const of = (until: string, over = '') =>
    readSettings(
      Buffer.from(`${SETTINGS}${over}access: {statement: Closed., until: "${until}"}\n`),
      'collection.yaml',
    );

  it.each(['unknown', '5/6/60', '5/6/2060'])('%s is not certain, so it stops the work', (until) => {
    expect(of(until).findings).toMatchObject([
      { rule: 'settings.end-uncertain', weight: 'must', place: { line: 4 } },
    ]);
  });

  it('is read by the order of day and month that is set, and may lie ahead', () => {
    expect(of('5/6/2060', 'dateOrder: day-month\nlatestYear: 1990\n').findings).toEqual([]);
  });
});
