import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HousingSettings, housingSettings } from '../../src/catalogue/housing-settings.ts';
import { readBoxMeasures } from '../../src/housing/box-measures.ts';
import { BOXES } from '../../src/housing/boxes.ts';
import { roomIn } from '../../src/housing/fill-boxes.ts';
import { HOLDERS } from '../../src/housing/holders.ts';
import { SHELVES } from '../../src/housing/model.ts';
import { readName } from '../../src/housing/names-of-stock.ts';
import { stockFrom } from '../../src/housing/stock.ts';

const settings = (some: Partial<HousingSettings> = {}): HousingSettings => ({
  ...housingSettings.parse({}),
  ...some,
});
const own = (inside: string, more = {}) => ({
  name: 'Tea chest',
  inside,
  flat: false,
  for: ['papers'],
  ...more,
});
const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);
const papers = ({ boxes }: ReturnType<typeof stockFrom>) =>
  ids(boxes.filter(({ takes }) => takes.includes('papers')));

describe('the stock', () => {
  // Countries in which paper is letter: Unicode CLDR, paperSize, from memory.
  it.each([
    ['US', 'folder-letter', 'document-box-legal'],
    ['CA', 'folder-legal', 'document-box-letter'],
    ['PH', 'folder-legal', 'document-box-letter'],
    ['NO', 'folder-a4', 'document-box-foolscap'],
    ['GB', 'folder-foolscap', 'document-box-a4'],
    [undefined, 'folder-a4', 'document-box-a4'],
  ])('of %s has the usual folders and boxes for its paper', (country, folder, box) => {
    const { holders, boxes, findings } = stockFrom(settings(), country);
    expect(findings).toEqual([]);
    expect(ids(holders)).toContain(folder);
    expect(ids(boxes)).toContain(box);
    expect(ids(holders).includes('folder-letter')).toBe(!ids(holders).includes('folder-a4'));
  });

  it('has a box for every shelf, and a box for every folder', () => {
    for (const country of ['US', 'DE']) {
      const { holders, boxes } = stockFrom(settings(), country);
      for (const shelf of SHELVES)
        expect(
          boxes.some(({ takes }) => takes.includes(shelf)),
          shelf,
        ).toBe(true);
      for (const { type, shelf, outside, id } of holders) {
        if (type !== 'folder') continue;
        expect(
          boxes.some((box) => roomIn(box, [], { shelf, outside, thickness: 1 })),
          id,
        ).toBe(true);
      }
    }
  });

  it('takes heavy cartons and plan chests only where they are named', () => {
    expect(ids(stockFrom(settings(), 'US').boxes)).not.toContain('record-carton');
    expect(papers(stockFrom(settings({ boxes: ['record carton'] }), 'US'))).toEqual(['record-carton']);
    const { holders } = stockFrom(settings({ boxes: ['drawers of a plan chest'] }), 'US');
    expect(ids(holders)).toContain('folder-36x48');
  });

  it('uses what is named in place of what would serve for the same, and the usual for all else', () => {
    const stock = stockFrom(
      settings({ folders: ['letter folders'], boxes: ['Half letter document box'] }),
      'US',
    );
    expect(papers(stock)).toEqual(['half-document-box-letter']);
    const folders = stock.holders.filter(({ type, shelf }) => type === 'folder' && shelf === 'papers');
    expect(ids(folders)).toEqual(['folder-letter']);
    expect(ids(stock.holders)).toEqual(
      expect.arrayContaining(['folder-16x20', 'page-slides', 'record-sleeve-12']),
    );
    expect(ids(stock.boxes)).toEqual(expect.arrayContaining(['flat-box-16x20', 'volume-box']));
  });

  it('leaves out folders for which the boxes named are too small', () => {
    const { holders, findings } = stockFrom(settings({ boxes: ['document-box-letter'] }), 'US');
    expect(findings).toEqual([]);
    expect(ids(holders)).toContain('folder-letter');
    expect(ids(holders)).not.toContain('folder-legal');
  });

  it('takes the greatest thickness from the settings for folders of papers, not for large ones', () => {
    const { holders } = stockFrom(settings({ thickness: 25 }), 'US');
    expect(holders.find(({ id }) => id === 'folder-letter')?.limit).toBe(25);
    expect(holders.find(({ id }) => id === 'folder-16x20')?.limit).toBe(
      HOLDERS.find(({ id }) => id === 'folder-16x20')?.limit,
    );
  });

  it.each([
    ['legal-size file folder', 'folder-legal'],
    ['Folders, letter', 'folder-letter'],
    ['legal', 'folder-legal'],
    ['large folder 16 x 20', 'folder-16x20'],
    ['large folders, 16 × 20 in', 'folder-16x20'],
    ['folder-a4', 'folder-a4'],
    ['slides', 'page-slides'],
  ])('reads “%s”', (name, id) => {
    expect(readName(name, HOLDERS)).toMatchObject({ row: { id } });
  });

  it('reads every id and name of its tables, in whatever case', () => {
    for (const rows of [HOLDERS, BOXES]) {
      for (const { id, one, many } of rows) {
        for (const name of [id, one, many, one.toUpperCase()]) {
          expect(readName<{ id: string; one: string; many: string }>(name, rows), name).toMatchObject({
            row: { id },
          });
        }
      }
    }
  });

  it('proposes what may be meant', () => {
    const { findings } = stockFrom(
      settings({ folders: ['leter folder'], boxes: ['document box', 'coffin'] }),
      'US',
    );
    expect(findings.map(({ rule, weight, place }) => [rule, weight, place.file])).toEqual([
      ['housing.unknown-box', 'must', 'collection.yaml'],
      ['housing.unknown-box', 'must', 'collection.yaml'],
      ['housing.unknown-folder', 'must', 'collection.yaml'],
    ]);
    expect(findings[0]?.advice).toMatch(/“letter document box”.*“half legal document box”/);
    expect(findings[1]?.advice).toMatch(/“letter document box”.*“tube”/);
    expect(findings[2]?.advice).toBe('Is “letter folder” meant?');
  });

  it('finds a named folder that goes into no box, and boxes that take no folder', () => {
    const noBox = stockFrom(settings({ folders: ['legal folder'], boxes: ['letter document box'] }), 'US');
    expect(noBox.findings.map(({ rule }) => rule)).toEqual(['housing.folder-without-box']);
    expect(noBox.findings[0]?.found).toContain('legal folder');
    const noFolder = stockFrom(settings({ own: [own('20 x 15 x 30 cm')] }), 'US');
    expect(noFolder.findings.map(({ rule }) => rule)).toEqual(['housing.box-without-folder']);
  });
});

