import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewPrivate } from '../../src/review/private.ts';
import { MATTERS } from '../../src/review/private-matters.ts';
import { PRIVATE_WORDS } from '../../src/review/private-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

const TODAY = '2026-06-30';

// Nora is living; Ada has died; Thomas was born more than a hundred years ago, and nobody has noted his death.
const PEOPLE = [
  { name: 'Nora Quill', born: 1958 },
  { name: 'Ada Quill', born: 1902, died: 1988 },
  { name: 'Thomas Quill', born: 1861 },
  { name: 'Quill family', type: 'family' },
];

function findingsOn(things: readonly Partial<Thing>[], over: Record<string, unknown> = {}, today = TODAY) {
  const list = things.map((thing, at) => someThing({ row: at + 2, ...thing }));
  const catalogue = someCatalogue({ people: PEOPLE, ...over }, list);
  return reviewPrivate(catalogue, arrange(catalogue, TODAY), today);
}

/** The rules on one row, but for the one that gathers names. */
const rulesOn = (thing: Partial<Thing>, over: Record<string, unknown> = {}, today = TODAY) =>
  findingsOn([thing], over, today)
    .map(({ rule }) => rule)
    .filter((rule) => rule !== 'private.may-be-living');

const report: Partial<Thing> = {
  title: 'School report, third grade',
  kind: 'school report',
  date: dated('1966'),
  people: ['Nora Quill'],
};

describe('who may be living (common practice: a hundred years)', () => {
  const of = (people: readonly string[], written = '1966') =>
    rulesOn({ ...report, people, date: dated(written) });

  test('somebody born less than a hundred years ago, without a death', () => {
    expect(of(['Nora Quill'])).toEqual(['private.school']);
  });

  test('not somebody who has died, nor somebody born a hundred years ago', () => {
    expect(of(['Ada Quill'])).toEqual([]);
    expect(of(['Thomas Quill'])).toEqual([]);
  });

  test('the hundredth year settles it', () => {
    const born = (year: number) => ({ people: [{ name: 'Nora Quill', born: year }] });
    expect(rulesOn(report, born(1927))).toEqual(['private.school']);
    expect(rulesOn(report, born(1926))).toEqual([]);
  });

  test('somebody of whom nothing is noted, and whom nothing older names', () => {
    expect(of(['Daniel Quill'])).toEqual(['private.school']);
    const elder = someThing({ row: 9, kind: 'letter', date: dated('1899'), people: ['Daniel Quill'] });
    expect(findingsOn([{ ...report, people: ['Daniel Quill'] }, elder])).toEqual([]);
  });

  test('one who may be living among others who are dead', () => {
    expect(of(['Ada Quill', 'Nora Quill'])).toEqual(['private.school']);
  });

  test('where only a family or nobody is named, the date decides', () => {
    expect(of(['Quill family'])).toEqual(['private.school']);
    expect(of([])).toEqual(['private.school']);
    // A pupil of five in 1930 is ninety-six, one of 1931 ninety-five years older than five in 2026.
    expect(of([], '1932')).toEqual(['private.school']);
    expect(of([], '1931')).toEqual([]);
  });

  test('a doctor who wrote the letter is not whom it is about', () => {
    const letter = { kind: 'medical letter', date: dated('1994'), people: ['Ada Quill'] };
    expect(rulesOn({ ...letter, creators: ['Dr. Averill'] })).toEqual([]);
    expect(rulesOn({ ...letter, creators: ['Nora Quill'] })).toEqual(['private.health']);
  });

  test('a register is on others than those it names', () => {
    const register = { title: 'School register', date: dated('1950'), people: ['Ada Quill'] };
    expect(rulesOn(register)).toEqual(['private.school']);
    expect(rulesOn({ ...register, date: dated('1922-1931') })).toEqual([]);
  });

  test('a name is known by its other forms too', () => {
    expect(
      rulesOn(
        { ...report, people: ['Aunt Ada'] },
        {
          people: [{ name: 'Ada Quill', also: ['Aunt Ada'], died: 1988 }],
        },
      ),
    ).toEqual([]);
  });

  test('today decides, not the day of the description', () => {
    expect(rulesOn(report, {}, '2057-12-31')).toEqual(['private.school']);
    expect(rulesOn(report, {}, '2058-01-01')).toEqual([]);
  });
});

