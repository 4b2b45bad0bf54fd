import { FORMAT_NAMES, type FormatName } from '../catalogue/format-names.ts';
import { sayTotals } from './inventory-papers.ts';
import { withArticle } from './papers/paper.ts';
import { sayLocations } from './papers/say-locations.ts';
import { printed } from './printed.ts';
import { sayNotSettled } from './say-not-settled.ts';
import { SOFTWARE } from './software.ts';
import type { Summary } from './summary.ts';

/** What stands in the folder `finding-aid`, for somebody who knows none of these names. */
const FORMS: Readonly<Record<FormatName, readonly [file: string, says: string]>> = {
  ead3: ['ead3.xml', 'Encoded Archival Description, version 3: what the programs of archives read'],
  ead2002: ['ead2002.xml', 'the same in the older form of that standard, EAD 2002'],
  dc: [
    'dublin-core/',
    'a record of the collection, of each folder or bundle, and of whatever has a copy or is restricted, in simple Dublin Core; dublin-core.csv holds the same as a table',
  ],
  dcterms: ['dcterms/', 'the same records in the wider terms of Dublin Core'],
  'eac-cpf': [
    'eac-cpf/',
    'a record of each person, family and organisation of whom more than the name is known (Encoded Archival Context)',
  ],
  html: ['finding-aid.html', 'the finding aid as one page for any web browser; it needs no network'],
  json: ['finding-aid.json', 'everything the finding aid says, as JSON'],
  csv: ['finding-aid.csv', 'the finding aid as a table for any spreadsheet'],
};

/**
 * `READ-ME-FIRST.txt`: for a stranger in fifty years, who has this folder and nothing else. In plain letters, so that it
 * can be read even where nobody remembers how letters were encoded.
 * @param isDespite whether `despite.txt` is there
 */
export function readMe(summary: Summary, isDespite: boolean): string {
  const { title, code, giver, recipient, copies } = summary;
  const there = copies.filter(({ name }) => name !== undefined);
  return printed([
    title.toUpperCase(),
    '',
    `Reference code: ${code}`,
    '',
    ...section(
      '1. What this is',
      `This folder came with ${withArticle(title)} when they were handed over by ${giver.name}${recipient === undefined ? '' : ` to ${recipient.name}`}. It says what the papers are and where each of them lies${there.length === 0 ? '' : ', and it holds the digital copies that had been made of some'}. The papers themselves are in boxes, and not in here.`,
      ...(summary.abstract === undefined ? [] : ['', summary.abstract]),
    ),
    ...facts(summary),
    '',
    ...section('2. How the papers are ordered', ...order(summary)),
    '',
    ...section('3. What each file is', ...files(summary, isDespite)),
    '',
    ...section('4. What may be seen, and by whom', ...access(summary)),
    '',
    ...(there.length === 0 ? [] : section('5. The digital copies', ...digital(summary), '')),
    ...section(`${there.length === 0 ? 5 : 6}. How to see that nothing has changed`, ...CHECK),
    '',
    ...section(`${there.length === 0 ? 6 : 7}. How the files are written`, ...WRITTEN),
  ]);
}

const section = (heading: string, ...lines: readonly string[]): string[] => [
  heading,
  '-'.repeat(heading.length),
  ...lines,
];

function facts({
  giver,
  author,
  described,
  dates,
  creators,
  languages,
  extent,
  rows,
  copies,
}: Summary): string[] {
  const there = copies.filter(({ name }) => name !== undefined).length;
  const all: [string, string | undefined][] = [
    ['Made or gathered by', creators.join('; ')],
    ['From when to when', dates],
    ['How much', [extent, sayTotals(rows, there)].filter((part) => part !== '').join(': ')],
    ['Languages', languages.join(', ')],
    ['Handed over by', [giver.name, ...(giver.address ?? [])].join(', ')],
    ['Described by', author],
    [isDay(described) ? 'Described on' : 'Described in', described],
  ];
  return [
    '',
    ...all.flatMap(([label, value]) =>
      value === undefined || value === '' ? [] : [`  - ${label}: ${value}`],
    ),
  ];
}

/** A day (2026-09-20) and not a year or a month. */
const isDay = (date: string | undefined) => date !== undefined && /^\d{4}-\d{2}-\d{2}/.test(date);

