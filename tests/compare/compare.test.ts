import { describe, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { compareFindingAids, isEmpty } from '../../src/compare/index.ts';
import { aid, day, letters, unit } from './finding-aids.ts';

// What is to come out of each comparison was worked out by hand.

const series = (id: string, title: string, children: Parameters<typeof aid>[0]) =>
  unit(id, title, { level: 'series' }, children);

/** A comparison by titles: what came, went, moved, and the fields of what changed. */
function brief(a: FindingAid, b: FindingAid, idsStay?: boolean) {
  const { added, removed, moved, changed } = compareFindingAids(
    a,
    b,
    idsStay === undefined ? {} : { idsStay },
  );
  return {
    added: added.map(({ unit: { title } }) => title),
    removed: removed.map(({ unit: { title } }) => title),
    moved: moved.map(({ now: { title } }) => title),
    changed: Object.fromEntries(
      changed.map(({ was, fields }) => [was.title, fields.map(({ field }) => field)]),
    ),
  };
}

const nothing = { added: [], removed: [], moved: [], changed: {} };

describe('which unit is which', () => {
  test('a row put in shifts all codes behind it and changes nothing else', () => {
    const a = letters('Apple harvest', 'Bell of the ferry', 'Cable');
    const b = letters('Apple harvest', 'Anchor', 'Bell of the ferry', 'Cable');
    const expected = {
      ...nothing,
      added: ['Anchor'],
      changed: { 'Bell of the ferry': ['referenceCode'], Cable: ['referenceCode'] },
    };
    expect(brief(a, b)).toEqual(expected);
    expect(brief(a, b, false)).toEqual(expected);
  });

  test('where ids stay, another title is a change; where they are mere places, another thing', () => {
    const [a, b] = [letters('Apple harvest', 'Bell'), letters('Apple harvest', 'Cable')];
    expect(brief(a, b)).toEqual({ ...nothing, changed: { Bell: ['title'] } });
    expect(brief(a, b, false)).toEqual({ ...nothing, added: ['Cable'], removed: ['Bell'] });
  });

  test('by number, wherever it went and whatever its code', () => {
    const a = aid([
      series('s1', 'Letters', [unit('u1', 'Letter from Ada', { number: '7', ...day('1911-05-02') })]),
      series('s2', 'Diaries', [unit('u2', 'Diary of Ada', { number: '8' })]),
    ]);
    const b = aid([
      series('s1', 'Letters', []),
      series('s2', 'Diaries', [
        unit('u1', 'Diary of Ada', { number: '8' }),
        unit('u2', 'Travel letter from Ada', { number: '7', ...day('1911-05-02') }),
      ]),
    ]);
    expect(brief(a, b)).toEqual({
      ...nothing,
      moved: ['Travel letter from Ada'],
      changed: { 'Letter from Ada': ['title'] },
    });
  });

  test('a number that two people gave to different things makes them no one thing', () => {
    const common = unit('u1', 'Letter from Ada', { number: '1' });
    const a = aid([common, unit('u2', 'Ferry bell', { number: '2' })]);
    const b = aid([common, unit('u9', 'Orchard account book', { number: '2' })]);
    expect(brief(a, b)).toEqual({ ...nothing, added: ['Orchard account book'], removed: ['Ferry bell'] });
  });

  describe('a thing that was described anew', () => {
    const kind = (term: string) => ({ accessPoints: [{ type: 'genre', term }] });
    const thing = (id: string, number: string, title: string, date: string, term: string) =>
      unit(id, title, { number, ...day(date), ...kind(term) });
    const before = thing('u24', '24', 'Telegram on the birth of Mae Rook', '1940-02-02', 'telegrams');
    const others = ['Ferry bell', 'Anchor', 'Orchard map'].map((title, at) =>
      unit(`o${at}`, title, { number: `${at + 1}` }),
    );
    const both = (now: ReturnType<typeof unit>, rest = others) =>
      brief(aid([...others, before]), aid([...rest, now]));

    test.each([
      ['of the same date', thing('v', '24', 'Wire to say it is a girl', '1940-02-02', 'messages')],
      ['of the same kind', thing('v', '24', 'Wire to say it is a girl', '1941-03', 'telegrams')],
      ['of a like title', thing('v', '24', 'Telegram on the birth of Tom Rook', '1941-03', 'messages')],
    ])('is known by its number, being %s', (_, now) => {
      const { changed, ...rest } = both(now);
      expect(rest).toEqual({ added: [], removed: [], moved: [] });
      expect(Object.keys(changed)).toEqual(['Telegram on the birth of Mae Rook']);
    });

    test('is another thing where title, date and kind are all others', () => {
      const now = thing('v', '24', 'Wire to say it is a girl', '1941-03', 'messages');
      expect(both(now)).toEqual({
        ...nothing,
        added: ['Wire to say it is a girl'],
        removed: ['Telegram on the birth of Mae Rook'],
      });
    });

    test('is another thing where two people count different things, and only the kind is the same', () => {
      const now = thing('v', '24', 'Wire to say it is a girl', '1941-03', 'telegrams');
      const hers = ['Plum jam', 'Press house', 'Cradle'].map((title, at) =>
        unit(`p${at}`, title, { number: `${at + 1}` }),
      );
      const { added, removed, changed } = both(now, hers);
      expect([added.length, removed.length, changed]).toEqual([4, 4, {}]);
    });

    test('is another thing where its own number was given to another, and it has a new one', () => {
      const now = thing('v', '24', 'Wire to say it is a girl', '1941-03', 'telegrams');
      const renumbered = { ...before, otherIdentifiers: [{ type: 'number in the list', value: '25' }] };
      const { changed } = both(now, [...others, renumbered]);
      expect(changed['Telegram on the birth of Mae Rook'] ?? []).not.toContain('title');
    });
  });

  test('a folder with the code it had is the same one, though half of what lay in it went and its title followed', () => {
    const [book, recipe] = [
      unit('b', 'Cookery book of Solveig', { number: '31', referenceCode: 'HF/7/1/1' }),
      unit('r', 'Recipe for plum jam', { number: '32' }),
    ];
    const file = (id: string, code: string, title: string, children: Parameters<typeof aid>[0]) =>
      unit(id, title, { level: 'file', referenceCode: code }, children);
    // An id that was given anew to what is plainly the same: ids do not hold.
    const [bell, sameBell] = [unit('x1', 'Ferry bell'), unit('x2', 'Ferry bell')];
    const a = aid([bell, file('f1', 'HF/7/1', 'Cookery book and recipe', [book, recipe])]);
    const b = aid([
      sameBell,
      file('g1', 'HF/7/1', 'Volume', [book]),
      file('g2', 'HF/7/2', 'Recipe', [recipe]),
    ]);
    expect(brief(a, b)).toEqual({
      ...nothing,
      added: ['Recipe'],
      moved: ['Recipe for plum jam'],
      changed: { 'Cookery book and recipe': ['title'] },
    });
  });

  test('of two that look alike, the one with the other number went', () => {
    const card = (id: string, number: string) => unit(id, 'Postcard', { number, ...day('1911') });
    const a = aid([card('u1', '1'), card('u2', '2')]);
    const b = aid([card('u1', '2'), card('u2', '3')]);
    const { added, removed } = compareFindingAids(a, b);
    expect(removed.map(({ unit: { id } }) => id)).toEqual(['u1']);
    expect(added.map(({ unit: { id } }) => id)).toEqual(['u2']);
  });

  test('without a number, what says the same elsewhere has moved', () => {
    const letter = (id: string) =>
      unit(id, 'Letter from Ada', { ...day('1911-05-02'), scopeAndContent: 'The flood.' });
    const a = aid([series('s1', 'Letters', [letter('x1')]), series('s2', 'Family', [])]);
    const b = aid([series('s1', 'Letters', []), series('s2', 'Family', [letter('x9')])]);
    expect(brief(a, b)).toEqual({ ...nothing, moved: ['Letter from Ada'] });
  });

  test('a series by what is in it, though its title and its place are others', () => {
    const parts = (at: number) => ['Apples', 'Bell', 'Cable'].map((title, n) => unit(`s${at}-${n}`, title));
    const a = aid([series('s1', 'Letters', parts(1)), series('s2', 'Diaries', [])]);
    const b = aid([series('s1', 'Diaries', []), series('s2', 'Correspondence', parts(2))]);
    const { moved, ...rest } = brief(a, b);
    expect(rest).toEqual({ ...nothing, moved: undefined, changed: { Letters: ['title'] } });
    // Of two that changed places, one went round the other: either may be said to have moved.
    expect(moved).toHaveLength(1);
  });

  test('by likeness: a date that was corrected, a word that was mended', () => {
    const a = aid([
      unit('u1', 'Letter from Anders about the cough of their mother', day('1912-02-04')),
      unit('u2', 'Ferry licence for the landing', day('1898-03-01')),
      unit('u3', 'Recipe'),
    ]);
    const b = aid([
      unit('v0', 'Recipe'),
      unit('v1', 'Letter from Anders about the illness of their mother', day('1912-02-04')),
      unit('v2', 'Ferry licence for the landing', day('1899-03-01')),
    ]);
    expect(brief(a, b)).toEqual({
      ...nothing,
      moved: ['Recipe'],
      changed: {
        'Letter from Anders about the cough of their mother': ['title'],
        'Ferry licence for the landing': ['dates'],
      },
    });
  });

  test('the fewest that changed places are said to have', () => {
    const a = letters('Anchor', 'Bell', 'Cable', 'Dory');
    const b = letters('Dory', 'Anchor', 'Bell', 'Cable');
    const { moved } = compareFindingAids(a, b);
    expect(moved).toMatchObject([
      { now: { title: 'Dory' }, from: { id: 'QF' }, to: { id: 'QF' }, reordered: true },
    ]);
  });

  test('what stands below a unit that moved has not moved itself', () => {
    const file = series('f', 'Flood of 1913', [unit('i1', 'Letter'), unit('i2', 'Photograph')]);
    const a = aid([series('s1', 'Letters', [file]), series('s2', 'Events', [])]);
    const b = aid([series('s1', 'Letters', []), series('s2', 'Events', [file])]);
    expect(brief(a, b)).toEqual({ ...nothing, moved: ['Flood of 1913'] });
  });

  test('a chain deeper than calls may go', () => {
    let chain = unit('c0', 'End');
    for (let at = 1; at < 20_000; at++) chain = { ...unit(`c${at}`, `Link ${at}`), children: [chain] };
    const one = { ...aid([]), collection: { ...aid([]).collection, children: [chain] } };
    const other = { ...one, collection: { ...one.collection, title: 'Quill papers' } };
    expect(brief(one, other)).toEqual({ ...nothing, changed: { 'Quill family papers': ['title'] } });
  });
});

describe('what is said of it', () => {
  const changes = (was: Record<string, unknown>, now: Record<string, unknown>, people = { a: {}, b: {} }) =>
    compareFindingAids(aid([unit('u', 'Letter', was)], people.a), aid([unit('u', 'Letter', now)], people.b))
      .changed;

  test('old and new values, under the names of ISAD(G)', () => {
    expect(changes({ scopeAndContent: 'Four pages.' }, { scopeAndContent: 'Five pages.' })).toMatchObject([
      {
        fields: [
          // ISAD(G) 3.3.1
          { name: 'Scope and content', values: [{ was: 'Four pages.', now: 'Five pages.' }] },
        ],
      },
    ]);
  });

  test('a field that came or went has one value only', () => {
    expect(changes({ abstract: 'Short.' }, { arrangement: 'By date.' })[0]?.fields).toEqual([
      { field: 'abstract', name: 'Abstract', values: [{ was: 'Short.' }] },
      { field: 'arrangement', name: 'System of arrangement', values: [{ now: 'By date.' }] },
    ]);
  });

  test('entries of a list: gone, come, changed, in another order', () => {
    const point = (term: string, source?: string) => ({ type: 'subject', term, ...(source && { source }) });
    const values = (was: unknown[], now: unknown[]) =>
      changes({ accessPoints: was }, { accessPoints: now })[0]?.fields[0]?.values;
    expect(values([point('Floods'), point('Ferries')], [point('Ferries'), point('Apples')])).toEqual([
      { was: point('Floods') },
      { now: point('Apples') },
    ]);
    expect(values([point('Floods')], [point('Floods', 'lcsh')])).toEqual([
      { was: point('Floods'), now: point('Floods', 'lcsh') },
    ]);
    const both = [point('Floods'), point('Ferries')];
    expect(values(both, both.toReversed())).toEqual([{ was: both, now: both.toReversed(), reordered: true }]);
    expect(values([point('Floods'), point('Floods')], [point('Floods')])).toEqual([{ was: point('Floods') }]);
  });

  test('containers by what they are, not by the ids that hold them together', () => {
    const shelf = (id: string, box: string) => ({
      containers: [
        { id, type: 'box', number: box },
        { type: 'folder', number: '4', parent: id },
      ],
    });
    expect(changes(shelf('x', '1'), shelf('y', '1'))).toEqual([]);
    expect(changes(shelf('x', '1'), shelf('x', '2'))[0]?.fields).toEqual([
      {
        field: 'containers',
        name: 'Containers',
        values: [
          {
            was: { type: 'folder', number: '4', in: 'box 1' },
            now: { type: 'folder', number: '4', in: 'box 2' },
          },
        ],
      },
    ]);
  });

  test('links by whom they mean, not by the ids of people', () => {
    const ada = (id: string, name = 'Ada Quill') => ({ id, type: 'person', name });
    const link = (agent: string) => ({ creators: [{ agent }] });
    const both = (a: object[], b: object[]) => ({ a: { people: a }, b: { people: b } });
    expect(changes(link('p1'), link('p2'), both([ada('p1')], [ada('p0', 'Tom Quill'), ada('p2')]))).toEqual(
      [],
    );
    // The same id for somebody else, as where ids are places in a list.
    const others = both([ada('p1'), ada('p2', 'Tom Quill')], [ada('p1', 'Tom Quill'), ada('p2')]);
    expect(changes(link('p1'), link('p1'), others)[0]?.fields).toMatchObject([
      {
        name: 'Name of creator(s)',
        values: [{ was: { name: 'Ada Quill' } }, { now: { name: 'Tom Quill' } }],
      },
    ]);
  });

  test('another name of somebody is said once, and not at every link', () => {
    const person = (name: string) => ({ people: [{ id: 'p', type: 'person', name }] });
    const used = [unit('u', 'Letter', { creators: [{ agent: 'p' }] })];
    const { changed, people } = compareFindingAids(
      aid(used, person('Ada Quill')),
      aid(used, person('Ada Rook')),
    );
    expect(changed).toEqual([]);
    expect(people).toMatchObject({
      added: [],
      removed: [],
      changed: [{ fields: [{ name: 'Name', values: [{ was: 'Ada Quill', now: 'Ada Rook' }] }] }],
    });
  });

  test('the description itself, and who is to receive it', () => {
    const one = aid([]);
    const other = {
      ...one,
      control: { ...one.control, author: 'Nora Quill' },
      recipient: { name: 'County library' },
    };
    const { description } = compareFindingAids(one, aid([], other));
    expect(description.map(({ name }) => name)).toEqual(['Author of the finding aid', 'Recipient']);
  });

  test('markup that was kept is told only where nothing else differs', () => {
    const kept = (xml: string) => ({ kept: { format: 'ead3', xml } });
    expect(changes(kept('<c><head>a</head></c>'), kept('<c><head>b</head></c>'))[0]?.fields).toHaveLength(1);
    const retold = changes({ ...kept('<c/>'), abstract: 'a' }, { ...kept('<c></c>'), abstract: 'b' });
    expect(retold[0]?.fields.map(({ field }) => field)).toEqual(['abstract']);
    expect(changes(kept('<c/>'), {})).toEqual([]);
  });

  test('nothing where nothing differs, fields that are empty and fields that are not there being the same', () => {
    const one = aid([unit('u', 'Letter')]);
    const bare = structuredClone(one);
    for (const unit of bare.collection.children) Reflect.deleteProperty(unit, 'languages');
    expect(isEmpty(compareFindingAids(one, bare))).toBe(true);
  });
});
