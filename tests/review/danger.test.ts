import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { adviceToArchive } from '../../src/review/advice-to-archive.ts';
import { dangerRules } from '../../src/review/danger.ts';
import { HAZARDS } from '../../src/review/danger-hazards.ts';
import { DANGER_WORDS } from '../../src/review/danger-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

function findingsOn(...things: readonly Partial<Thing>[]) {
  const list = things.map((over, at) => someThing({ row: at + 2, ...over }));
  const catalogue = someCatalogue({}, list);
  return dangerRules(DANGER_WORDS)(catalogue, arrange(catalogue, '2026-01-01'));
}

const rulesOn = (...things: readonly Partial<Thing>[]) => findingsOn(...things).map(({ rule }) => rule);

type Pair = [hazard: string, is: Partial<Thing>, isNot: Partial<Thing>];

// For every hazard a row that has it, and one that is close but has it not: common practice, judged by reading.
const PAIRS: readonly Pair[] = [
  [
    'ammunition',
    { title: 'Shell case made into a vase', kind: 'object' },
    { title: 'Letter about the shell case', kind: 'letter' },
  ],
  [
    'weapons',
    { title: 'Samuel’s bayonet', kind: 'object' },
    { title: 'Samuel with his bayonet', kind: 'photo' },
  ],
  [
    'nitrate-film',
    { title: 'The fair', kind: 'film', date: dated('1937'), size: '35 mm' },
    { title: 'The fair', kind: 'film', date: dated('1937'), size: '16 mm' },
  ],
  [
    'nitrate-negatives',
    { title: 'Picnic', kind: 'negatives', date: dated('1930s') },
    { title: 'Picnic', kind: 'negatives', date: dated('1930s'), size: '9 x 12 cm glass' },
  ],
  [
    'medicines',
    { title: 'Tin of odds and ends', kind: 'object', note: 'some pills in it, no label' },
    { title: 'Tin of odds and ends', kind: 'object', note: 'the pills are gone' },
  ],
  [
    'chemicals',
    { title: 'Darkroom chemicals in a box' },
    { title: 'Price list of darkroom chemicals', kind: 'pamphlet' },
  ],
  [
    'radium',
    { title: 'Watch', kind: 'object', description: 'Luminous dial.' },
    { title: 'Watch', kind: 'object' },
  ],
  [
    'arsenic',
    { title: 'Poems, bound in arsenic green', kind: 'book' },
    { title: 'Letter about the arsenic green wallpaper', kind: 'letter' },
  ],
  ['mercury', { title: 'Thermometer', kind: 'object' }, { title: 'Digital thermometer', kind: 'object' }],
  ['asbestos', { title: 'Asbestos mat for the iron' }, { title: 'Letter on asbestos' }],
  ['batteries', { title: 'Hearing aid', kind: 'object' }, { title: 'Hearing aid receipt' }],
  ['taxidermy', { title: 'Stuffed owl', kind: 'object' }, { title: 'Stuffed toy owl', kind: 'toy' }],
  ['lead', { title: 'Lead soldiers', kind: 'toys' }, { title: 'Plastic toy soldiers', kind: 'toys' }],
  ['celluloid', { title: 'Celluloid comb', kind: 'object' }, { title: 'Tortoiseshell comb', kind: 'object' }],
  [
    'mould',
    { kind: 'letters', condition: 'damp, black and green mould' },
    { kind: 'letters', condition: 'no mould', description: 'On mould in the cellar.' },
  ],
  [
    'pests',
    { kind: 'cuttings', condition: 'silverfish' },
    { kind: 'letter', condition: 'no silverfish', description: 'Silverfish in the pantry.' },
  ],
  [
    'vinegar',
    { kind: 'film', date: dated('1957'), size: '16 mm', condition: 'smells of vinegar' },
    { kind: 'recipe', note: 'smells of vinegar' },
  ],
  ['acetate-film', { kind: 'negatives', date: dated('1965') }, { kind: 'negatives', date: dated('1995') }],
  ['glass', { kind: 'glass plates', date: dated('1891') }, { kind: 'photo', date: dated('1891') }],
  ['brittle', { kind: 'map', condition: 'varnish flaking' }, { kind: 'map', condition: 'not brittle' }],
  [
    'stuck',
    { title: 'Packet, could not be opened', kind: 'letters' },
    { title: 'Packet, opened', kind: 'letters' },
  ],
  [
    'rolled',
    { kind: 'map', size: '20 in by 7 ft, rolled' },
    { title: 'Locket', kind: 'object', size: 'rolled gold' },
  ],
  [
    'adhesive',
    { kind: 'album', condition: 'the self-stick kind' },
    { kind: 'album', condition: 'photographs held by paper corners' },
  ],
  [
    'metal',
    { title: 'Man with a beard', kind: 'tintype', condition: 'rust along one edge' },
    { title: 'Man with a beard', kind: 'photo', condition: 'rusty pin' },
  ],
  [
    'fasteners',
    { kind: 'letters', condition: 'rusty paper clips on about half' },
    { kind: 'letters', condition: 'paper clips removed' },
  ],
];