describe('people of the list of whom nobody has noted when they lived', () => {
  const letter = (written: string, people: readonly string[]) => ({
    kind: 'letter',
    date: dated(written),
    people,
  });

  test('all in one finding, with the year by which the list first names each', () => {
    expect(
      findingsOn([letter('1946', ['Frank Hanley']), letter('1940', ['Frank Hanley', 'Ellen Hanley'])]),
    ).toMatchObject([
      {
        rule: 'private.may-be-living',
        weight: 'consider',
        found: expect.stringContaining('Frank Hanley (1940), Ellen Hanley (1940)'),
      },
    ]);
  });

  test.each([
    ['of a hundred years ago', [letter('1926', ['Abel Stroud'])]],
    ['without a date', [{ kind: 'letter', people: ['Abel Stroud'] }]],
    ['whose death is known', [letter('1950', ['Ada Quill'])]],
    ['who are organisations', [letter('1950', ['Savings Bank of Ellersby'])]],
    ['who are two under one name', [letter('1950', ['Ann Moss, Ruth Moss'])]],
    ['of whom a birth is noted; the rules on records name them', [letter('1980', ['Nora Quill'])]],
  ])('nobody %s', (_, things) => {
    expect(findingsOn(things)).toEqual([]);
  });
});

describe('what is private', () => {
  const about = (title: string, over: Partial<Thing> = {}) =>
    rulesOn({ title, date: dated('1985'), people: ['Nora Quill'], ...over });

  test.each([
    // The matter, a title that has it, and one that is close but has it not: judged by reading.
    ['health', 'Letter on the diagnosis', 'Letter on the picnic behind the hospital'],
    ['adoption', 'Adoption papers', 'Adoption of the resolution on the bridge'],
    ['identity', 'Old passport', 'Passage money, a receipt'],
    ['legal', 'Divorce papers', 'Custom papers of the ferry'],
    ['password', 'Password for the e-mail', 'Pass of the ferry company'],
    ['bank', 'Bank statements', 'Letter on the bank of the river'],
    ['school', 'Report card', 'School picnic, a letter'],
  ])('%s: “%s”, and not “%s”', (matter, is, isNot) => {
    expect(about(is)).toEqual([`private.${matter}`]);
    expect(about(isNot)).toEqual([]);
  });

  test('no matter is left out above', () => {
    expect(MATTERS.map(({ name }) => name).sort()).toEqual([
      'adoption',
      'bank',
      'health',
      'identity',
      'legal',
      'password',
      'school',
    ]);
  });

  test.each([
    'Krankenakte',
    'Sparbuch',
    'dossier médical',
    'relevé bancaire',
    'Skilsmisse',
    'pagella',
    'Legeerklæring',
    'adopción',
  ])('“%s” is one in its own language', (word) => {
    expect(about(word)).toHaveLength(1);
  });

  test.each(PRIVATE_WORDS.map((row) => ({ ...row, name: `${row.matter}: ${row.words[0]}` })))(
    '$name: every word of the row is found in the column that comes first',
    ({ matter, words, columns = ['title'] }) => {
      const missed = words.filter(
        (word) => !about('Thing', { [columns[0] ?? 'title']: word }).includes(`private.${matter}`),
      );
      expect(missed).toEqual([]);
    },
  );

  test('what was printed or pictured is no secret, with a kind or without', () => {
    expect(about('Divorce', { kind: 'press cutting' })).toEqual([]);
    expect(about('Cutting about a divorce')).toEqual([]);
    expect(about('The operation', { kind: 'photo', description: 'Her operation.' })).toEqual([]);
  });

  test('“no report cards” are none', () => {
    expect(about('Papers, no report cards')).toEqual([]);
  });

  test('a row can be private twice, and rows of one matter are one finding', () => {
    expect(about('Divorce papers with bank statements')).toEqual(['private.legal', 'private.bank']);
    const findings = findingsOn([report, report, { ...report, title: 'Report card' }]);
    expect(findings).toMatchObject([
      {
        rule: 'private.school',
        weight: 'should',
        place: { file: 'list.csv', row: 2, column: 'kind' },
        found: expect.stringContaining(
          '“Report card” (row 4; Nora Quill, usually closed to 2058: born 1958)',
        ),
      },
    ]);
  });
});

