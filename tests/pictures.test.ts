import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { XMLParser } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { copyExample } from './support/example.ts';
import { freshFolder, kinfonds } from './support/kinfonds.ts';
import { partingOf } from './support/shown.ts';

const FOLDER = join('docs', 'pictures');
const README = readFileSync('README.md', 'utf8');
const TEXT = readFileSync(join(FOLDER, 'outline.svg'), 'utf8');

interface SvgText {
  '#text': string;
  x: string;
  textLength: string;
}

interface Svg {
  width: string;
  height: string;
  viewBox: string;
  text: SvgText[];
}

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '',
  trimValues: false,
  parseTagValue: false,
});
const svg: Svg = parser.parse(TEXT).svg;

/** A line of text as it is seen: as many blanks before it as its place says. */
function seen({ '#text': words, x, textLength }: SvgText): string {
  const first = Number(svg.text[0]?.x);
  const wide = Number(textLength) / words.length;
  return ' '.repeat(Math.round((Number(x) - first) / wide)) + words;
}

function example(): string {
  const folder = join(freshFolder(), 'quill-ferry');
  copyExample(folder);
  return folder;
}

/** Width and height of a PNG in pixels, from its first chunk (ISO/IEC 15948, 5.2 and 11.2.2). */
function sizeOfPng(file: string): [number, number] {
  const bytes = readFileSync(file);
  expect(bytes.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
  expect(bytes.subarray(12, 16).toString('latin1')).toBe('IHDR');
  expect(bytes.subarray(-8, -4).toString('latin1')).toBe('IEND');
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

describe('the pictures of README', () => {
  test('are those that there are, each with words for who cannot see it', () => {
    const shown = [...README.matchAll(/!\[([^\]]*)\]\(docs\/pictures\/([^)]+)\)/g)];
    expect(shown.map(([, , file]) => file).sort()).toEqual(readdirSync(FOLDER).sort());
    for (const [, words = '', file] of shown)
      expect([file, words.split(/\s+/).length > 10]).toEqual([file, true]);
  });

  test('are small: together under 400 kB', () => {
    const sizes = readdirSync(FOLDER).map((file) => statSync(join(FOLDER, file)).size);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(400_000);
  });

  // Our own bounds: sharp where two pixels are shown for one on a page 640 wide, and no higher than wide.
  test.each(['page.png', 'labels.png'])('%s is a PNG, wide enough to be sharp', (file) => {
    const [width, height] = sizeOfPng(join(FOLDER, file));
    expect(width).toBeGreaterThanOrEqual(1280);
    expect(width).toBeLessThanOrEqual(1700);
    expect(height).toBeGreaterThan(width / 2);
    expect(height).toBeLessThan(width);
  });

  test('outline.svg is an SVG that needs nothing but itself, and nothing in it runs over its edges', () => {
    expect(TEXT).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" /);
    expect(TEXT).not.toMatch(/<(?:script|style|image|use|foreignObject|a)\b|href|url\(|@font-face|\son\w+=/i);
    expect(TEXT).toMatch(/font-family="[^"]*\bmonospace"/);
    const [width, height] = [Number(svg.width), Number(svg.height)];
    expect(svg.viewBox).toBe(`0 0 ${width} ${height}`);
    // Wider than this, a page of README makes it smaller.
    expect(width).toBeLessThanOrEqual(840);
    for (const { x, textLength } of svg.text) expect(Number(x) + Number(textLength)).toBeLessThan(width);
    const lowest = Math.max(...[...TEXT.matchAll(/ y="(\d+)"/g)].map(([, y]) => Number(y)));
    expect(lowest).toBeLessThan(height);
  });

  test('outline.svg shows what the program prints of the example now', () => {
    const [typed, ...lines] = svg.text.map(seen);
    expect(typed).toBe('$ kinfonds arrange examples/quill-ferry');
    expect(lines.filter((line) => /^ *QF\S* {2}\S/.test(line)).length).toBeGreaterThan(12);
    const { code, out } = kinfonds(['arrange', example()]);
    expect(code).toBe(0);
    const parting = partingOf(lines, out);
    const anew = 'Make the pictures anew: node tests/support/pictures/make.mjs';
    expect(parting && { shown: lines[parting.at], printed: parting.printed, anew }).toBeUndefined();
  });

  test('are of as many things as README says', () => {
    const said = /a list of (\d+) things/.exec(README)?.[1];
    expect(kinfonds([], { cwd: example() }).out).toContain(` ${said} things in list.csv`);
  });
});