describe('each hazard', () => {
  test.each(PAIRS)('%s: what has it, and what is close but has it not', (hazard, is, isNot) => {
    expect(rulesOn(is)).toContain(`danger.${hazard}`);
    expect(rulesOn(isNot)).not.toContain(`danger.${hazard}`);
  });

  test('none is left out above, and every finding is a caution that sends to somebody who knows', () => {
    expect(PAIRS.map(([hazard]) => hazard).sort()).toEqual(HAZARDS.map(({ name }) => name).sort());
    const knows = /conservator|receiving archive|film archive|local authority|pharmacist|police|fire service/;
    for (const finding of findingsOn(...PAIRS.map(([, is]) => is))) {
      expect(finding).toMatchObject({ weight: 'caution', place: { file: 'list.csv' } });
      expect(finding.advice).toMatch(knows);
      expect(finding.source).not.toBe('');
    }
  });
});

describe('the cautions', () => {
  // What README.md says of old film under Cautions; NFPA 40 on keeping it cool, apart and away from heat.
  test.each([
    ['nitrate-film', { kind: 'film reel', date: dated('1937') }],
    ['nitrate-negatives', { kind: 'negatives', date: dated('1937') }],
  ])('of %s say to whoever has it, and to an archive, what README.md says', (name, thing) => {
    const finding = findingsOn(thing).find(({ rule }) => rule === `danger.${name}`);
    const own = finding?.advice ?? '';
    const archive = finding === undefined ? '' : (adviceToArchive(finding) ?? '');
    for (const said of [own, archive]) {
      expect(said).toMatch(/\bcool\b/);
      expect(said).toMatch(/\bapart\b/);
      expect(said).toMatch(/\btin that is stuck or smells\b/);
      expect(said).toMatch(/do not send (?:it|them)\b[^.]*\bby post\b/);
      expect(said).toContain('fire service');
      expect(said).toMatch(/local rules(?: decide|, which decide)/);
    }
    expect(own).toContain('out of the house');
    expect(own).toMatch(/ask the fire service or a conservator/i);
  });

  test('for an archive, name no archive but the one that reads it, and no column of the list', () => {
    for (const finding of findingsOn(...PAIRS.map(([, is]) => is))) {
      expect(finding.advice).not.toBe('');
      expect(adviceToArchive(finding)).not.toMatch(/receiving archive|most archives|column “|for the family/);
    }
    // What is said in the same words to both is the advice itself.
    expect(adviceToArchive({ rule: 'danger.brittle', advice: 'x' })).toContain('Do not bend');
    expect(adviceToArchive({ rule: 'copies.location', advice: 'x' })).toBe('x');
  });
});

describe('the table of words', () => {
  // A thing of the first material that a row allows.
  const KIND: Record<string, string> = { film: 'film', object: 'object', paper: 'letter', picture: 'map' };

  test.each(DANGER_WORDS.map((row) => ({ ...row, name: `${row.hazard}: ${row.words[0]}` })))(
    '$name: every word of the row is found in the column that comes first',
    ({ hazard, words, columns, of = ['paper'], beside = [''] }) => {
      const kind = KIND[of[0] ?? ''] ?? 'letter';
      const column = columns.find((name) => name !== 'kind') ?? 'title';
      const missed = words.filter(
        (word) =>
          !rulesOn({ title: 'Thing', kind, [column]: `${word} ${beside[0]}`.trim() }).includes(
            `danger.${hazard}`,
          ),
      );
      expect(missed).toEqual([]);
    },
  );
});

