import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A generator of pseudo-random numbers from 0 to 1 (mulberry32), so that every run gets the same list. */
function randomFrom(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const KINDS = [
  'letter',
  'postcard',
  'photograph',
  'receipt',
  'account book',
  'press cutting',
  'map',
  'diary',
  'recipe',
];
const NAMES = ['Ada', 'Nils', 'Ruth', 'Per', 'Cora', 'Jon', 'Ella', 'Tom', 'Signe', 'Alma', 'Otto', 'Ivy'];
const PLACES = ['Quill Landing', 'Applegarth', 'Tollbridge', 'Nordvik', 'Millrace', 'Heron Island'];
const OCCASIONS = ['Flood', 'Harvest', 'Wedding', 'Regatta', 'Christmas', 'School year', ''];
const WORDS =
  'river ferry orchard bridge apple crossing cable winter letter boat landing flood toll barn press'.split(
    ' ',
  );

/** Makes a catalogue folder with a list of so many rows, some of them with every column filled. */
export function writeCatalogue(folder, rows) {
  const random = randomFrom(rows);
  const pick = (list) => list[Math.floor(random() * list.length)];
  const words = (n) => Array.from({ length: n }, () => pick(WORDS)).join(' ');
  const lines = [
    'title,date,kind,people,place,occasion,description,quantity,size,condition,note,language,creator',
  ];
  for (let row = 0; row < rows; row++) {
    const year = 1880 + Math.floor(random() * 120);
    const month = String(1 + Math.floor(random() * 12)).padStart(2, '0');
    const day = String(1 + Math.floor(random() * 28)).padStart(2, '0');
    const date = pick([
      `${year}`,
      `${year}-${month}`,
      `${year}-${month}-${day}`,
      `c. ${year}`,
      `${year}-${year + 3}`,
      'undated',
    ]);
    const cells = [
      `"About the ${words(3)}, no. ${row}"`,
      date,
      pick(KINDS),
      `${pick(NAMES)} Quill; ${pick(NAMES)} Rook`,
      pick(PLACES),
      pick(OCCASIONS),
      `"${words(12)}, & ${words(6)}"`,
      random() < 0.2 ? String(1 + Math.floor(random() * 40)) : '1',
      pick(['8x10 in', 'A4', '']),
      pick(['good', 'torn', '']),
      random() < 0.3 ? words(5) : '',
      pick(['English', 'Norwegian']),
      `${pick(NAMES)} Quill`,
    ];
    lines.push(cells.join(','));
  }
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'list.csv'), `${lines.join('\n')}\n`);
  writeFileSync(
    join(folder, 'collection.yaml'),
    'title: Quill family papers\nprefix: QF\nrepository:\n  name: Quill family\ndescribed: 2026\n',
  );
}
