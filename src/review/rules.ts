import type { Weight } from '../catalogue/finding.ts';
import { HAZARDS } from './danger-hazards.ts';
import { MATTERS } from './private-matters.ts';

/** One rule of `kinfonds check`, as `docs/rules.md` lists it. */
interface Rule {
  rule: string;
  weight: Weight;
  /** When it speaks. */
  when: string;
  /** What it rests on; undefined where it follows from the format of the file itself. */
  source?: string;
}

const P = 'common practice';
const NUMBER_SOURCES = 'the form and the check digits of each number, named in the finding';

const row = (rule: string, weight: Weight, when: string, source?: string): Rule => ({
  rule,
  weight,
  when,
  ...(source !== undefined && { source }),
});

/** Every rule, by family, in the order in which the report is made. */
export const RULES: Readonly<Record<string, readonly Rule[]>> = {
  'Reading the list': [
    row(
      'list.column-unknown',
      'consider',
      'A heading means no known column; its cells are kept in the notes',
    ),
    row('list.column-doubled', 'should', 'Two headings mean the same column; one is kept in the notes'),
    row('list.heading-blank', 'should', 'A column without a heading has cells that are filled'),
    row('list.row-too-long', 'should', 'A row has cells beyond the last heading'),
    row('list.stray-quote', 'should', 'Text follows the quotation mark that closes a cell'),
    row('list.names-joined', 'consider', 'A cell seems to hold several names read as one'),
    row('list.number-only', 'consider', 'A row holds a number and nothing else'),
    row('list.quantity-unreadable', 'should', 'A quantity cannot be read, so the things are not counted'),
    row('list.size-unknown', 'should', 'A size in words that nobody knows, or far too large or small'),
    row('list.size-assumed', 'consider', 'Sizes have no unit, and one was assumed'),
    row('list.encoding-guessed', 'consider', 'The list is not in UTF-8, and its encoding was guessed'),
    row('list.above-headings', 'consider', 'Rows stand above the headings'),
    row('list.example', 'consider', 'The example of a new list still stands there'),
    row('list.ditto', 'should', 'A mark for “the same as above” stands in a cell', P),
    row('list.total-row', 'consider', 'The last row adds up those above it'),
    row('list.total-differs', 'should', 'The last row holds another sum than the quantities above it make'),
    row('list.no-such-heading', 'should', 'The settings speak of a heading that the list does not have'),
  ],
  'Reading a workbook': [
    row('list.sheets-as-series', 'consider', 'The list was read from several sheets'),
    row('list.sheet-left-out', 'consider', 'A sheet was not read'),
    row('list.row-hidden', 'consider', 'A row is hidden'),
    row('list.column-hidden', 'consider', 'A column is hidden'),
    row('list.merged', 'consider', 'Cells are merged'),
    row('list.comment-beside', 'consider', 'A comment stands on no thing'),
    row('list.cell-error', 'should', 'A cell holds an error'),
    row('list.formula-without-value', 'should', 'A cell holds a formula, and no value of it'),
    row('list.made-a-date', 'should', 'A spreadsheet has made a date of something else'),
    row('list.year-added', 'should', 'A spreadsheet has added the year to a day and a month'),
    row('list.year-as-days', 'should', 'A spreadsheet may have made a date of a year'),
    row('list.days-as-number', 'should', 'A number may be how a spreadsheet keeps a date'),
  ],
  'Reading collection.yaml': [
    row('settings.date-assumed', 'consider', 'A date can be read in several ways, and one was taken'),
    row('settings.relation-to-nobody', 'should', 'A relation names somebody who does not stand under people'),
    row('check.unknown-meaning', 'should', 'Words of one’s own are to mean something unknown'),
    row('check.unused-answer', 'consider', 'An answer is to a finding that is not made'),
  ],
  Description: [
    row(
      'description.repository-place',
      'must',
      'The place where the collection is kept is not given',
      'DACS 2.2',
    ),
    row('description.dates', 'must', 'The collection has no date', 'DACS 2.4, ISAD(G) 3.1.3'),
    row('description.creator', 'must', 'Nobody is named as creator of the collection', 'DACS 2.6'),
    row('description.scope', 'must', 'The collection has no scope and content', 'DACS 3.1, ISAD(G) 3.3.1'),
    row(
      'description.access',
      'must',
      'Nothing is said on who may see the collection',
      'DACS 4.1, ISAD(G) 3.4.1',
    ),
    row(
      'description.language',
      'must',
      'The language of the material is not known',
      'DACS 4.5, ISAD(G) 3.4.3',
    ),
    row('description.rights', 'must', 'Nothing is said on the rights in the description', 'DACS 8.2'),
    row('description.kinds', 'should', 'No thing of the list has a kind', 'DACS 2.5'),
    row('description.history', 'should', 'There is no biographical history', 'DACS 2.7, ISAD(G) 3.2.2'),
    row(
      'description.author',
      'should',
      'Nobody is named as author of the description',
      'DACS 8.1.5, ISAD(G) 3.7.1',
    ),
    row(
      'description.custody',
      'consider',
      'Nothing is said on who kept the things before',
      'DACS 5.1, ISAD(G) 3.2.3',
    ),
    row(
      'description.acquisition',
      'consider',
      'Nothing is said on how the keeper came by them',
      'DACS 5.2, ISAD(G) 3.2.4',
    ),
    row('description.use', 'consider', 'Nothing is said on copying and copyright', 'DACS 4.4, ISAD(G) 3.4.2'),
    row(
      'description.technical',
      'consider',
      'Things need a machine, and nothing is said on that',
      'DACS 4.3, ISAD(G) 3.4.4',
    ),
    row(
      'description.access-points',
      'consider',
      'No person, place or subject is named',
      'DACS chapter 1 (optimum)',
    ),
    row(
      'description.undeclared-language',
      'should',
      'The description is in another language than it says',
      'ISAAR(CPF) 5.4.7, EAD3 languagedeclaration',
    ),
    row(
      'description.series-scope',
      'consider',
      'A group has no scope and content',
      'DACS 3.1, ISAD(G) 3.3.1',
    ),
    row(
      'description.creator-unknown',
      'consider',
      'A creator does not stand under people',
      'DACS 2.6, 2.7, ISAD(G) 3.2.1',
    ),
    row(
      'description.no-date',
      'consider',
      'A thing has no date, nor the word undated',
      'DACS 2.4, ISAD(G) 3.1.3',
    ),
    row('description.no-kind', 'consider', 'A thing has no kind', 'DACS 2.5, ISAD(G) 3.1.5'),
    row('titles.say-nothing', 'should', 'A title does not say what the thing is', 'DACS 2.3'),
    row('titles.say-only-the-date', 'should', 'A title is only a date', 'DACS 2.3, 2.4'),
    row('titles.say-only-the-kind', 'consider', 'A title says only of what kind the thing is', 'DACS 2.3'),
    row('titles.repeat-the-date', 'consider', 'A title repeats the date of its column', 'DACS 2.3, 2.4'),
    row('words.unknown-kind', 'consider', 'A kind that is not known makes a group of its own'),
    row('words.uncounted', 'consider', 'A word for several has no quantity beside it', 'DACS 2.5'),
    row('words.unknown-language', 'should', 'A language of the list that is not known', 'ISO 639-2'),
    row(
      'words.unknown-language-of-all',
      'should',
      'A language of the settings that is not known',
      'ISO 639-2',
    ),
    row('words.taken-for-people', 'consider', 'Names of the list that were taken for people'),
    row('words.taken-for-organisations', 'consider', 'Names of the list that were taken for organisations'),
    row('words.open-yet-ending', 'should', 'What anybody may see has an end of its restriction', 'DACS 4.1'),
    row('groups.left-over', 'should', 'A thing fits no group', P),
    row('groups.unused-words', 'consider', 'There are words for a group that is not there'),
  ],
  Dates: [
    row('list.date-unreadable', 'should', 'A date stays words'),
    row('list.date-assumed', 'consider', 'A date can be read in several ways, and one was taken'),
    row(
      'dates.before-its-kind',
      'should',
      'A thing is dated before there was anything of its kind',
      'the first year of each kind, named in the finding',
    ),
    row(
      'dates.outside-the-whole',
      'should',
      'A thing is dated outside the dates of the collection',
      'DACS 2.4.9',
    ),
    row('dates.bulk-outside', 'should', 'Bulk dates are not within the inclusive dates', 'DACS 2.4.10'),
    row(
      'dates.restriction-before-the-thing',
      'should',
      'A restriction ends before the thing was made',
      'arithmetic',
    ),
    row('dates.before-birth', 'should', 'A thing is dated before the birth of its maker', 'arithmetic'),
    row('dates.after-death', 'should', 'A thing is dated after the death of its maker', 'arithmetic'),
    row('dates.life-backwards', 'should', 'Somebody died before the birth', 'arithmetic'),
    row('dates.life-too-long', 'should', 'Somebody would have lived longer than anybody known', 'arithmetic'),
  ],
  'Numbers and housing': [
    row('numbers.column-unknown', 'should', 'A heading of numbers.csv means no known column'),
    row(
      'numbers.changed-places',
      'must',
      'Titles stand at other numbers than when these were settled, as in a list that was numbered anew',
    ),
    row('numbers.used-again', 'must', 'A settled number stands at another thing than it was settled for', P),
    row('numbers.row-lost', 'must', 'A row of numbers.csv has been lost'),
    row(
      'numbers.perhaps-settled',
      'should',
      'A thing without a settled number looks like one whose number is missing from the list',
    ),
    row('numbers.gap', 'consider', 'A settled number belongs to nothing in the list'),
    row('numbers.other-box', 'should', 'The list and the settled numbers name different boxes'),
    row('numbers.outgrown', 'should', 'A settled thing is larger than the folder of its place', P),
    row('numbers.would-move', 'consider', 'A settled thing would now be sorted elsewhere', P),
    row('housing.no-box', 'should', 'A thing fits into none of the boxes at hand', P),
    row('housing.tight', 'should', 'The content of a settled box is thicker than the box is deep', P),
    row('housing.slack', 'consider', 'A box is so empty that its content would slump or fall', P),
    row('settle.given-up', 'should', 'An interrupted settling was given up, since a file had changed'),
  ],
  Runs: [
    row(
      'runs.incomplete',
      'consider',
      'Of what comes by year, month or number some are missing or there twice',
      'DACS 3.1, ISAD(G) 3.3.1; common practice',
    ),
  ],
  Doubles: [
    row('doubles.same-title', 'consider', 'Title, date and kind stand in the list more than once', P),
    row('doubles.near-title', 'consider', 'Titles are nearly the same', P),
    row('doubles.near-name', 'consider', 'Names are nearly the same', 'DACS 2.6; common practice'),
    row('doubles.near-place', 'consider', 'Places are nearly the same', P),
  ],
  'Digital copies': [
    row('copies.missing', 'must', 'A copy that the list names is not there', P),
    row('copies.empty', 'must', 'A copy is empty', P),
    row('copies.unreadable', 'must', 'A copy cannot be read', P),
    row('copies.not-a-file', 'must', 'A copy is a folder or something else that is no file', P),
    row('copies.leads-out', 'must', 'A copy is a link out of the catalogue folder', P),
    row(
      'copies.damaged',
      'should',
      'A copy breaks off',
      'The specification of each format, on how a file ends',
    ),
    row('copies.not-in-list', 'should', 'A file among the copies is named by no row', P),
    row(
      'copies.extension',
      'should',
      'The ending of the name contradicts the content',
      'The specification of each format, on how a file begins',
    ),
    row('copies.no-extension', 'consider', 'The name of a copy has no ending', P),
    row(
      'copies.format',
      'consider',
      'A form that is doubtful to keep',
      'common practice, after lists of preferred formats of national libraries; from memory',
    ),
    row(
      'copies.resolution',
      'should',
      'A scan is too coarse for the size of the thing',
      'FADGI technical guidelines for digitizing cultural heritage materials, two stars; from memory',
    ),
    row(
      'copies.location',
      'caution',
      'A photograph carries where it was taken',
      'Exif 2.32, 4.6.6 (from memory); common practice',
    ),
    row(
      'copies.name-unsafe',
      'should',
      'A name that another system refuses',
      'Naming rules of Windows for files, from memory',
    ),
    row(
      'copies.name-too-long',
      'should',
      'A name that is too long elsewhere',
      'Limits of file systems in use (NTFS, ext4, APFS), from memory',
    ),
    row(
      'copies.name-decomposed',
      'consider',
      'A name with accents in two pieces',
      'Unicode Standard Annex #15, form NFC',
    ),
    row(
      'copies.names-collide',
      'should',
      'Names that differ only in capitals or in the form of accents',
      'Naming rules of Windows and macOS for files, from memory',
    ),
    row(
      'copies.same-content',
      'should',
      'Two copies are the same to the byte',
      'The same SHA-256 (FIPS 180-4)',
    ),
    row('copies.shared', 'consider', 'Several rows name one copy', P),
  ],
  Private: [
    row(
      'records.may-be-living',
      'caution',
      'A birth less than a hundred years ago is given, and no death',
      P,
    ),
    row('records.separator-in-value', 'should', 'A text holds what parts the values in dublin-core.csv'),
    row(
      'private.may-be-living',
      'consider',
      'People named in the last hundred years with no birth or death noted',
      'common practice: 100 years',
    ),
    ...MATTERS.map(({ name, says, source }) =>
      row(
        `private.${name}`,
        'should',
        `${says}, perhaps of people who are living, and not held back`,
        source,
      ),
    ),
    row(
      'private.identity-number',
      'should',
      'The list itself holds a number that identifies somebody',
      NUMBER_SOURCES,
    ),
    row(
      'private.money-number',
      'should',
      'The list itself holds the number of an account or a card',
      NUMBER_SOURCES,
    ),
    row('private.contact', 'consider', 'The list itself holds a telephone number or an e-mail address', P),
    row(
      'private.no-end',
      'consider',
      'Private matter is held back without an end date',
      'DACS 4.1.5, from memory; common practice for the years',
    ),
    row('private.end-too-early', 'consider', 'Private matter opens while somebody may still be living', P),
    row(
      'private.restriction-ended',
      'consider',
      'A restriction has ended by its own date, and the list still calls it one',
      P,
    ),
    row(
      'access.end-not-under-until',
      'should',
      'Access names an end in words or figures, and the column “until” is blank',
      'DACS 4.1.5, from memory',
    ),
  ],
  'Handing over': [
    row(
      'access.family-only',
      'consider',
      'Access for the family only is taken to mean that a thing stays when the rest is handed over',
      P,
    ),
  ],
  'Danger and decay': HAZARDS.map(({ name, says, source }) => row(`danger.${name}`, 'caution', says, source)),
};
