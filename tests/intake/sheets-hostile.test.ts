import { createServer } from 'node:http';
import { constants, deflateRawSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readList } from '../../src/intake/list.ts';
import { makeWorkbook } from './make-workbook.ts';

/** Reads a list and says what was found, how long it took, in seconds, and by how much the memory grew, in megabytes. */
function measured(bytes: Uint8Array, file = 'list.xlsx') {
  const before = process.resourceUsage().maxRSS;
  const start = performance.now();
  const { things, findings } = readList(bytes, file);
  const seconds = (performance.now() - start) / 1000;
  const grown = (process.resourceUsage().maxRSS - before) / 1024;
  return {
    things,
    rules: findings.map(({ rule }) => rule),
    found: findings.map(({ found }) => found),
    seconds,
    grown,
  };
}

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const plain = (parts: Record<string, string | Uint8Array> = {}) =>
  makeWorkbook([{ rows: [['title'], ['A letter']] }], { parts });
const sheet = (data: string, before = '') =>
  plain({ 'xl/worksheets/sheet1.xml': `${before}<worksheet ${MAIN}>${data}</worksheet>` });
const rows = (inside: string) => `<sheetData>${inside}</sheetData>`;
const cell = (at: string, text: string) => `<c r="${at}" t="str"><v>${text}</v></c>`;

/**
 * A workbook whose sheet is 500 megabytes of blanks: one block of DEFLATE (RFC 1951), written ten times, and an empty last
 * one. `claim` is what the directory says of its size.
 */
function bomb(claim: number): Uint8Array {
  const block = deflateRawSync(Buffer.alloc(50_000_000, ' '), { finishFlush: constants.Z_FULL_FLUSH });
  const packed = Buffer.concat([...Array.from({ length: 10 }, () => block), deflateRawSync(Buffer.alloc(0))]);
  const name = 'xl/worksheets/sheet1.xml';
  const bytes = Buffer.from(plain({ [name]: '' }));
  // PKWARE APPNOTE 4.3.7, 4.3.12, 4.3.16: the sheet goes before everything else, so all other parts move.
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  const moved = Buffer.concat([header, packed, bytes]);
  const by = header.length + packed.length;
  const end = moved.length - 22;
  moved.writeUInt32LE(bytes.readUInt32LE(bytes.length - 6) + by, end + 16);
  let at = moved.readUInt32LE(end + 16);
  for (let count = moved.readUInt16LE(end + 10); count > 0; count--) {
    const length = moved.readUInt16LE(at + 28);
    if (moved.toString('latin1', at + 46, at + 46 + length) === name) {
      moved.writeUInt16LE(8, at + 10);
      moved.writeUInt32LE(packed.length, at + 20);
      moved.writeUInt32LE(claim, at + 24);
      moved.writeUInt32LE(0, at + 42);
    } else moved.writeUInt32LE(moved.readUInt32LE(at + 42) + by, at + 42);
    at += 46 + length + moved.readUInt16LE(at + 30) + moved.readUInt16LE(at + 32);
  }
  return moved;
}

describe('a bomb', () => {
  it.each([
    ['says so', 500_000_000, 'workbook.too-large', /unpacks to over 400 megabytes/],
    ['says it is 4 gigabytes', 0xfffffffe, 'workbook.too-large', /unpacks to over 400 megabytes/],
    ['says it is small', 1000, 'workbook.broken', /more than the file says/],
  ])('of 500 megabytes in a small file that %s is refused and does not go off', (_, claim, rule, words) => {
    const bytes = bomb(claim);
    expect(bytes.length).toBeLessThan(600_000);
    const { rules, found, seconds, grown } = measured(bytes);
    expect(rules).toEqual([rule]);
    expect(found[0]).toMatch(words);
    expect(seconds).toBeLessThan(1);
    expect(grown).toBeLessThan(100);
  });

  it('of twenty thousand parts is refused', () => {
    const parts = Array.from({ length: 20_000 }, (_, at): [string, Uint8Array] => [
      `p${at}`,
      new Uint8Array(),
    ]);
    const { rules, seconds } = measured(zipSync(Object.fromEntries(parts)));
    expect(rules).toEqual(['workbook.too-large']);
    expect(seconds).toBeLessThan(1);
  });

  it('inside a bomb stays packed', () => {
    const inner = zipSync({ 'a.xml': new Uint8Array(1_000_000) });
    expect(measured(plain({ 'xl/embeddings/inner.zip': inner })).things).toHaveLength(1);
  });
});

