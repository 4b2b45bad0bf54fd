import type { Block } from './blocks.ts';
import { inOneLine, type Line, shortened, wrap } from './lines.ts';
import type { Paragraph } from './paragraph.ts';
import type { Typesetter } from './typesetter.ts';

/** A line in its place. In points, from the upper left corner of the area. */
export interface SetLine {
  line: Line;
  size: number;
  x: number;
  baseline: number;
}

/** Texts set into an area, and which of them had to be cut. */
interface Fitted {
  lines: SetLine[];
  shortened: string[];
}

/** Lines of one paragraph at one size. */
interface Rows {
  block: Block;
  paragraph: Paragraph;
  size: number;
  height: number;
  above: number;
  lines: Line[];
  whole: boolean;
  /** What stands at the right end of the only line. */
  beside?: Line;
}

// Between lines, in units of the font size: as much as the letters of DejaVu Sans need, and a hair.
const LEADING = 1.18;
// A heading becomes smaller by as much before it takes a second line.
const ONE_LINE = 0.55;
const STEPS = Array.from({ length: 27 }, (_, step) => 1 - step * 0.025);
// Between two texts on one line, in units of the font size.
const GAP = 1;

/**
 * Sets texts into an area: as large as they like to be; else all of them smaller, step by step; at their smallest, with
 * lines cut off at an ellipsis, from the longest text first; and where even one line of each is too much, some left out
 * from the last on. Nothing is ever set outside the area.
 * @param area width and height in points
 */
export function setTexts(
  blocks: readonly Block[],
  area: { width: number; height: number },
  setter: Typesetter,
): Fitted {
  let rows: Rows[] = [];
  for (const step of STEPS) {
    rows = blocks.flatMap((block) => rowsOf(block, step, area, setter));
    if (heightOf(rows) <= area.height && rows.every(({ whole }) => whole))
      return { lines: place(rows, area), shortened: [] };
  }
  if (heightOf(rows) > area.height) rows = rows.filter(({ block }) => !block.spare);
  const cut = new Set<Rows>(rows.filter(({ whole }) => !whole));
  while (heightOf(rows) > area.height) {
    const longest = rows.reduce((one, other) => (other.lines.length >= one.lines.length ? other : one));
    if (longest.lines.length > 1) longest.lines.pop();
    else if (rows.length > 1) rows = rows.slice(0, -1);
    else break;
    cut.add(longest);
  }
  for (const one of cut) {
    const last = one.lines.pop();
    if (last !== undefined)
      one.lines.push(shortened(one.paragraph, last, area.width / one.size, one.block.weight, setter));
  }
  return { lines: place(rows, area), shortened: [...new Set([...cut].map(({ block }) => block.what))] };
}

function rowsOf(
  block: Block,
  step: number,
  { width, height }: { width: number; height: number },
  setter: Typesetter,
): Rows[] {
  const { paragraph, beside } = block;
  // Letters that reach far above and below their line still have to find room in the area.
  const highest = height / Math.max(...[paragraph, beside ?? paragraph].map(({ reach }) => leading(reach)));
  const size = Math.min(highest, Math.max(block.least, block.size * step));
  const smallest = block.oneLine ? Math.min(size, Math.max(block.least, block.size * ONE_LINE)) : size;
  const above = block.above * step;
  const line = inOneLine(paragraph, width / smallest);
  const right = beside === undefined ? undefined : inOneLine(beside, width / smallest);
  if (line !== undefined && (beside === undefined || right !== undefined)) {
    const needed = line.width + (right === undefined ? 0 : GAP + right.width);
    const onOne = Math.min(size, width / needed);
    const rowHeight =
      Math.max(...[paragraph, beside ?? paragraph].map(({ reach }) => leading(reach))) * onOne;
    const set = { block, paragraph, size: onOne, above, height: rowHeight, lines: [line], whole: true };
    if (onOne >= smallest) return [{ ...set, ...(right !== undefined && { beside: right }) }];
  }
  return [paragraph, ...(beside === undefined ? [] : [beside])].map((one, index) => {
    const rowHeight = leading(one.reach) * smallest;
    // One line more than there is room for is enough to see that it is too much.
    const wrapped = wrap(one, width / smallest, Math.ceil(height / rowHeight) + 1);
    const [only] = wrapped.lines;
    if (block.spare && only !== undefined) {
      wrapped.lines = [shortened(one, only, width / smallest, block.weight, setter)];
      wrapped.whole = true;
    }
    return {
      block,
      paragraph: one,
      size: smallest,
      height: rowHeight,
      above: index === 0 ? above : 0,
      ...wrapped,
    };
  });
}

const leading = ({ above, below }: Paragraph['reach']): number => Math.max(LEADING, above + below);

// The space above the first text is left out.
const heightOf = (rows: readonly Rows[]): number =>
  rows.reduce(
    (sum, { height, lines, above }, index) => sum + height * lines.length + (index === 0 ? 0 : above),
    0,
  );

function place(rows: readonly Rows[], area: { width: number; height: number }): SetLine[] {
  const spare = Math.max(0, area.height - heightOf(rows));
  const firstBelow = rows.findIndex(({ block }) => block.at === 'bottom');
  let top = 0;
  return rows.flatMap(({ paragraph, size, height, above, lines, beside }, index) => {
    if (index > 0) top += above;
    if (index === firstBelow) top += spare;
    return lines.flatMap((line) => {
      const { reach } = paragraph;
      const baseline = top + (height - (reach.above + reach.below) * size) / 2 + reach.above * size;
      top += height;
      // Words that run leftwards begin at the right, unless something else stands there.
      const x = paragraph.rightToLeft && beside === undefined ? area.width - line.width * size : 0;
      const set = { line, size, x, baseline };
      if (beside === undefined) return [set];
      return [set, { line: beside, size, x: area.width - beside.width * size, baseline }];
    });
  });
}