describe('whether an access condition covers it', () => {
  const closed = (until: string | undefined, access = 'private') =>
    rulesOn({ ...report, access, ...(until !== undefined && { until: dated(until) }) });

  test('closed until a hundred years after the birth', () => {
    expect(closed('2058')).toEqual([]);
    expect(closed('2100-01-01')).toEqual([]);
  });

  test('closed, but not long enough, or nobody says until when', () => {
    expect(closed('2057')).toEqual(['private.end-too-early']);
    expect(closed('1999')).toEqual(['private.end-too-early']);
    expect(closed(undefined)).toEqual(['private.no-end']);
    expect(closed('when we are all gone')).toEqual(['private.no-end']);
  });

  test('an end alone closes it, “anyone” does not', () => {
    expect(rulesOn({ ...report, until: dated('2058') })).toEqual([]);
    expect(closed('2058', 'anyone')).toEqual(['private.school']);
  });

  test('that has ended by its own date is named, unless it had to be longer', () => {
    const map = (until: string, access = 'ask first') => ({
      ...{ title: 'Map of the ferry', kind: 'map', date: dated('1898') },
      ...{ access, until: dated(until) },
    });
    expect(rulesOn(map('2001'))).toEqual(['private.restriction-ended']);
    // The year in which one looks has not passed.
    expect(rulesOn(map(TODAY.slice(0, 4)))).toEqual([]);
    expect(rulesOn(map('2001', 'anyone'))).toEqual([]);
    expect(closed('1999')).not.toContain('private.restriction-ended');
  });

  test('without a birth, the age at which one has such papers is reckoned with', () => {
    const of = (until: string) =>
      rulesOn({ ...report, people: ['Daniel Quill'], access: 'private', until: dated(until) });
    // 1966 + 100 - 5.
    expect(of('2061')).toEqual([]);
    expect(of('2060')).toEqual(['private.end-too-early']);
  });

  test('nor can somebody be younger than what names them first', () => {
    const card = { kind: 'card', date: dated('1950'), people: ['Daniel Quill'] };
    const of = (until: string) =>
      findingsOn([{ ...report, people: ['Daniel Quill'], access: 'private', until: dated(until) }, card])
        .map(({ rule }) => rule)
        .filter((rule) => rule !== 'private.may-be-living');
    expect(of('2050')).toEqual([]);
    expect(of('2049')).toEqual(['private.end-too-early']);
  });

  test('what is said of the group', () => {
    const group = (access: unknown) => ({ groups: { 'School papers': { access } } });
    expect(rulesOn(report, group({ statement: 'Closed.', until: '2060' }))).toEqual([]);
    expect(rulesOn(report, group({ statement: 'Closed.', until: '2030' }))).toEqual([
      'private.end-too-early',
    ]);
    expect(rulesOn(report, group('Closed to all.'))).toEqual(['private.no-end']);
    expect(rulesOn(report, group('Some are torn.'))).toEqual(['private.school']);
    expect(
      rulesOn(report, { groups: { Correspondence: { access: { statement: 'Closed.', until: '2060' } } } }),
    ).toEqual(['private.school']);
  });

  test('what is said of the collection', () => {
    expect(rulesOn(report, { access: { statement: 'Closed.', until: '2060' } })).toEqual([]);
    expect(rulesOn(report, { access: 'Open to the family.' })).toEqual(['private.school']);
    expect(
      rulesOn({ ...report, access: 'open' }, { access: { statement: 'Closed.', until: '2060' } }),
    ).toEqual(['private.school']);
  });
});

describe('identity and account numbers in the list', () => {
  const number = '123-45-6789';

  test.each(['title', 'description', 'note', 'condition', 'occasion'] as const)(
    'in the column %s',
    (column) => {
      const findings = findingsOn([{ title: 'Papers', [column]: `Number ${number}` }]);
      expect(findings).toMatchObject([{ rule: 'private.identity-number', place: { row: 2, column } }]);
      expect(JSON.stringify(findings)).not.toContain('6789');
    },
  );

  test('in a column the program does not know', () => {
    const extra = [{ heading: 'Found in', text: `envelope ${number}` }];
    expect(findingsOn([{ extra }])).toMatchObject([{ place: { row: 2, column: 'Found in' } }]);
  });

  test('whoever it is of, and although the thing is closed: the list is not', () => {
    const thing = { note: number, people: ['Ada Quill'], access: 'private', until: dated('2090') };
    expect(rulesOn(thing)).toEqual(['private.identity-number']);
  });

  test('each sort of number is one finding, and money is told apart', () => {
    const findings = findingsOn([
      { note: number },
      { note: `${number} and 123-45-6780` },
      { note: 'GB82 WEST 1234 5698 7654 32' },
    ]);
    expect(findings.map(({ rule }) => rule)).toEqual(['private.identity-number', 'private.money-number']);
    expect(findings[0]?.found).toContain('(row 2; column note) and “Thing of row 3” (row 3; column note)');
  });

  test('a title that holds one is blotted out in every finding', () => {
    const findings = findingsOn([{ ...report, title: `School report ${number}` }]);
    expect(findings.map(({ rule }) => rule)).toEqual(['private.identity-number', 'private.school']);
    for (const { found } of findings) expect(found).toContain('“School report •••-••-••••”');
  });
});