describe('a file that was cut or changed', () => {
  const whole = plain();
  it('is refused wherever it is cut, and never read as something else', () => {
    for (let at = 0; at < whole.length; at += 7) {
      const { things, rules } = measured(whole.subarray(0, at));
      expect(things).toEqual([]);
      expect(rules.length).toBeGreaterThan(0);
    }
  });

  it('is read or refused with a word, whichever byte is changed', () => {
    for (let at = 0; at < whole.length; at += 3) {
      const changed = whole.slice();
      changed[at] = (changed[at] ?? 0) ^ 0x55;
      const { things, rules } = measured(changed);
      // Each part has a sum to check it by; in the names and times of the parts, a change may mean nothing.
      if (things.length > 0) expect(things.map(({ title }) => title)).toEqual(['A letter']);
      else expect(rules.length).toBeGreaterThan(0);
    }
  });
});

describe('XML that is not what it seems', () => {
  // ECMA-376 Part 2, 8.1.4: no document type in the parts of a package.
  const LAUGHS = `<!DOCTYPE w [<!ENTITY a "ha">${Array.from({ length: 9 }, (_, at) => `<!ENTITY ${'bcdefghij'[at]} "${`&${'abcdefghi'[at]};`.repeat(10)}">`).join('')}]>`;
  it.each<[string, Uint8Array]>([
    ['entities that multiply', sheet(rows(`<row r="1">${cell('A1', '&j;')}</row>`), LAUGHS)],
    [
      'an entity that is a file',
      sheet(
        rows(`<row r="1">${cell('A1', '&x;')}</row>`),
        '<!DOCTYPE w [<!ENTITY x SYSTEM "file:///etc/passwd">]>',
      ),
    ],
    ['an entity that nobody declared', sheet(rows(`<row r="1">${cell('A1', '&x;')}</row>`))],
    ['a number that is no character', sheet(rows(`<row r="1">${cell('A1', '&#x110000;')}</row>`))],
    ['a tag that never ends', sheet('<sheetData a="')],
    ['elements that do not end', sheet(rows('<row r="1">'))],
    [
      'bytes that are not UTF-8',
      plain({
        'xl/worksheets/sheet1.xml': Uint8Array.from([0x3c, 0x61, 0x3e, 0xff, 0x3c, 0x2f, 0x61, 0x3e]),
      }),
    ],
  ])('%s: refused', (_, bytes) => {
    const { things, rules, seconds } = measured(bytes);
    expect(things).toEqual([]);
    expect(rules).toEqual(['workbook.broken']);
    expect(seconds).toBeLessThan(1);
  });

  it('a million elements, one in the other: read as what they are', () => {
    const deep = `${'<x>'.repeat(1_000_000)}${'</x>'.repeat(1_000_000)}`;
    const { things, seconds } = measured(
      sheet(rows(`<row r="1">${cell('A1', 'title')}</row><row r="2">${cell('A2', 'a')}</row>`) + deep),
    );
    expect(things).toHaveLength(1);
    expect(seconds).toBeLessThan(5);
  });
});

