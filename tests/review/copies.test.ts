import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Thing } from '../../src/catalogue/thing.ts';
import type { CopyFacts } from '../../src/copies/facts.ts';
import { reviewCopies } from '../../src/review/copies.ts';
import { someThing } from '../support/catalogue.ts';

type Facts = Omit<CopyFacts, 'path' | 'bytes'> & { bytes?: number };

/** A file with nothing wrong: a large JPEG, and no two the same. */
const good = (path: string): Facts => ({
  mediaType: 'image/jpeg',
  ...{ width: 4000, height: 3000 },
  sha256: Buffer.from(path.slice(-32)).toString('hex').padStart(64, '0'),
});

/** The findings on a list in which each copy stands in a row of its own, from row 2 on. */
function on(copies: Record<string, Facts | undefined>, unlisted: string[] = [], over: Partial<Thing> = {}) {
  const things = Object.keys(copies).map((path, at) => someThing({ row: at + 2, copies: [path], ...over }));
  return reviewCopies({ things }, factsOf(copies), unlisted);
}

function factsOf(copies: Record<string, Facts | undefined>): Map<string, CopyFacts> {
  return new Map(
    Object.entries(copies).map(([path, facts]) => [path, { path, bytes: 9, ...(facts ?? good(path)) }]),
  );
}

const MISSING: Facts = { bytes: 0, trouble: 'missing' };

test('where all is well, nothing is said', () => {
  expect(on({ 'copies/ferry.jpg': undefined, 'copies/orchard.jpg': undefined })).toEqual([]);
  expect(reviewCopies({ things: [someThing({ row: 2 })] }, new Map(), [])).toEqual([]);
});

test('an address on the web is not judged', () => {
  expect(on({ 'https://example.org/a:b?c': MISSING })).toEqual([]);
});

test('of a file that was not looked at only the name is judged', () => {
  const things = [someThing({ row: 2, copies: ['copies/ferry.jpg', 'copies/con.jpg'] })];
  expect(reviewCopies({ things }, new Map(), [])).toMatchObject([{ rule: 'copies.name-unsafe' }]);
});

describe('files that are not there, or no files', () => {
  test.each([
    ['missing', 'copies.missing', 'must'],
    ['empty', 'copies.empty', 'must'],
    ['unreadable', 'copies.unreadable', 'must'],
    ['not a file', 'copies.not-a-file', 'must'],
    ['leads out', 'copies.leads-out', 'must'],
    ['damaged', 'copies.damaged', 'should'],
  ] as const)('%s', (trouble, rule, weight) => {
    expect(on({ 'copies/a.jpg': undefined, 'copies/b.jpg': { bytes: 0, trouble } })).toMatchObject([
      { rule, weight, place: { file: 'list.csv', row: 3, column: 'copy' } },
    ]);
  });

  test.each([
    ['capitals', 'copies/Ferry.JPG', 'copies/ferry.jpg'],
    ['the ending', 'copies/ferry.jpeg', 'copies/ferry.jpg'],
    ['the ending, to another type', 'copies/ferry.jpg', 'copies/ferry.tif'],
    ['how an accent is encoded', 'copies/h\u00e9l\u00e8ne.jpg', 'copies/he\u0301le\u0300ne.jpg'],
    ['an accent', 'copies/helene.jpg', 'copies/hélène.jpg'],
    ['the folder', 'ferry.jpg', 'copies/box 1/ferry.jpg'],
    ['blanks and dashes', 'copies/ferry at landing.jpg', 'copies/ferry-at_landing.jpg'],
    ['a slip', 'copies/fery.jpg', 'copies/ferry.jpg'],
  ])('a name that differs by %s is proposed, and not said to be in no row', (_, written, meant) => {
    const findings = on({ [written]: MISSING }, [meant, 'copies/quite-another-thing.png']);
    expect(findings.map(({ rule }) => rule)).toEqual(['copies.missing', 'copies.not-in-list']);
    expect(findings[0]?.advice).toContain(`“${meant}”`);
    expect(findings[1]?.found).toContain('quite-another-thing');
  });

  test('nothing is proposed where nothing is like it', () => {
    const [finding] = on({ 'copies/ferry.jpg': MISSING }, ['copies/orchard-in-bloom.png']);
    expect(finding?.advice).not.toContain('meant');
  });

  test('a file of another row is proposed only where no file is without one', () => {
    const copies = { 'copies/ferry.jpg': undefined, 'copies/Ferry.jpg': MISSING };
    expect(on(copies).map(({ advice }) => advice)).toEqual([expect.stringContaining('“copies/ferry.jpg”')]);
    expect(on(copies, ['copies/FERRY.jpeg'])[0]?.advice).toContain('“copies/FERRY.jpeg”');
  });

  test('a file in no row', () => {
    expect(on({ 'copies/a.jpg': undefined }, ['copies/b.jpg'])).toMatchObject([
      { rule: 'copies.not-in-list', weight: 'should', place: { file: 'copies/b.jpg' } },
    ]);
  });
});

