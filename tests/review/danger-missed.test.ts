import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { dangerRules, hazardsByRow } from '../../src/review/danger.ts';
import { DANGER_WORDS } from '../../src/review/danger-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

function rulesOn(over: Partial<Thing>) {
  const catalogue = someCatalogue({}, [someThing({ row: 2, ...over })]);
  return dangerRules(DANGER_WORDS)(catalogue, arrange(catalogue, '2026-01-01')).map(({ rule }) =>
    rule.replace('danger.', ''),
  );
}

/** A row of a list as somebody writes it: title, date, kind, and more. */
const row = (title: string, date?: string, kind?: string, over: Partial<Thing> = {}): Partial<Thing> => ({
  title,
  ...(date !== undefined && { date: dated(date) }),
  ...(kind !== undefined && { kind }),
  ...over,
});

// Rows that a stranger wrote, each with what is to be said of it, and a twin that is harmless: judged by reading.
describe('nitrate and negatives count in any column, whatever the kind (NFPA 40)', () => {
  test.each<[Partial<Thing>]>([
    [row('Nitrate negatives', '1930', 'photograph')],
    [row('Negs of wedding', '1948', 'photograph', { condition: 'nitrate?' })],
    [row('Negs of wedding', '1948', 'photograph')],
    [row('Wedding', '1948', 'photograph', { size: '12 negs, 6 x 9 cm' })],
    [row('Wedding', '1948', 'album', { note: 'a strip of negatives in the back pocket' })],
    [row('Packet of negs', '1936', 'envelope')],
    [row('Letter from the studio', '1936', 'letter', { note: 'with 3 negs' })],
    [row('Negative of the ferry', '1921')],
    [row('Wedding', '1961', 'negatives', { note: 'nitrate, it says on the edge' })],
    [row('Wedding', '1948', 'photograph', { extra: [{ heading: 'Format', text: '120 negs' }] })],
    [row('Wedding', undefined, 'nitrate negatives')],
  ])('%j', (thing) => {
    expect(rulesOn(thing)).toEqual(['nitrate-negatives']);
  });

  test.each<[Partial<Thing>]>([
    [row('Wedding', '1948', 'photograph', { condition: 'nitrate?' })],
    [row('Cinema film, nitrate', '1968', 'film')],
    [row('Tin', undefined, 'object', { extra: [{ heading: 'Remarks', text: 'nitrate inside' }] })],
    [row('Tin', undefined, 'object', { familyNote: 'nitrate film in it' })],
  ])('%j', (thing) => {
    expect(rulesOn(thing)).toEqual(['nitrate-film']);
  });

  test.each<[Partial<Thing>]>([
    [row('Wedding', '1948', 'photograph', { note: 'printed from the negatives' })],
    [row('Wedding', '1948', 'photograph', { note: 'no negs' })],
    [row('Wedding', '1948', 'photograph', { condition: 'not nitrate' })],
    [row('Letter about the negatives of the wedding', '1948', 'letter')],
    [row('List of negatives', '1948', 'notebook')],
    [row('Negative answer of the county', '1948', 'letter')],
    [row('Receipt, nitrate of soda for the orchard', '1936', 'receipt')],
    [row('Letter from the nitrate works', '1936', 'letter')],
    [row('Bottle of silver nitrate', '1936', 'toy')],
    [row('Scans of the negatives', '2019', 'digital files')],
    [row('Stone', '1936', 'object', { extra: [{ heading: 'Found in', text: 'the box of negatives' }] })],
  ])('not %j', (thing) => {
    expect(rulesOn(thing)).toEqual([]);
  });

  test('negatives of 1995 burn like any other film', () => {
    expect(rulesOn(row('Negs of wedding', '1995', 'photograph'))).toEqual([]);
  });
});