describe('a sheet without measure', () => {
  const two = `<row r="1">${cell('A1', 'title')}</row><row r="2">${cell('A2', 'a')}</row>`;
  it('that claims 2^20 rows and 2^14 columns is read for what is in it', () => {
    const { things, seconds, grown } = measured(sheet(`<dimension ref="A1:XFD1048576"/>${rows(two)}`));
    expect(things).toHaveLength(1);
    expect(seconds).toBeLessThan(1);
    expect(grown).toBeLessThan(100);
  });

  it('with 2^20 rows, each empty, is read', () => {
    const empty = Array.from({ length: (1 << 20) - 2 }, (_, at) => `<row r="${at + 3}"/>`).join('');
    const { things, seconds } = measured(sheet(rows(two + empty)));
    expect(things).toHaveLength(1);
    expect(seconds).toBeLessThan(10);
  }, 60_000);

  it.each([
    ['a row beyond the last', rows(`${two}<row r="1048577">${cell('A1048577', 'b')}</row>`)],
    ['a column beyond the last', rows(`${two}<row r="3">${cell('ZZZZZZ3', 'b')}</row>`)],
    [
      'its cells in the last column of 5,000 rows',
      rows(
        two +
          Array.from(
            { length: 5000 },
            (_, at) => `<row r="${at + 3}">${cell(`XFD${at + 3}`, 'b')}</row>`,
          ).join(''),
      ),
    ],
  ])('with %s is refused', (_, data) => {
    const { rules, seconds, grown } = measured(sheet(data));
    expect(rules).toEqual(['workbook.too-large']);
    expect(seconds).toBeLessThan(5);
    expect(grown).toBeLessThan(600);
  });

  it('with everything merged a thousand times is read or refused in time', () => {
    const many = Array.from(
      { length: 2000 },
      (_, at) =>
        `<row r="${at + 1}">${cell(`A${at + 1}`, at === 0 ? 'title' : `t${at}`)}${cell(`B${at + 1}`, 'x')}</row>`,
    );
    const merged = Array.from({ length: 5000 }, () => '<mergeCell ref="A2:XFD1048576"/>').join('');
    const { seconds } = measured(sheet(`${rows(many.join(''))}<mergeCells>${merged}</mergeCells>`));
    expect(seconds).toBeLessThan(5);
  });
});

describe('an ODS without measure', () => {
  const NS =
    'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"';
  const ods = (inside: string) =>
    zipSync({
      'content.xml': strToU8(
        `<office:document-content ${NS}><office:body><office:spreadsheet><table:table table:name="List">${inside}</table:table></office:spreadsheet></office:body></office:document-content>`,
      ),
    });
  const text = (words: string, more = '') =>
    `<table:table-cell office:value-type="string"${more}><text:p>${words}</text:p></table:table-cell>`;
  const head = `<table:table-row>${text('title')}</table:table-row><table:table-row>${text('a')}</table:table-row>`;

  it('whose last row stands for 2^20 empty ones is read', () => {
    const { things, seconds } = measured(
      ods(
        `${head}<table:table-row table:number-rows-repeated="1048574"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>`,
      ),
      'list.ods',
    );
    expect(things).toHaveLength(1);
    expect(seconds).toBeLessThan(1);
  });

  it.each([
    ['rows', `<table:table-row table:number-rows-repeated="99999999">${text('b')}</table:table-row>`],
    [
      'columns',
      `<table:table-row>${text('b', ' table:number-columns-repeated="99999999"')}</table:table-row>`,
    ],
    [
      'cells',
      `<table:table-row table:number-rows-repeated="1000000">${text('b', ' table:number-columns-repeated="16000"')}</table:table-row>`,
    ],
  ])('whose cells stand for too many %s is refused', (_, row) => {
    const { rules, seconds, grown } = measured(ods(head + row), 'list.ods');
    expect(rules).toEqual(['workbook.too-large']);
    expect(seconds).toBeLessThan(5);
    expect(grown).toBeLessThan(600);
  });
});

describe('what calls out', () => {
  let asked = 0;
  const server = createServer((_, answer) => {
    asked++;
    answer.end();
  });
  beforeAll(() => new Promise<void>((done) => server.listen(0, '127.0.0.1', done)));
  afterAll(() => server.close());

  it('is neither carried out nor fetched: formulas, links, other workbooks, queries', async () => {
    const address = server.address();
    const url = `http://127.0.0.1:${typeof address === 'object' ? address?.port : 0}/x`;
    const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const bytes = makeWorkbook(
      [
        {
          rows: [
            ['title', 'note'],
            ['a', { formula: `WEBSERVICE("${url}")`, value: 'kept' }],
            ['b', { formula: `IMAGE("${url}")` }],
          ],
        },
      ],
      {
        parts: {
          'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="${OFFICE}/comments" Target="${url}" TargetMode="External"/><Relationship Id="r2" Type="${OFFICE}/comments" Target="../../../../etc/passwd"/></Relationships>`,
          'xl/externalLinks/externalLink1.xml': `<externalLink ${MAIN}/>`,
          'xl/connections.xml': `<connections ${MAIN}><connection id="1" refreshOnLoad="1"><webPr url="${url}"/></connection></connections>`,
        },
      },
    );
    const { things } = readList(bytes, 'list.xlsx');
    expect(things.map(({ note }) => note)).toEqual(['kept', undefined]);
    await new Promise((done) => setTimeout(done, 50));
    expect(asked).toBe(0);
  });
});
