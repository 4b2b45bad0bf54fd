import type { Paragraph, Piece } from './paragraph.ts';
import type { FontName, Typesetter } from './typesetter.ts';

/** One line of a paragraph: its pieces in the order of the text, and its width in units of the font size. */
export interface Line {
  pieces: Piece[];
  width: number;
  start: number;
}

const BLANK = 32;

const widthOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, { width }) => sum + width, 0);

// A paragraph is tried at many sizes, and often with the same line.
const tried = new WeakMap<Paragraph, Map<string, Line>>();

function lineOf(paragraph: Paragraph, start: number, end: number): Line {
  let last = end;
  while (last > start && paragraph.text.charCodeAt(last - 1) === BLANK) last--;
  const lines = tried.get(paragraph) ?? new Map<string, Line>();
  tried.set(paragraph, lines);
  const key = `${start} ${last}`;
  const known = lines.get(key);
  if (known !== undefined) return known;
  const pieces = paragraph.pieces(start, last);
  const line = { pieces, width: widthOf(pieces), start };
  lines.set(key, line);
  return line;
}

/**
 * The whole paragraph in one line, where it is no wider than that.
 * @param width of the line, in units of the font size
 */
export function inOneLine(paragraph: Paragraph, width: number): Line | undefined {
  const { length } = paragraph.text;
  // Of a text that is far too long no more is measured than it takes to see it.
  return lastFitting(paragraph, 0, width) === length ? lineOf(paragraph, 0, length) : undefined;
}

/**
 * Breaks a paragraph into lines between words; a word that is longer than a line, between letters.
 * @param width of a line, in units of the font size
 * @param most after so many lines it stops
 */
export function wrap(paragraph: Paragraph, width: number, most: number): { lines: Line[]; whole: boolean } {
  const lines: Line[] = [];
  const { text, breaks, clusters } = paragraph;
  let start = 0;
  while (start < text.length) {
    if (lines.length === most) return { lines, whole: false };
    // A single letter wider than its line has to stand on it all the same; what sticks out is cut off.
    const furthest = lastFitting(paragraph, start, width) ?? clusters.find((at) => at > start) ?? text.length;
    const between = breaks.findLast((at) => at > start && at <= furthest);
    const end = between ?? furthest;
    lines.push(lineOf(paragraph, start, end));
    start = end;
    while (text.charCodeAt(start) === BLANK) start++;
  }
  return { lines, whole: true };
}

/** The furthest letter at whose end a line from `start` is no wider than it may be. */
function lastFitting(paragraph: Paragraph, start: number, width: number): number | undefined {
  const positions = paragraph.clusters;
  const from = positions.findIndex((position) => position > start);
  if (from < 0) return undefined;
  let fits = from - 1;
  let fails = positions.length;
  let probe = from;
  // In leaps that grow until one is too far, then by halves.
  for (let leap = 1; fits + 1 < fails; leap *= 2) {
    const end = positions[probe] ?? start;
    if (lineOf(paragraph, start, end).width <= width) fits = probe;
    else fails = probe;
    const next = fails === positions.length ? fits + leap : Math.floor((fits + fails) / 2);
    probe = Math.min(next, positions.length - 1);
  }
  return fits < from ? undefined : positions[fits];
}

/** A line cut down to a width, with an ellipsis at its end. */
export function shortened(
  paragraph: Paragraph,
  { start }: Line,
  width: number,
  font: FontName,
  setter: Typesetter,
): Line {
  const mark: Piece = {
    text: '…',
    font,
    width: setter.width(font, '…'),
    level: paragraph.rightToLeft ? 1 : 0,
  };
  const room = width - mark.width;
  const end = lastFitting(paragraph, start, room) ?? start;
  const line = lineOf(paragraph, start, end);
  return { pieces: [...line.pieces, mark], width: line.width + mark.width, start };
}
