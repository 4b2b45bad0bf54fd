import { describe, expect, it } from 'vitest';
import { readList } from '../../src/intake/list.ts';
import type { Known } from '../../src/intake/things.ts';

const read = (text: string, known?: Known) => readList(Buffer.from(text), 'list.csv', known);
const rules = (text: string) =>
  read(text).findings.map(
    ({ rule, weight, place }) => `${weight} ${rule}, row ${place.row}, ${place.column ?? ''}`,
  );

describe('the list', () => {
  it('becomes things, in everyday columns and any order', () => {
    const { things, findings } = read(
      [
        'Who,What,When,How many,By,Where,Lang.,Scan,Shelf mark,No.',
        '"Ada Quill; Nils Quill","A letter about\nthe ferry",1952-05-14,2,Ada Quill,Sallow Reach,English; Norwegian,copies\\a.jpg,top,7',
        ',A quilt,,,,,,,,',
      ].join('\r\n'),
    );
    expect(things).toEqual([
      {
        row: 2,
        number: '7',
        title: 'A letter about the ferry',
        date: { written: '1952-05-14', reading: { kind: 'date', edtf: '1952-05-14', assumed: [] } },
        people: ['Ada Quill', 'Nils Quill'],
        creators: ['Ada Quill'],
        places: ['Sallow Reach'],
        quantity: 2,
        copies: ['copies/a.jpg'],
        languages: ['English', 'Norwegian'],
        extra: [{ heading: 'Shelf mark', text: 'top' }],
      },
      {
        row: 3,
        title: 'A quilt',
        people: [],
        creators: [],
        places: [],
        copies: [],
        languages: [],
        extra: [],
      },
    ]);
    expect(findings.map(({ rule }) => rule)).toEqual(['list.column-unknown']);
  });

  it('fills every column that has a meaning', () => {
    const columns =
      'number,title,date,kind,people,place,occasion,description,quantity,size,condition,access,until,note,copy,series,folder,box,language,creator';
    const { things, findings } = read(
      `${columns}\n1,a,1950,letter,b,c,d,"e\n\nf",about 3,10 cm,torn,closed,2040,g,h.jpg,i,j,k,English,l\n`,
    );
    expect(findings).toEqual([]);
    const year = (edtf: string) => ({ written: edtf, reading: { kind: 'date', edtf, assumed: [] } });
    expect(things).toEqual([
      {
        ...{
          row: 2,
          number: '1',
          title: 'a',
          date: year('1950'),
          kind: 'letter',
          people: ['b'],
          places: ['c'],
        },
        ...{ occasion: 'd', description: 'e\n\nf', quantity: 3, quantityApproximate: true, size: '10 cm' },
        ...{
          condition: 'torn',
          access: 'closed',
          until: year('2040'),
          note: 'g',
          copies: ['h.jpg'],
          series: 'i',
        },
        ...{ folder: 'j', box: 'k', languages: ['English'], creators: ['l'], extra: [] },
      },
    ]);
  });

  it('without a title in a row: the row is said, and what it holds', () => {
    const { things, findings } = read('title,date,note\na,1950,\n,1951,"the blue\none"\n');
    expect(things).toHaveLength(1);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      weight: 'must',
      place: { file: 'list.csv', row: 3, column: 'title' },
    });
    expect(findings[0]?.found).toMatch(/“1951”, “the blue one”/);
  });

  it('leaves out rows that were only numbered beforehand, and says which', () => {
    const { things, findings } = read('number,title\n1,a\n2,\n3,\n4,\n');
    expect(things.map(({ row }) => row)).toEqual([2]);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ rule: 'list.number-only', weight: 'consider', place: { row: 3 } });
    expect(findings[0]?.found).toContain('row 5');
  });

  it('with a number twice: both rows are said, once for each number', () => {
    const { findings } = read('number,title\n1,a\n2,b\n1,c\n02,d\n1,e\n');
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      rule: 'list.number-twice',
      weight: 'must',
      place: { row: 2, column: 'number' },
    });
    expect(findings[0]?.found).toMatch(/“1”.*row 2 .*rows 4, 6/);
  });

  it('keeps what a quantity says that is none', () => {
    const { things, findings } = read('title,how many\na,a boxful\n');
    expect(things[0]?.quantity).toBeUndefined();
    expect(things[0]?.extra).toEqual([{ heading: 'how many', text: 'a boxful' }]);
    expect(findings[0]).toMatchObject({ weight: 'should', place: { row: 2, column: 'quantity' } });
    expect(findings[0]?.found).toContain('“a boxful”');
  });

  it('keeps the words of a date that cannot be read, and says what would be', () => {
    const { things, findings } = read('title,when,closed until\na,when the heifer swam across,whenever\n');
    expect(things[0]?.date).toMatchObject({
      written: 'when the heifer swam across',
      reading: { kind: 'unreadable' },
    });
    expect(findings.map(({ rule, weight, place }) => [rule, weight, place.row, place.column])).toEqual([
      ['list.date-unreadable', 'should', 2, 'date'],
      ['list.date-unreadable', 'should', 2, 'until'],
    ]);
    expect(findings[0]?.found).toContain('“when the heifer swam across”');
    expect(findings[0]?.advice).toContain('1962-05-14');
  });

  it('keeps cells beyond the last heading', () => {
    const { things, findings } = read('title,place\nA letter,Sallow Reach,from Ada, x\n');
    expect(things[0]?.extra).toEqual([
      { heading: 'Column C', text: 'from Ada' },
      { heading: 'Column D', text: 'x' },
    ]);
    expect(findings[0]).toMatchObject({ rule: 'list.row-too-long', weight: 'should', place: { row: 2 } });
  });

  it('keeps filled cells without a heading, and says so once', () => {
    const { things, findings } = read('title,,\na,,\nb,x,\nc,y,\n');
    expect(things.map(({ extra }) => extra)).toEqual([
      [],
      [{ heading: 'Column B', text: 'x' }],
      [{ heading: 'Column B', text: 'y' }],
    ]);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ rule: 'list.heading-blank', weight: 'should', place: { row: 1 } });
    expect(findings[0]?.found).toMatch(/Column B .* row 3/);
  });

  it('reports an open quotation mark together with all that comes before it', () => {
    expect(rules('title,when\na,x\n"b,1950\n')).toEqual([
      'should list.date-unreadable, row 2, date',
      'must list.unclosed-quote, row 3, ',
    ]);
    expect(rules('titel\n"b\n').at(-1)).toBe('must list.unclosed-quote, row 2, ');
  });

  it('refuses a copy outside the folder', () => {
    const { things, findings } = read('title,scan\na,copies/a.jpg; ../b.jpg\n');
    expect(things[0]?.copies).toEqual(['copies/a.jpg']);
    expect(findings[0]).toMatchObject({ weight: 'must', place: { row: 2, column: 'copy' } });
    expect(findings[0]?.found).toContain('“../b.jpg”');
  });

  it('points out names that may be two, once for each column', () => {
    const text = 'title,who,by\na,Ada & Nils Quill,\nb,Ada and Tom,Ada + Nils\nc,Quill & Sons,\n';
    const { things, findings } = read(text, { names: ['Quill & Sons'] });
    expect(things.map(({ people }) => people)).toEqual([
      ['Ada & Nils Quill'],
      ['Ada and Tom'],
      ['Quill & Sons'],
    ]);
    expect(findings.map(({ rule, place }) => [rule, place.row, place.column])).toEqual([
      ['list.names-joined', 2, 'people'],
      ['list.names-joined', 3, 'creator'],
    ]);
    expect(findings[0]?.found).toContain('1 more');
  });

  // Common practice: no reader wants a date told twice, nor a decade in the words of a finding aid.
  it('says once how a date was read', () => {
    const found = (written: string) => read(`title,when\na,${written}\n`).findings.map((one) => one.found);
    expect(found('late 1950s')).toEqual(['The date “late 1950s” was read as circa 1957-1959.']);
    expect(found('late 1950s to 1963')).toEqual([
      'The date “late 1950s to 1963” was read as [circa 1957]-1963: This is taken as 1957-1959.',
    ]);
    expect(found('1900s')).toEqual([
      'The date “1900s” is in doubt: It may be 20th century, or 1900-1909. It may be a decade or a century; write “1900-1909” or “20th century”.',
    ]);
  });

  it('finds two people parted by a comma, and no firm', () => {
    const names = ['"Hattie Rook, Elsie Rook"', 'Hask & Sons', '"Quill, Ada Mary"'];
    const { findings } = read(`title,who\n${names.map((name) => `a,${name}\n`).join('')}`);
    expect(findings).toMatchObject([
      {
        rule: 'list.names-joined',
        place: { row: 2 },
        found: '“Hattie Rook, Elsie Rook” was read as one name.',
      },
    ]);
  });

  it('reports everything at once, down the list', () => {
    const text = 'no,title,when,colour,colour\n1,a\u0001,x,,\n1,,1950,,\n2,b,,,,over\n';
    expect(rules(text)).toEqual([
      'must list.column-twice, row 1, ',
      'consider list.column-unknown, row 1, ',
      'must list.forbidden-character, row 2, title',
      'should list.date-unreadable, row 2, date',
      'must list.no-title, row 3, title',
      'should list.row-too-long, row 4, ',
    ]);
  });

  it('gives the very same strings and lists to cells that say the same', () => {
    const { things } = read(
      'title,who,kind\na,Ada Quill; Nils Quill,letter\nb,Ada Quill; Nils Quill,letter\n',
    );
    expect(things[0]?.people).toBe(things[1]?.people);
  });
});

describe('the languages of the list', () => {
  it('are those in which its dates may be', () => {
    const list =
      'title,date,language\nBrief,Weihnachten 1955,German\nCarta,12 de mayo de 1922,Spanish\nAnd,Sommer 1925,\n';
    const { things } = readList(Buffer.from(list), 'list.csv');
    expect(things.map(({ date }) => date?.reading)).toMatchObject([
      { edtf: '1955-12-25' },
      { edtf: '1922-05-12' },
      { edtf: '1925-22' },
    ]);
  });
});
