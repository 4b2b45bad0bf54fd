import { describe, expect, test } from 'vitest';
import { readList } from '../../src/intake/list.ts';

const people = [
  { name: 'Pip Rook', also: ['Pippa'], born: '1920-05-14' },
  { name: 'Ada Quill', born: '1890' },
  { name: 'Nils Heron' },
];

/** The EDTF of the date in the first row, and what is said of it. */
function readRow(cells: string): [string, string] {
  const list = `title,date,kind,creator,people\nThing,${cells}\n`;
  const { things, findings } = readList(Buffer.from(list), 'list.csv', { dates: { people } });
  const reading = things[0]?.date?.reading;
  const said = findings.map(({ found }) => found).join(' ');
  return [reading?.kind === 'date' ? reading.edtf : (reading?.kind ?? 'none'), said];
}

// Arithmetic: from the seventh birthday to the day before the eighth.
const SEVEN = '1927-05-14~/1928-05-13~';

describe('an age without a name is that of', () => {
  test.each([
    ['the only creator', 'aged 7,letter,Pip Rook,Ada Quill'],
    ['the only person, where nobody made it', 'aged 7,letter,,Pip Rook'],
    ['somebody by another name', '7 years old,letter,Pippa,'],
    ['who is shown on a photograph', 'aged 7,photo,Ada Quill,Pip Rook'],
  ])('%s', (_, cells) => {
    const [edtf, said] = readRow(cells);
    expect(edtf).toBe(SEVEN);
    expect(said).toContain('This is taken as the age of Pip Rook.');
  });

  test('a birthday is a day', () => {
    expect(readRow('7th birthday,card,,Pip Rook')[0]).toBe('1927-05-14');
    expect(readRow('her 7th birthday,card,,Pip Rook')[0]).toBe('1927-05-14');
  });

  test.each([
    ['several who made it', 'aged 7,drawing,Ada Quill; Pip Rook,', 'as in “Ada Quill aged 7”'],
    ['several people', 'aged 7,drawing,,Nils Heron; Pip Rook', 'as in “Pip Rook aged 7”'],
    ['nobody', 'aged 7,drawing,,', 'as in “Pip Rook aged 7”'],
    [
      'somebody of no known birth',
      'aged 7,drawing,Nils Heron,',
      'as it seems of Nils Heron, whose birth date',
    ],
  ])('nobody where the row names %s, which is said', (_, cells, expected) => {
    const [edtf, said] = readRow(cells);
    expect(edtf).toBe('unreadable');
    expect(said).toContain(expected);
    expect(said).not.toContain('of nobody');
  });

  test('two rows with the same words and other people are not confused', () => {
    const list = 'title,date,people\nOne,aged 7,Pip Rook\nTwo,aged 7,Ada Quill\nThree,aged 7,Pip Rook\n';
    const { things } = readList(Buffer.from(list), 'list.csv', { dates: { people } });
    const dates = things.map(({ date }) => (date?.reading.kind === 'date' ? date.reading.edtf : undefined));
    expect(dates).toEqual([SEVEN, '1897~/1898~', SEVEN]);
  });
});