describe('many findings of one rule are one', () => {
  const many = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, at) => [`copies/${at}.jpg`, MISSING] as const));

  test('ten are said singly', () => {
    expect(on(many(10))).toHaveLength(10);
  });

  test('eleven are said in one, with the first few and the number', () => {
    const findings = on(many(11));
    expect(findings).toMatchObject([{ rule: 'copies.missing', place: { file: 'list.csv', column: 'copy' } }]);
    expect(findings[0]?.found).toMatch(/^11 copies .*“copies\/0\.jpg” \(row 2\).* and 6 more\.$/);
  });

  test('whatever the number, none is lost', () => {
    fc.assert(
      fc.property(fc.nat(60), (count) => {
        const findings = on(many(count));
        const [first] = findings;
        const said =
          findings.length === 1 && count > 1 ? Number(first?.found.split(' ')[0]) : findings.length;
        expect(said).toBe(count);
      }),
    );
  });

  test('twenty thousand copies, each with something wrong, in seconds', () => {
    const copies = Object.fromEntries(
      Array.from({ length: 20_000 }, (_, at): [string, Facts] => [
        `copies/con/${at}`,
        at % 2 === 0 ? MISSING : { mediaType: 'image/heic', hasLocation: true, sha256: '0'.repeat(64) },
      ]),
    );
    const unlisted = Array.from({ length: 20_000 }, (_, at) => `copies/un-${at}.jpg`);
    const began = performance.now();
    const findings = on(copies, unlisted);
    expect(performance.now() - began).toBeLessThan(10_000);
    expect(findings.length).toBeLessThan(20);
  });
});

describe('an ending that contradicts the content', () => {
  test.each([
    ['a.jpg', 'image/png', 'PNG picture by its content'],
    ['a.jpg', 'text/html', 'web page by its content'],
    ['a.tif', 'image/jpeg', 'TIFF picture by its name'],
    ['a.wav', 'audio/mpeg', 'MP3 recording by its content'],
    ['a.jpg', undefined, 'nothing that is known by its content'],
  ])('%s with %s', (path, mediaType, what) => {
    const facts = { ...good(path), ...(mediaType !== undefined && { mediaType }) };
    if (mediaType === undefined) delete facts.mediaType;
    const findings = on({ [path]: facts });
    expect(findings).toMatchObject([{ rule: 'copies.extension', weight: 'should' }]);
    expect(findings[0]?.found).toContain(what);
  });

  test.each([
    ['a.JPEG', 'image/jpeg'],
    ['a.tiff', 'image/tiff'],
    ['a.mov', 'video/mp4'],
    ['a.txt', 'text/html'],
    ['a.csv', 'text/plain'],
    ['a.xml', 'image/svg+xml'],
    ['a.docx', 'application/vnd.openxmlformats-officedocument.wordprocessingml.document'],
    ['a.scan', 'image/jpeg'],
    ['a.txt', undefined],
  ])('%s with %s does not', (path, mediaType) => {
    const facts = { ...good(path), ...(mediaType !== undefined && { mediaType }) };
    if (mediaType === undefined) delete facts.mediaType;
    expect(on({ [path]: facts })).toEqual([]);
  });

  test('no ending at all', () => {
    const findings = on({ 'copies/ferry': good('x') });
    expect(findings).toMatchObject([{ rule: 'copies.no-extension', weight: 'consider' }]);
    expect(findings[0]?.advice).toContain('.jpg');
    expect(on({ 'copies/ferry': { bytes: 9 } })).toEqual([]);
  });
});