describe('short forms and matters that were missed', () => {
  const about = (title: string) => rulesOn({ title, date: dated('2002'), people: ['Nora Quill'] });

  test.each([
    ['private.identity', 'Birth cert', 'Birth of a calf'],
    ['private.health', 'AA meeting notes', 'AA motoring club, a meeting'],
    ['private.health', 'Med records', 'Medal records of the regatta'],
    ['private.legal', 'Statements on abuse at the home', 'Letter full of terms of abuse'],
    ['private.legal', 'Abuse statement', 'Statement of the ferry company'],
    ['private.bank', 'Bank stmts', 'Bank of the river, sketches'],
  ])('%s: “%s”, and not “%s”', (rule, is, isNot) => {
    expect(about(is)).toEqual([rule]);
    expect(about(isNot)).toEqual([]);
  });

  test('a password is no paper that proves who somebody is, and is closed to no year', () => {
    const [finding, ...more] = findingsOn([{ title: 'Password for the e-mail', people: ['Nora Quill'] }]);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      rule: 'private.password',
      found: expect.stringMatching(/\(row 2; Nora Quill\)\.$/),
    });
    const held = { title: 'Password for the e-mail', people: ['Nora Quill'], access: 'private' };
    expect(findingsOn([held])).toEqual([]);
  });

  // Whoever made a will was at least 16: 2002 - 16 + 100 = 2086.
  test.each([
    ['Corin Quill', 'usually closed to 2086: at least 16 in 2002, so born by 1986)'],
    ['Nora Quill', 'usually closed to 2058: born 1958)'],
  ])('the year is said with what it is reckoned from: %s', (name, words) => {
    const [finding] = findingsOn([{ title: 'Will', kind: 'will', date: dated('2002'), people: [name] }]);
    expect(finding?.found).toContain(words);
  });

  test('somebody whom an older thing names is no younger than that', () => {
    const card = { kind: 'card', date: dated('1950'), people: ['Corin Quill'] };
    const found = findingsOn([
      { title: 'Will', kind: 'will', date: dated('2002'), people: ['Corin Quill'] },
      card,
    ]);
    expect(found[0]?.found).toContain('usually closed to 2050: named by 1950, so born by then)');
  });

  test('a thing of several years names somebody by its last', () => {
    const [finding] = findingsOn([{ kind: 'letters', date: dated('1931-1939'), people: ['Corin Quill'] }]);
    expect(finding?.found).toContain('by which the list first names them: Corin Quill (1939)');
    expect(finding?.found).not.toContain('oldest');
  });
});

describe('telephone numbers and e-mail addresses in the list', () => {
  // The numbers are of ranges kept free for stories (555-01xx; Ofcom, from memory); example.org: RFC 2606.
  test.each([
    'ask Ellen, phone 610-555-0123',
    'tel. (610) 555-0123',
    'ask Ellen 01632 960123',
    '+44 1632 960123',
    'Call Ellen on 01632 960123 first',
    'ellen.hanley@example.org has the rest',
  ])('“%s” is one', (note) => {
    const findings = findingsOn([{ title: 'Letter', date: dated('1911'), note }]);
    expect(findings).toMatchObject([
      { rule: 'private.contact', weight: 'consider', place: { row: 2, column: 'note' } },
    ]);
    expect(JSON.stringify(findings)).not.toMatch(/0123|example/);
  });

  test.each([
    '610-555-0123',
    'telephone bills 1952-1954',
    'call no. 123456789',
    'ring of 1887-05-02',
    'telegram 5550123',
    'Ada @ the landing',
    'NHS phone line 943 476 5919',
  ])('“%s” is none', (note) => {
    const rules = findingsOn([{ title: 'Letter', date: dated('1911'), note }]).map(({ rule }) => rule);
    expect(rules).not.toContain('private.contact');
  });

  test('what a thing of long ago tells reaches nobody any more', () => {
    const card = (date: string) => rulesOn({ title: 'Card, telephone 610-555-0123', date: dated(date) });
    expect(card('1957')).toEqual([]);
    expect(card('1976')).toEqual(['private.contact']);
    expect(card('1975')).toEqual([]);
  });

  test('a title that holds one is blotted out', () => {
    const [finding] = findingsOn([{ title: 'Card, telephone 610-555-0123' }]);
    expect(finding?.found).toContain('“Card, telephone •••-•••-••••” (row 2; column title)');
  });
});
