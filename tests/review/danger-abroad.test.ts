import { describe, expect, test } from 'vitest';
import type { Thing } from '../../src/catalogue/thing.ts';
import { finderOfHazards } from '../../src/review/danger-found.ts';
import type { HazardName } from '../../src/review/danger-hazards.ts';
import { DANGER_WORDS } from '../../src/review/danger-words.ts';
import { someThing } from '../support/catalogue.ts';

// Rows as families write them in the languages in which headings of lists are read; what each is, is judged by reading,
// the words from memory.

const hazardsOf = finderOfHazards(DANGER_WORDS);
const of = (over: Partial<Thing>): string[] => [...hazardsOf(someThing({ row: 2, ...over })).keys()].sort();

/** A hazard as it is written in German, French, Spanish, Italian, Dutch, Norwegian, Danish and Swedish. */
const TITLES: readonly (readonly [HazardName, readonly string[]])[] = [
  [
    'weapons',
    [
      ...['Jagdgewehr vom Urgroßvater', 'Alte Flinte', 'Pistole im Kasten', 'Fusil de chasse de Thomas'],
      ...['Vieux pistolet', 'Escopeta de Samuel', 'Pistola de Ada', 'Fucile da caccia', 'Geweer van Peter'],
      ...['Olavs gevær', 'Jagtgevær fra Nordvik', 'Hagelbössa', 'Épée', 'Säbel'],
    ],
  ],
  [
    'ammunition',
    [
      ...[
        'Kiste mit Munition',
        'Drei Patronen',
        'Handgranate aus dem Krieg',
        'Boîte de munitions',
        'Obus de 1916',
      ],
      ...[
        'Caja de cartuchos',
        'Scatola di cartucce',
        'Doos met munitie',
        'Eske med ammunisjon',
        'Tre patroner',
      ],
      ...['Æske med krudt', 'Patronhylsa och krut'],
    ],
  ],
  [
    'chemicals',
    [
      ...[
        'Rattengift aus der Scheune',
        'Flasche Salzsäure',
        'Flasche mit Säure',
        'Dose Arsen',
        'Bouteille d’acide',
      ],
      ...[
        'Frasco de veneno',
        'Frasco de ácido',
        'Bottiglia di veleno',
        'Fles rattengif',
        'Flaske med saltsyre',
      ],
      ...['Rottegift', 'Flaska med syra'],
    ],
  ],
  [
    'mercury',
    [
      ...['Glas mit Quecksilber', 'Flacon de mercure', 'Frasco con mercurio', 'Flesje kwikzilver'],
      ...['Flaske kvikksølv', 'Flaske kviksølv', 'Flaska kvicksilver', 'Baromètre'],
    ],
  ],
  [
    'asbestos',
    ['Platte aus Asbest', 'Plaque d’amiante', 'Placa de amianto', 'Masque à gaz', 'Gasmasker', 'Gassmaske'],
  ],
  [
    'medicines',
    ['Arzneimittel', 'Médicaments', 'Medicamentos', 'Siringa', 'Medicijnen', 'Tabletter', 'Medicin'],
  ],
  ['celluloid', ['Puppe aus Zelluloid', 'Muñeca de celuloide', 'Dukke av selluloid']],
];

describe('dangerous things, in the title of what has no kind and of an object', () => {
  test.each(TITLES.flatMap(([hazard, titles]) => titles.map((title) => [hazard, title] as const)))(
    '%s: %s',
    (hazard, title) => {
      expect(of({ title })).toContain(hazard);
      expect(of({ title, kind: 'object' })).toContain(hazard);
      // What a letter, or a picture, is about is no danger.
      expect(of({ title, kind: 'letter' })).toEqual([]);
      expect(of({ title, kind: 'photograph' })).toEqual([]);
    },
  );
});

