import { kinfonds } from './run.mjs';

/** Which units are shown: from one reference code to another. What lies between two such runs is left out with a …. */
const SHOWN = [
  ['QF', 'QF/2/4'],
  ['QF/5', 'QF/5/2'],
  ['QF/13', 'QF/13/5'],
  ['QF/15', 'QF/15/2'],
];

// In characters; what is longer ends with a … in the picture.
const COLUMNS = 100;
// In pixels. Letters of a fixed width are about six tenths as wide as they are high.
const LETTER = 13;
const WIDE = 7.8;
const LINE = 20;
const MARGIN = 24;

// A sheet of paper on whatever lies behind it, so that it is as good to read on a dark page as on a white one.
const PAPER = '#fdfcf8';
const EDGE = '#c9c5b9';
const INK = '#24231f';
const FAINT = '#6b675c';

const FONTS = "ui-monospace, 'SF Mono', Menlo, Consolas, 'DejaVu Sans Mono', monospace";

const codeOf = (line) => line.trim().split(/\s/, 1)[0];
const cut = (line) => (line.length <= COLUMNS ? line : `${line.slice(0, COLUMNS - 1).trimEnd()}…`);
const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

function shownLines(outline) {
  const lines = outline.trimEnd().split('\n');
  const place = (code) => {
    const at = lines.findIndex((line) => codeOf(line) === code);
    if (at < 0) throw new Error(`The outline of the example has no ${code}.`);
    return at;
  };
  return SHOWN.flatMap(([from, to]) => [...lines.slice(place(from), place(to) + 1).map(cut), '…']);
}

// Every line is given its width, so that none runs over the edge where a font is wider. The length of the line says
// where it begins, not blanks before it: those are counted differently by different programs.
function textLine(line, at, colour) {
  const words = line.trimStart();
  const indent = line.length - words.length;
  const x = MARGIN + indent * WIDE;
  const width = (words.length * WIDE).toFixed(1);
  return `  <text x="${x.toFixed(1)}" y="${at}" textLength="${width}" lengthAdjust="spacingAndGlyphs" fill="${colour}" xml:space="preserve">${escaped(words)}</text>`;
}

/** The outline of the example as somebody sees it who types the command: an SVG, its text as text. */
export function outlinePicture(example) {
  const typed = '$ kinfonds arrange examples/quill-ferry';
  const lines = [typed, ...shownLines(kinfonds('arrange', example))];
  const width = Math.ceil(COLUMNS * WIDE + 2 * MARGIN);
  const height = lines.length * LINE + 2 * MARGIN - 4;
  const texts = lines.map((line, index) =>
    textLine(line, MARGIN + LETTER + index * LINE, line === typed || line === '…' ? FAINT : INK),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${FONTS}" font-size="${LETTER}">
  <title>The outline of the example</title>
  <rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" rx="6" fill="${PAPER}" stroke="${EDGE}"/>
${texts.join('\n')}
</svg>
`;
}