describe('ammunition, with a calibre between the words or with the words around it', () => {
  test.each([
    'Live .303 round from the Home Guard, with his badge, not fired',
    'Live 303 round',
    '.303 round',
    '9mm bullets',
    '7.92 mm rounds, two',
    'Tin with 22 shells',
    'Box of 12 bore cartridges',
    '12 bore shells',
    '18-pounder shell',
    'Round from the Home Guard',
    'Round, never fired, of the Home Guard',
    'Rifle rounds in a sock',
    'Clip of five rounds for the rifle',
    'Trench art ashtray',
    '.455 calibre round',
    'Two rounds of .303',
    'Some ammo',
  ])('%s', (title) => {
    expect(rulesOn({ title, kind: 'object' })).toContain('ammunition');
    expect(rulesOn({ title })).toContain('ammunition');
  });

  test.each([
    'Round tin of the Home Guard',
    'Round mirror, 45 cm',
    'Round brooch, 22 mm',
    'Badge, worn on the milk round for the army',
    'He went round with the Home Guard, his whistle',
    'Necklace of 22 sea shells',
    'Egg cup with shells, 38 mm',
    'Medal for 25 rounds of golf',
    'Whistle of the Home Guard',
    'Live recording sign',
    'Bowl, shell pattern, 22 cm',
  ])('not %s', (title) => {
    expect(rulesOn({ title, kind: 'object' })).toEqual([]);
  });

  test('a letter tells of rounds, and may hold one', () => {
    const letter = (over: Partial<Thing>) => rulesOn({ title: 'Letter from Peter', kind: 'letter', ...over });
    expect(letter({ description: 'They fired 22 rounds.' })).toEqual([]);
    expect(letter({ note: 'a .303 round enclosed' })).toEqual(['ammunition']);
  });
});

describe('other things that were missed', () => {
  test.each<[string, Partial<Thing>, Partial<Thing>]>([
    ['radium', row('Luminous wrist watch', '1943', 'object'), row('Wrist watch', '1943', 'object')],
    ['radium', row('Travel clock, luminous', '1950'), row('Luminous smile, a poem', '1950')],
    ['radium', row('Clock with a luminous green dial', '1950', 'object'), row('Clock, dial cracked')],
    [
      'arsenic',
      row('Book of poems, arsenic green', '1860', 'book'),
      row('Book of poems, green', '1860', 'book'),
    ],
    ['mould', row('Bible', '1860', 'Bible', { condition: 'black spots' }), row('Calf with black spots')],
    [
      'mould',
      row('Bundle of letters, black spots', '1860', 'letters'),
      row('Dog with black spots', '1960', 'photo'),
    ],
    ['adhesive', row('Scrapbook, sticky', '1970', 'scrapbook'), row('Sticky bun recipe', '1970', 'recipe')],
    ['adhesive', row('Album', '1970', 'album', { condition: 'sticky' }), row('Sweets', '1970', 'object')],
    ['adhesive', row('Holiday, magnetic pages', '1974', 'album'), row('Holiday, 20 pages', '1974', 'album')],
    ['adhesive', row('Holiday, magnetic pages', '1974', 'photos'), row('Magnetic compass', '1974', 'photo')],
    [
      'rolled',
      row('School, rolled in tube', '1931', 'photograph'),
      row('Sleeves rolled up', '1931', 'photograph'),
    ],
    [
      'rolled',
      row('Town plan, rolled in a tube', '1931', 'map'),
      row('Town plan with the tube line', '1931', 'map'),
    ],
  ])('%s: %j, and not %j', (hazard, is, isNot) => {
    expect(rulesOn(is)).toContain(hazard);
    expect(rulesOn(isNot)).not.toContain(hazard);
  });

  test('rust of a clip counts in a tin too, and of what no title tells to be metal', () => {
    const rusty = (title: string, condition: string) => rulesOn({ title, date: dated('1920'), condition });
    expect(rusty('Tin of ferry tickets', 'rusty clip')).toEqual(['fasteners']);
    expect(rusty('Tickets from the tin', 'rusty')).toEqual(['fasteners']);
    expect(rusty('Box of letters', 'rusty')).toEqual(['fasteners']);
  });

  test('rust is left on film, on glass and on tintypes, and is taken off papers', () => {
    const rusty = (kind: string) =>
      rulesOn({ title: 'Ferry', kind, date: dated('1995'), condition: 'rusty clip' });
    for (const kind of ['tintype', 'negatives', 'glass plate', 'film'])
      expect([kind, rusty(kind)]).toEqual([kind, expect.arrayContaining(['metal'])]);
    for (const kind of ['tintype', 'negatives', 'glass plate', 'film', 'toy'])
      expect([kind, rusty(kind)]).toEqual([kind, expect.not.arrayContaining(['fasteners'])]);
    expect(rusty('letter')).toEqual(['fasteners']);
  });
});

test('hazards by row: the most urgent first, nothing for a row without any', () => {
  const things = [
    someThing({ row: 2, title: 'Grenade in a mouldy box', kind: 'object', condition: 'mould' }),
    someThing({ row: 3, title: 'Letter', kind: 'letter' }),
    someThing({ row: 4, title: 'Plan', kind: 'map', condition: 'brittle' }),
  ];
  expect([...hazardsByRow(things)]).toEqual([
    [2, ['ammunition', 'mould']],
    [4, ['brittle']],
  ]);
});