describe('boxes of one’s own', () => {
  it('stand with the third measure along the shelf', () => {
    const { boxes, findings } = stockFrom(settings({ own: [own('12 x 10 x 4 in')] }), 'US');
    expect(findings).toEqual([]);
    const [box] = boxes;
    expect(box).toMatchObject({ id: 'tea-chest', one: 'Tea chest', lies: 'upright', takes: ['papers'] });
    // Arithmetic: 25.4 mm to the inch.
    expect([box?.face.long, box?.face.short, box?.deep]).toEqual([12 * 25.4, 254, 101.6]);
    expect(box?.along).toBeCloseTo(101.6 + 6);
    expect(papers(stockFrom(settings({ own: [own('12 x 10 x 4 in')] }), 'US'))).toEqual(['tea-chest']);
  });

  it('lie, where they are flat, with the smallest measure upwards', () => {
    for (const inside of ['40 × 10 × 30 cm', '300 x 400 x 100 mm']) {
      const { boxes } = stockFrom(
        settings({ own: [own(inside, { flat: true, for: ['maps', 'Albums'] })] }),
        'NO',
      );
      expect(boxes[0]).toMatchObject({ lies: 'flat', face: { long: 400, short: 300 }, deep: 100 });
      expect(boxes[0]?.takes).toEqual(['oversize', 'volumes']);
    }
  });

  it('can be named among the boxes', () => {
    const stock = stockFrom(
      settings({ own: [own('33 x 26 x 10 cm')], boxes: ['tea chest', 'document-box-letter'] }),
    );
    expect(stock.findings).toEqual([]);
    expect(papers(stock)).toEqual(['tea-chest', 'document-box-letter']);
  });

  it.each([
    ['12 x 10 in', '2 measures'],
    ['a foot', 'cannot be read'],
    ['12 x 10 x 4 x 3 in', '4 measures'],
    ['12 x 10 x 4', 'no unit'],
    ['12 x 10 x four in', 'cannot be read'],
    ['12 x 10 x 4 furlongs', 'cannot be read'],
    ['12 x 10 x -4 in', 'less than 10 mm'],
    ['12 x 0 x 4 in', 'less than 10 mm'],
    ['12 x 10 x 4 m', 'more than 5 m'],
    ['12 x 10 x 1/0 in', 'cannot be read'],
  ])('are refused with the measures %s', (inside, wrong) => {
    const { findings } = stockFrom(settings({ own: [own(inside)] }), 'US');
    expect(findings).toMatchObject([{ rule: 'housing.own-measures', weight: 'must' }]);
    expect(findings[0]?.found).toContain(wrong);
    expect(findings[0]?.found).toContain(inside);
  });

  it('are refused for what nobody knows, and under a name that another box has', () => {
    const twice = settings({ own: [own('33 x 26 x 10 cm', { for: ['volums'] }), own('33 x 26 x 10 cm')] });
    expect(stockFrom(twice).findings.map(({ rule, advice }) => [rule, advice])).toEqual([
      ['housing.own-for', 'Is “volumes” meant?'],
      ['housing.own-twice', 'Give your own a name that no other box has.'],
    ]);
    const listed = settings({ own: [own('33 x 26 x 10 cm', { name: 'Tube' })] });
    expect(stockFrom(listed).findings.map(({ rule }) => rule)).toEqual(['housing.own-twice']);
  });

  // Arithmetic.
  it.each([
    ['12¼ × 10¼ × 5 in', [311.15, 260.35, 127]],
    ['12 1/4" x 10-1/4" x 5"', [311.15, 260.35, 127]],
    ['1 ft by 10 in by 10 cm', [304.8, 254, 100]],
    ['30,5 x 25.5 x 12 cm', [305, 255, 120]],
    ['305X255*120mm', [305, 255, 120]],
    ['½ m x 40 cm x 10 cm', [500, 400, 100]],
  ])('read %s', (written, measures) => {
    const read = readBoxMeasures(written);
    expect('measures' in read && read.measures.map((one) => Math.round(one * 100) / 100)).toEqual(measures);
  });

  it('keep their measures, in whatever unit they are written', () => {
    const measure = fc.integer({ min: 30, max: 900 });
    fc.assert(
      fc.property(measure, measure, measure, fc.constantFrom(' x ', '×', ' by ', '*'), (a, b, c, between) => {
        const inMillimetres = readBoxMeasures(`${[a, b, c].join(between)} mm`);
        const inCentimetres = readBoxMeasures([a, b, c].map((one) => `${one / 10} cm`).join(between));
        expect(inMillimetres).toEqual({ measures: [a, b, c] });
        expect('measures' in inCentimetres && inCentimetres.measures.map(Math.round)).toEqual([a, b, c]);
      }),
    );
  });

  it('never make the reader fail, whatever is written', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (written) => {
        const read = readBoxMeasures(written);
        expect('wrong' in read || read.measures.every((one) => one >= 10 && one <= 5000)).toBe(true);
      }),
    );
  });
});
