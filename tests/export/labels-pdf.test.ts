import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calibrationPdf } from '../../src/export/labels/calibration.ts';
import type { Label } from '../../src/export/labels/labels-of.ts';
import { labelsPdf } from '../../src/export/labels/pdf.ts';
import { cornerOf, labelsOn, SHEETS, type Sheet } from '../../src/export/labels/sheets.ts';
import { nastyText } from '../support/hostile-text.ts';
import {
  describeWithPoppler,
  labelAround,
  type Picture,
  pictureOf,
  type Word,
  wordsOf,
} from './labels-poppler.ts';

const sheetNamed = (name: string): Sheet => {
  const sheet = SHEETS.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`No sheet ${name}`);
  return sheet;
};

const label = (number: number, over: Partial<Label> = {}): Label => ({
  key: `folder ${number}`,
  of: 'folder',
  type: 'Folder',
  number: String(number),
  collection: 'Quill Family Papers',
  series: ['Correspondence'],
  title: 'Letters',
  dates: '1911-1922',
  codes: `QF/2/${number}`,
  ...over,
});
const labels = (count: number) => Array.from({ length: count }, (_, index) => label(index + 1));

const numbersOn = (words: readonly Word[]) => words.filter(({ text }) => /^\d+$/.test(text));

describeWithPoppler('labels read back from the PDF', () => {
  test('the title of a single thing takes one line, cut off where it is long, and nothing is said of that', async () => {
    const sheet = sheetNamed('A4 3x7');
    const long = 'Ada to Nils on the flood '.repeat(20);
    const { bytes, findings } = await labelsPdf(
      [label(1, { thing: 'Flood' }), label(2, { thing: long })],
      sheet,
    );
    expect(findings).toEqual([]);
    const words = wordsOf(bytes).flat();
    const numbers = numbersOn(words).map(({ top, bottom }) => bottom - top);
    // The number is not made smaller by what is only an aid.
    expect(Math.abs((numbers[0] ?? 0) - (numbers[1] ?? 9))).toBeLessThan(0.6);
    const onLine = words.filter(({ text }) => text === 'Ada').length;
    expect(onLine).toBeGreaterThan(0);
    expect(new Set(words.filter(({ text }) => text === 'Ada').map(({ top }) => top.toFixed(1))).size).toBe(1);
    expect(words.filter(({ text }) => text === 'Letters')).toHaveLength(2);
  });

  test.each(SHEETS)('$name: every label in its place, to 0.2 mm', async (sheet) => {
    const count = labelsOn(sheet) + 2;
    const { bytes, sheets } = await labelsPdf(labels(count), sheet);
    const pages = wordsOf(bytes);
    expect([pages.length, sheets]).toEqual([2, 2]);
    const numbers = pages.flatMap((page) => numbersOn(page));
    expect(numbers.map(({ text }) => Number(text))).toEqual(
      labels(count).map(({ number }) => Number(number)),
    );
    for (const page of pages)
      for (const word of page) expect([word, labelAround(sheet, word)]).not.toContain(undefined);

    // Every word stands as far from the corner of its label as in the first one on the sheet but for the wider
    // margins at the edge of the page (5 mm that printers leave blank, 2.2 mm at the edge of a label).
    const heads = pages.flatMap((page) => page.filter(({ text }) => text === 'Folder'));
    heads.forEach(({ left, top }, index) => {
      const place = index % labelsOn(sheet);
      const [x, y] = cornerOf(sheet, place);
      expect(Math.abs(left - Math.max(x + 2.2, 5))).toBeLessThan(0.2);
      // Where the line of a label begins hangs on its height; between labels of a sheet it is the same.
      const inner = Math.max(y + 2.2, 5);
      const [, firstY] = cornerOf(sheet, sheet.columns);
      const second = heads[sheet.columns];
      if (second !== undefined && place >= sheet.columns && place < labelsOn(sheet) - sheet.columns)
        expect(Math.abs(top - inner - (second.top - Math.max(firstY + 2.2, 5)))).toBeLessThan(0.05);
    });
  });

  test('GLASS stands on the label of its box, in line with the number, on every sheet', async () => {
    const boxes = [label(1, { of: 'box', type: 'Box', care: 'GLASS' }), label(2, { of: 'box', type: 'Box' })];
    for (const sheet of SHEETS) {
      const [page = []] = wordsOf((await labelsPdf(boxes, sheet)).bytes);
      const marks = page.filter(({ text }) => text === 'GLASS');
      const [number] = numbersOn(page);
      expect([sheet.name, marks.map(({ top }) => top)]).toEqual([sheet.name, [number?.top]]);
    }
  });

  // By hand: the fifth label of 3 × 10 is the second of the second row, at 3/16 + 2¾ in and 1½ in.
  test('starts at any label of a half-used sheet, and moves by what the printer is out', async () => {
    const sheet = sheetNamed('letter 3x10');
    const { bytes, sheets } = await labelsPdf(labels(27), sheet, { start: 5 });
    const pages = wordsOf(bytes);
    expect([sheets, pages.map((page) => numbersOn(page).length)]).toEqual([2, [26, 1]]);
    const [first] = pages[0]?.filter(({ text }) => text === 'Folder') ?? [];
    expect(Math.abs((first?.left ?? 0) - (0.1875 + 2.75) * 25.4 - 2.2)).toBeLessThan(0.2);
    const moved = wordsOf((await labelsPdf(labels(27), sheet, { start: 5, shift: [0.5, -1] })).bytes);
    moved.flat().forEach((word, index) => {
      const before = pages.flat()[index];
      expect(word.left - (before?.left ?? 0)).toBeCloseTo(0.5, 2);
      expect(word.top - (before?.top ?? 0)).toBeCloseTo(-1, 2);
    });
    for (const start of [0, 31, 1.5])
      await expect(labelsPdf(labels(1), sheet, { start })).rejects.toThrow(/1 to 30/);
  });

  test('no word leaves its label, whatever is on it', { timeout: 180_000 }, async () => {
    const scripts = fc.constantFrom(
      ...[
        'Überseebriefwechselverzeichnis'.repeat(4),
        '渡し船の日記と果樹園の帳簿。'.repeat(9),
        'יומן המעבורת (1923) '.repeat(8),
      ],
      ...[
        'يوميات العبّارة على نهر سالو '.repeat(7),
        'دفتر ۱۳۰۲ می‌خواهد',
        'Письма с переправы',
        'x'.repeat(900),
        'a b '.repeat(300),
      ],
    );
    const text = fc.oneof(nastyText, scripts, fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }));
    const made = fc
      .record({
        of: fc.constantFrom('folder' as const, 'box' as const),
        number: fc.oneof(fc.nat().map(String), text),
        box: fc.option(fc.record({ type: fc.constant('Box'), number: text }), { nil: undefined }),
        part: fc.constantFrom(undefined, '1 of 3'),
        folders: fc.constantFrom(undefined, '3-7', Array.from({ length: 80 }, (_, n) => n * 2).join(', ')),
        series: fc.array(text, { maxLength: 4 }),
        collection: text,
        title: text,
        dates: text,
      })
      .map((over) => label(1, JSON.parse(JSON.stringify(over)) as Partial<Label>));
    const tiny: Sheet = { ...sheetNamed('A4 3x8'), columns: 10, rows: 29, label: [20, 10], step: [21, 10] };
    await fc.assert(
      fc.asyncProperty(
        fc.array(made, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(...SHEETS, tiny),
        async (many, sheet) => {
          const { bytes } = await labelsPdf(many, sheet);
          const out = wordsOf(bytes)
            .flat()
            // Marks that the program reports by themselves have no width: they are drawn over the letter before them,
            // and its box is looked at.
            .filter(({ text }) => !/^[\p{M}\s]*$/u.test(text))
            .filter((word) => labelAround(sheet, word) === undefined);
          expect(out).toEqual([]);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('words of scripts that run leftwards come back in their order, aligned at the right', async () => {
    const sheet = sheetNamed('A4 3x8');
    const titles = ['יומן המעבורת', 'يوميات العبّارة'];
    const { bytes, findings } = await labelsPdf(
      titles.map((title, index) => label(index + 1, { title })),
      sheet,
    );
    expect(findings).toEqual([]);
    const [page = []] = wordsOf(bytes);
    titles.forEach((title, index) => {
      const [x] = cornerOf(sheet, index);
      const words = page.filter(
        (word) => labelAround(sheet, word) === index && /[\u0590-\u06FF]/.test(word.text),
      );
      // UAX 9: the first word of the text stands at the right.
      const fromTheRight = [...words].sort((one, other) => other.right - one.right);
      // Poppler lists the letters of a word as they stand on the page, from the left.
      expect(fromTheRight.map(({ text }) => bare(text))).toEqual(title.split(' ').map(fromTheLeft));
      expect(Math.abs((fromTheRight[0]?.right ?? 0) - (x + 70 - 2.2))).toBeLessThan(0.2);
    });
  });

  test('the outlines of the test page lie where the sheet says, in the picture, to 0.2 mm', async () => {
    for (const name of ['letter 3x10', 'A4 3x7']) {
      const sheet = sheetNamed(name);
      const picture = pictureOf(await calibrationPdf(sheet), 600);
      expect(picture.width / picture.scale).toBeCloseTo(sheet.page[0], 1);
      expect(picture.height / picture.scale).toBeCloseTo(sheet.page[1], 1);
      for (const place of [0, 4, labelsOn(sheet) - 1]) {
        const [x, y] = cornerOf(sheet, place);
        const [width, height] = sheet.label;
        // A quarter along each edge, where neither scale nor ruler nor word stands.
        for (const edge of [x, x + width])
          expect(Math.abs(lineNear(picture, edge, y + height * 0.25, 'x') - edge)).toBeLessThan(0.2);
        for (const edge of [y, y + height])
          expect(Math.abs(lineNear(picture, edge, x + width * 0.25, 'y') - edge)).toBeLessThan(0.2);
      }
    }
  });

  test('the rulers are true', async () => {
    const sheet = sheetNamed('letter 3x10');
    const page = await calibrationPdf(sheet);
    // By hand: the ruler across stands in the ninth row, 12.7 + 8.5 × 25.4 = 228.6 mm down, in the middle of the page,
    // from 107.95 - 50 to 107.95 + 50 mm; only the marks of every tenth millimetre are longer than 3 mm.
    const picture = pictureOf(page, 600);
    for (let mm = 0; mm <= 100; mm += 10) {
      const expected = 57.95 + mm;
      expect(Math.abs(lineNear(picture, expected, 228.6 - 3.5, 'x') - expected)).toBeLessThan(0.1);
    }
    const words = wordsOf(page).flat();
    const figures = (text: string) => words.filter((word) => word.text === text);
    // The figures 20 and 80 are centred under their marks, one pair across the page, one down it.
    const distances = figures('20').flatMap((from) =>
      figures('80').map((to) => Math.hypot(middle(to).x - middle(from).x, middle(to).y - middle(from).y)),
    );
    expect(distances.filter((distance) => Math.abs(distance - 60) < 0.2)).toHaveLength(2);
  });

  test.each(SHEETS)(
    'the test page for $name numbers every label and has its words within them',
    async (sheet) => {
      const [words = []] = wordsOf(await calibrationPdf(sheet));
      const text = words.map((word) => word.text).join(' ');
      for (const said of ['plain paper', 'real ruler', 'window', '--shift 0.5x-1', '--start'])
        expect(text).toContain(said);
      for (let place = 0; place < labelsOn(sheet); place++) {
        const inside = words.filter((word) => labelAround(sheet, word) === place);
        expect(inside.some((word) => word.text === String(place + 1))).toBe(true);
      }
    },
  );
});

describe('the file', () => {
  const sheet = sheetNamed('A4 3x7');
  const fonts = createRequire(import.meta.url);
  const font = {
    file: 'Serif.ttf',
    bytes: readFileSync(fonts.resolve('dejavu-fonts-ttf/ttf/DejaVuSerif.ttf')),
  };

  test('is the same, byte for byte, each time, and names no day', async () => {
    const [one, two] = [await labelsPdf(labels(30), sheet), await labelsPdf(labels(30), sheet)];
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
    expect(Buffer.from(one.bytes).toString('latin1')).not.toMatch(/CreationDate|ModDate/);
    expect(Buffer.compare(await calibrationPdf(sheet), await calibrationPdf(sheet))).toBe(0);
  });

  // ISO 32000-1, 12.2: with PrintScaling None a viewer's print dialog begins with the true size.
  test('asks to be printed in its true size, and has its fonts in it', async () => {
    const text = Buffer.from((await labelsPdf(labels(1), sheet)).bytes).toString('latin1');
    expect(text).toMatch(/\/PrintScaling \/None/);
    // Both fonts as subsets (a tag of six letters before the name), and no other.
    const used = [...text.matchAll(/\/FontName \/([^\s/]+)/g)].map(([, name]) => name);
    expect(used.map((name) => name?.replace(/^[A-Z]{6}\+/, '')).sort()).toEqual([
      'DejaVuSans',
      'DejaVuSans-Bold',
    ]);
    expect(used.every((name) => /^[A-Z]{6}\+/.test(name ?? ''))).toBe(true);
    expect(text.match(/\/FontFile2/g)).toHaveLength(2);
  });

  test('letters without a font are named, and a font of one’s own is used for them alone', async () => {
    const title = 'Letters \u{10300}渡し船';
    const { findings } = await labelsPdf([label(1, { title }), label(2, { title: '渡' })], sheet);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ rule: 'labels.no-font', weight: 'should' });
    for (const letter of ['渡', 'し', '船']) expect(findings[0]?.found).toContain(letter);
    expect(findings[0]?.found).not.toContain('L e');
    expect(findings[0]?.advice).toContain('--font FILE');
    // U+2900, an arrow, is in DejaVu Serif and not in DejaVu Sans: seen in their tables of characters.
    const arrow = [label(1, { title: 'To the far bank \u2900' })];
    expect((await labelsPdf(arrow, sheet)).findings[0]?.found).toContain('\u2900');
    const helped = await labelsPdf(arrow, sheet, { font });
    expect(helped.findings).toEqual([]);
    expect(Buffer.from(helped.bytes).toString('latin1')).toMatch(/\+DejaVuSerif\b/);
    // A font that is not needed is not embedded.
    const plain = await labelsPdf(labels(1), sheet, { font });
    expect(Buffer.from(plain.bytes).toString('latin1')).not.toContain('DejaVuSerif');
  });

  test('what is no font, or damaged, is refused with its name', async () => {
    const bad = [Buffer.from('not a font'), Buffer.alloc(0), font.bytes.subarray(0, 5000)];
    for (const bytes of bad) {
      const printed = labelsPdf([label(1, { title: '渡' })], sheet, { font: { file: 'Bad.ttf', bytes } });
      await expect(printed).rejects.toThrow(/^Bad\.ttf: This is no font/);
    }
  });

  test('what is cut short is told, with the label it is on', async () => {
    const { findings } = await labelsPdf([label(7, { title: 'a b '.repeat(500) })], sheet);
    expect(findings).toMatchObject([
      { rule: 'labels.cut-short', place: { component: 'QF/2/7' }, found: expect.stringContaining('title') },
    ]);
    expect((await labelsPdf(labels(30), sheet)).findings).toEqual([]);
  });
});

const bare = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '');

const fromTheLeft = (word: string) => [...bare(word)].reverse().join('');

const middle = ({ left, right, top, bottom }: Word) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });

/** The middle of the dark line nearest to a place, in millimetres, looked for 1.2 mm to both sides. */
function lineNear({ scale, at }: Picture, expected: number, beside: number, axis: 'x' | 'y'): number {
  const dark: number[] = [];
  for (let pixel = Math.round((expected - 1.2) * scale); pixel <= (expected + 1.2) * scale; pixel++) {
    const across = Math.round(beside * scale);
    if ((axis === 'x' ? at(pixel, across) : at(across, pixel)) < 128) dark.push(pixel + 0.5);
  }
  return dark.reduce((sum, pixel) => sum + pixel, 0) / dark.length / scale;
}