describe('film by kind and date (made of nitrate into the early 1950s: from memory; NFPA 40)', () => {
  const reel = (written: string | undefined, over: Partial<Thing> = {}) =>
    rulesOn({
      title: 'The fair',
      kind: 'film',
      ...(written !== undefined && { date: dated(written) }),
      ...over,
    });

  test.each(['1912', '1953', '1949-1960', 'before 1960', '1940s', undefined])(
    'a reel of %s may be',
    (written) => {
      expect(reel(written)).toEqual(['danger.nitrate-film']);
    },
  );

  test.each(['1954', 'after 1960', '1970s'])('a reel of %s is not, but decays', (written) => {
    expect(reel(written)).toEqual(['danger.acetate-film']);
  });

  test.each(['16 mm', '16mm, 100 ft', '8 mm', 'Super 8', '9.5 mm'])('%s was never made of it', (size) => {
    expect(reel('1937', { size })).toEqual(['danger.acetate-film']);
  });

  test('“safety” on the edge settles it, “no safety mark” does not', () => {
    expect(reel('1949', { note: 'safety film on the edge' })).toEqual(['danger.acetate-film']);
    expect(reel('1949', { note: 'no safety mark' })).toEqual(['danger.nitrate-film']);
  });

  test('a copy on a disc is no film, and nothing before 1889 is on film', () => {
    expect(reel('1937', { note: 'copied to DVD' })).toEqual([]);
    expect(rulesOn({ kind: 'negative', date: dated('1860') })).toEqual([]);
  });

  test('negatives that lie with photographs count, unless they are lost', () => {
    const photos = { kind: 'photos', date: dated('1938') };
    expect(rulesOn({ ...photos, note: 'with the negatives' })).toEqual(['danger.nitrate-negatives']);
    expect(rulesOn({ ...photos, note: 'the negatives are lost' })).toEqual([]);
    expect(rulesOn({ ...photos, note: 'no negatives' })).toEqual([]);
  });

  test('without a kind, the title tells', () => {
    expect(rulesOn({ title: 'Reel of film from the fair' })).toEqual(['danger.nitrate-film']);
    expect(rulesOn({ title: 'Ambrotype in a case' })).toEqual(['danger.glass']);
    expect(rulesOn({ title: 'Letter about film stars' })).toEqual([]);
  });

  test('what is said of a film goes before what its date makes likely', () => {
    expect(reel('1970', { condition: 'smells of vinegar' })).toEqual(['danger.vinegar']);
    expect(reel('1970', { note: 'nitrate, says the picture-house man' })).toEqual(['danger.nitrate-film']);
  });
});

describe('what stands around a word', () => {
  test.each([
    ['no mould, rust or silverfish', []],
    ['cover gone, mould inside', ['danger.mould']],
    ['not to be opened because of mould', ['danger.mould']],
    ['no doubt mould', ['danger.mould']],
    ['without a trace of mould', []],
    ['doesn’t smell of mould', []],
    ['MOULD', ['danger.mould']],
    ['mouldings', []],
    ['schimmelig, aber kein Holzwurm', ['danger.mould']],
    ['kein Schimmel', []],
    ['staples', ['danger.fasteners']],
    ['staples: all removed', ['danger.fasteners']],
    ['staples were all removed', []],
    ['paper-\nclips', ['danger.fasteners']],
  ])('condition “%s”', (condition, rules) => {
    expect(rulesOn({ kind: 'letters', condition })).toEqual(rules);
  });

  test('something dangerous that lies in with a paper is found, what the paper tells of is not', () => {
    const letter = { title: 'Letter from France', kind: 'letter' };
    expect(rulesOn({ ...letter, note: 'two cartridges still in it' })).toEqual(['danger.ammunition']);
    expect(rulesOn({ ...letter, note: 'he writes of cartridges' })).toEqual([]);
    expect(rulesOn({ ...letter, description: 'They ran out of cartridges.' })).toEqual([]);
  });

  test('a description of an object names what is in it, or tells what once happened', () => {
    const tin = { title: 'Tobacco tin', kind: 'object' };
    expect(rulesOn({ ...tin, description: 'Buttons, a key, three bullets.' })).toEqual(['danger.ammunition']);
    expect(rulesOn({ ...tin, description: 'It was in his pocket when the bullets flew.' })).toEqual([]);
  });

  test('a digital file holds none of it', () => {
    expect(rulesOn({ title: 'Pistol', kind: 'digital file' })).toEqual([]);
  });
});

describe('how it is said', () => {
  test('one finding for all the things with rust, at the first of them', () => {
    const rusty = Array.from({ length: 9 }, () => ({ title: 'Bill', kind: 'bill', condition: 'rusty pin' }));
    expect(findingsOn(...rusty)).toMatchObject([
      {
        rule: 'danger.fasteners',
        place: { row: 2, column: 'condition' },
        found: expect.stringContaining('“Bill” (row 5) and 5 more (rows 6-10).'),
      },
    ]);
  });

  test('a finding of its own for each weapon', () => {
    const weapon = { title: 'Pistol', kind: 'object' };
    expect(findingsOn(weapon, weapon)).toMatchObject([{ place: { row: 2 } }, { place: { row: 3 } }]);
  });

  test('the most urgent first, however the list is ordered', () => {
    expect(rulesOn({ kind: 'map', condition: 'rolled' }, { title: 'Grenade', kind: 'object' })).toEqual([
      'danger.ammunition',
      'danger.rolled',
    ]);
  });

  test('an identity number in a title is blotted out', () => {
    const [finding] = findingsOn({ title: 'Tag 123-45-6789', kind: 'letter', condition: 'mouldy' });
    expect(finding?.found).toContain('“Tag •••-••-••••”');
  });
});