describe('forms that are doubtful to keep', () => {
  test.each([
    ['copies/a.heic', 'image/heic'],
    ['copies/a.cr2', 'image/x-canon-cr2'],
    ['copies/a.psd', 'image/vnd.adobe.photoshop'],
    ['copies/a.doc', 'application/msword'],
  ])('%s', (path, mediaType) => {
    expect(on({ [path]: { ...good(path), mediaType } })).toMatchObject([
      { rule: 'copies.format', weight: 'consider' },
    ]);
  });

  test.each(['jpg', 'tif', 'png', 'jp2', 'pdf', 'wav', 'flac', 'mp4'])('a .%s is none', (ending) => {
    const types: Record<string, string> = {
      ...{ jpg: 'image/jpeg', tif: 'image/tiff', png: 'image/png', jp2: 'image/jp2', pdf: 'application/pdf' },
      ...{ wav: 'audio/vnd.wave', flac: 'audio/flac', mp4: 'video/mp4' },
    };
    const mediaType = types[ending] ?? '';
    expect(on({ [`copies/a.${ending}`]: { ...good('a'), mediaType } })).toEqual([]);
  });

  test('with the like in a better form beside it in the row, it is fine', () => {
    const copies = ['copies/IMG_7.HEIC', 'copies/made/img_7.jpg', 'copies/IMG_8.HEIC'];
    const heic = (path: string): Facts => ({ ...good(path), mediaType: 'image/heic' });
    const facts = factsOf({
      'copies/IMG_7.HEIC': heic('7'),
      'copies/made/img_7.jpg': undefined,
      'copies/IMG_8.HEIC': heic('8'),
    });
    const findings = reviewCopies({ things: [someThing({ row: 2, copies })] }, facts, []);
    expect(findings).toMatchObject([{ rule: 'copies.format' }]);
    expect(findings[0]?.found).toContain('IMG_8');
  });
});

test('a picture that tells where it was made is a caution, one that does not is none', () => {
  const copies = { 'copies/a.jpg': { ...good('a'), hasLocation: true }, 'copies/b.jpg': undefined };
  const findings = on(copies);
  expect(findings).toMatchObject([{ rule: 'copies.location', weight: 'caution', place: { row: 2 } }]);
});

describe('the same copy twice', () => {
  test('under two names', () => {
    const same = good('same');
    const findings = on({ 'copies/a.jpg': same, 'copies/b.jpg': same, 'copies/c.jpg': undefined });
    expect(findings).toMatchObject([{ rule: 'copies.same-content', weight: 'should', place: { row: 3 } }]);
    expect(findings[0]?.found).toContain('“copies/a.jpg” in row 2');
  });

  test('in two rows, but not twice in one', () => {
    const facts = factsOf({ 'copies/a.jpg': undefined });
    const things = [2, 7].map((row) => someThing({ row, copies: ['copies/a.jpg'] }));
    expect(reviewCopies({ things }, facts, [])).toMatchObject([
      { rule: 'copies.shared', weight: 'consider' },
    ]);
    const twice = [someThing({ row: 2, copies: ['copies/a.jpg', 'copies/a.jpg'] })];
    expect(reviewCopies({ things: twice }, facts, [])).toEqual([]);
  });

  test('empty files are alike without being the same, and so are files without a check sum', () => {
    const empty: Facts = { bytes: 0, sha256: 'e'.repeat(64) };
    expect(on({ 'a.scan': empty, 'b.scan': empty, 'c.scan': { bytes: 5 }, 'd.scan': { bytes: 5 } })).toEqual(
      [],
    );
  });

  test('a file that is in no row, and the same as one that is', () => {
    const things = [someThing({ row: 2, copies: ['copies/a.jpg'] })];
    const facts = factsOf({ 'copies/a.jpg': good('x'), 'copies/a (1).jpg': good('x') });
    const rules = reviewCopies({ things }, facts, ['copies/a (1).jpg']).map(({ rule }) => rule);
    expect(rules).toEqual(['copies.not-in-list', 'copies.same-content']);
  });
});