const CONDITIONS: readonly (readonly [HazardName, readonly string[]])[] = [
  [
    'mould',
    [
      ...[
        'schimmelig',
        'Schimmel am Rand',
        'verschimmelt',
        'moisi',
        'page moisie',
        'moho',
        'mohoso',
        'muffa',
      ],
      ...[
        'ammuffito',
        'beschimmeld',
        'muggent',
        'mugg',
        'skimmel',
        'mögel',
        'möglig',
        'humide',
        'vochtig',
        'fuktig',
      ],
    ],
  ],
  [
    'pests',
    [
      'Holzwurm',
      'mottenfraß',
      'vermoulu',
      'polilla',
      'tarlo',
      'houtworm',
      'sølvkre',
      'borebiller',
      'malätet',
    ],
  ],
];

describe('decay, in the condition of a letter', () => {
  test.each(CONDITIONS.flatMap(([hazard, all]) => all.map((condition) => [hazard, condition] as const)))(
    '%s: %s',
    (hazard, condition) => {
      expect(of({ kind: 'letter', condition })).toEqual([hazard]);
    },
  );
});

describe('nitrate', () => {
  test.each(['Nitrofilm', 'Nitratfilm', 'Film aus Zellulosenitrat', 'Film flamme', 'Nitraatfilm'])(
    '%s',
    (note) => {
      expect(of({ title: 'Ferry', kind: 'photograph', note })).toEqual(['nitrate-film']);
      expect(of({ title: 'Ferry', kind: 'object', extra: [{ heading: 'Material', text: note }] })).toEqual(
        note === 'Film flamme' ? [] : ['nitrate-film'],
      );
    },
  );
  test.each(['nitrat', 'nitrato?', 'nitraat'])('condition %s', (condition) => {
    expect(of({ title: 'Ferry', kind: 'photograph', condition })).toEqual(['nitrate-film']);
  });
  test('vinegar', () => {
    for (const condition of ['ruikt naar azijn', 'huele a vinagre', 'puzza di aceto', 'luktar ättika'])
      expect(of({ title: 'Ferry', kind: 'film reel', date: undefined, condition })).toContain('vinegar');
  });
});

test.each<[Partial<Thing>]>([
  [{ title: 'Gift from Ada', kind: 'object' }],
  [{ title: 'Mug with a ferry on it', kind: 'object' }],
  [{ title: 'Frame with a cartouche', kind: 'object' }],
  [{ title: 'Sable collar', kind: 'textile' }],
  [{ title: 'Badge of the patron of the ferry', kind: 'object' }],
  [{ title: 'Granatbrosche', kind: 'object' }],
  [{ title: 'Topi of the ferryman', kind: 'object' }],
  [{ title: 'Spielzeug, Pistole aus Blech', kind: 'object' }],
  [{ title: 'Pistola de juguete', kind: 'object' }],
  [{ title: 'Tinte und Patronen zum Füller', kind: 'object' }],
  [{ title: 'Kissen, ausgestopft', kind: 'object' }],
  [{ title: 'Der Schimmel', kind: 'painting' }],
  [{ title: 'Holzpferd', kind: 'object', description: 'Ein Schimmel mit Reiter.' }],
  [{ title: 'Krus', kind: 'object', description: 'En mugg av tenn.' }],
  [{ title: 'Schachtel', kind: 'object', condition: 'Pappe aus saurem Papier, riecht nach Säure' }],
  [{ title: 'Carte de papier sans acide', kind: 'object' }],
  [{ title: 'Statue de Mercure, dieu', kind: 'object' }],
  [{ title: 'Breve', kind: 'letter', condition: 'nessuna muffa' }],
  [{ title: 'Lettre', kind: 'letter', condition: 'aucune moisissure' }],
  [{ title: 'Brev', kind: 'letter', condition: 'ikke mugg' }],
  [{ title: 'Brev', kind: 'letter', condition: 'ingen sølvkre' }],
  [{ title: 'Brief', kind: 'letter', condition: 'geen schimmel' }],
  [{ title: 'Bottle of nitrato de plata', kind: 'object', note: 'nitrato de plata' }],
])('harmless: %j', (thing) => {
  expect(of(thing)).toEqual([]);
});