function order(summary: Summary): string[] {
  const { arrangement, groups, code, example, isTakenIn, isSettled } = summary;
  const loose = sayNotSettled(summary);
  const pencilled =
    ' The codes are meant to be on the folders in pencil. Numbers are given once while a collection is sorted and are not used again, so that a number that is not there means nothing by itself.';
  return [
    ...(arrangement === undefined ? [] : [arrangement, '']),
    isTakenIn
      ? 'The order and the reference codes are those of the finding aid that the collection came with; what was added to it later may have no code.'
      : `Every unit has a reference code${example === undefined ? '' : `, such as ${example}`}. It begins with ${code} for the whole. Behind that stand the numbers of the group (and of a group within it, if there is one), of the folder in the group, and last of the thing in the folder.${isSettled ? pencilled : ''}`,
    ...(loose.length === 0 ? [] : ['', ...loose]),
    '',
    'The groups are:',
    ...groups.map(({ code: own, title, dates, extent }) => {
      const name = own === '' ? title : `${own} ${title}`;
      return `  - ${name}${dates === '' ? '' : `, ${dates}`}${extent === '' ? '' : ` (${extent})`}`;
    }),
  ];
}

function files({ copies, isTakenIn, listed }: Summary, isDespite: boolean): string[] {
  const hasCopies = copies.some(({ name }) => name !== undefined);
  const says = isTakenIn
    ? 'the list of what was added to the finding aid, a row for each thing or bundle'
    : 'the list that the family kept while sorting, a row for each thing or bundle';
  const all: [string, string][] = [
    ['READ-ME-FIRST.txt', 'this text'],
    ...(isDespite
      ? [['despite.txt', 'what was still to be mended when this was made'] as [string, string]]
      : []),
    ...(listed === 0 ? [] : [['list.csv', says] as [string, string]]),
    ['inventory.html, .csv', 'what lies in which box and folder, to be signed for at the door'],
    ...(hasCopies ? [['copies/', 'the digital copies'] as [string, string]] : []),
    ['technical-facts.csv', 'of each digital copy: its form, its size, its checksum, its earlier name'],
    ['letter-of-offer', 'as .html and .md: offers the collection to an archive'],
    ['deed-of-gift-checklist', 'as .html and .md: what to settle before anything is signed'],
    ['receipt', 'as .html and .md: says that the things have arrived'],
    ['finding-aid/', 'the description of the whole, the same in several forms:'],
    ...FORMAT_NAMES.map((format): [string, string] => [`    ${FORMS[format][0]}`, FORMS[format][1]]),
  ];
  return [
    `If you can open only one, open the page finding-aid.html or the table ${listed === 0 || isTakenIn ? 'finding-aid.csv' : 'list.csv'}.`,
    '',
    ...all.map(([file, what]) => `  - ${file}: ${what}`.replace(/^ {2}- {4} */, '      - ')),
  ];
}

function access({ access: said, use, restricted }: Summary): string[] {
  return [
    ...(said === undefined ? [] : [said]),
    ...(use === undefined ? [] : ['', use]),
    '',
    ...(restricted.length === 0
      ? ['No single thing is restricted.']
      : [
          'Restricted are:',
          ...restricted.map(
            ({ code, title, statement, until }) =>
              `  - ${code} ${title}: ${statement}${until === undefined ? '' : ` (until ${until})`}`,
          ),
        ]),
  ];
}

const digital = ({ copies }: Summary): string[] => [
  'They are the files that the family had, byte for byte; only their names are new. A name begins with the reference code of the thing that the copy shows, then come the words of its title and a running number. technical-facts.csv has the earlier names.',
  '',
  sayLocations(copies),
];

const CHECK = [
  'The folder above this one is a BagIt bag (RFC 8493). Beside the folder data, in which this text lies, it has two lists of checksums. A checksum is a long number that is worked out from a file; if one letter of the file changes, so does the number. On most systems this does it, from within that folder above:',
  '',
  '    sha512sum -c manifest-sha512.txt',
  '',
  `Each line should end in OK. manifest-sha256.txt serves as well, with sha256sum. Any program that validates BagIt bags looks besides whether anything is missing or was added; ${SOFTWARE}, with which this was made, does so as well: kinfonds verify, and behind it the name of that folder. Do it once a year and after every move to another disk, keep at least two copies in two places, and never write one copy over another before both have been checked.`,
];

const WRITTEN = [
  'Texts are in Unicode (UTF-8); this one keeps to the letters A to Z where it can, so that names in it may lack their accents. The tables (.csv) hold a row on each line, with commas between the cells and quotation marks round a cell that holds a comma (RFC 4180). Where a cell begins with an apostrophe, that sign only keeps spreadsheets from taking the text for a formula. Dates are written in words and, in columns that say so, in EDTF (ISO 8601-2). Paths to the copies are those from the folder finding-aid, or, in list.csv and technical-facts.csv, from the folder of this text.',
];
