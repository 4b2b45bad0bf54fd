import bidiFactory from 'bidi-js';
import { breaksOf, clustersOf } from './text-breaks.ts';
import type { FontName, Typesetter } from './typesetter.ts';

/** A run of letters in one font and one direction. */
export interface Piece {
  /** As the font is to be given it. */
  text: string;
  font: FontName;
  /** In units of the font size. */
  width: number;
  /** Embedding level: even rightwards, odd leftwards (Unicode Standard Annex 9). */
  level: number;
}

/** A text that is ready to be broken into lines. */
export interface Paragraph {
  text: string;
  rightToLeft: boolean;
  /** Where a line may end. */
  breaks: readonly number[];
  /** Where a line ends if it must. */
  clusters: readonly number[];
  /** Letters that no font has. */
  missing: readonly string[];
  reach: { above: number; below: number };
  pieces(start: number, end: number): Piece[];
}

// The types of bidi-js describe its module build; in Node its function is the module itself.
const bidi = (bidiFactory as unknown as typeof import('bidi-js').default)();

// Scripts written leftwards that have letters in Unicode and are known to the shaper, which turns them round itself.
const TURNED =
  /[\p{sc=Hebr}\p{sc=Arab}\p{sc=Syrc}\p{sc=Thaa}\p{sc=Nkoo}\p{sc=Samr}\p{sc=Mand}\p{sc=Mani}\p{sc=Armi}]/u;
const COMMON = /[\p{sc=Zyyy}\p{sc=Zinh}]/u;
// What the shaper hides; it shows the fillers of Hangul, which Unicode counts to them.
const IGNORABLE = /(?!\u115F|\u1160|\u3164|\uFFA0)\p{Default_Ignorable_Code_Point}/u;
// White square, U+25A1. The glyph that a font itself has for what it lacks is set by pdfkit in a wrong width.
const NO_LETTER = '□';
// The isolates that hold parts apart, U+2068 and U+2069, are read by the algorithm and not set.
const ISOLATE = /[\u2068\u2069]/g;

/** A part of a text whose direction is its own and does not run over into what stands beside it. */
export const isolated = (text: string): string => `\u2068${text}\u2069`;

/** Makes a text ready for its lines: direction, fonts and the places where it may break. */
export function paragraphOf(text: string, weight: 'regular' | 'bold', setter: Typesetter): Paragraph {
  const rightToLeft = firstStrong(text) === 'rtl';
  const embedding = bidi.getEmbeddingLevels(text, rightToLeft ? 'rtl' : 'ltr');
  const mirrored = bidi.getMirroredCharactersMap(text, embedding.levels);
  const clusters = clustersOf(text);
  const order: FontName[] = weight === 'bold' ? ['bold', 'regular'] : ['regular'];
  if (setter.fonts.includes('own')) order.push('own');
  const missing = new Set<string>();
  // Of every place in the text: what is shown there, and in which font.
  const shown: string[] = [];
  const fontAt: FontName[] = [];
  let from = 0;
  for (const end of clusters) {
    const letters = [...text.slice(from, end)].filter((letter) => !IGNORABLE.test(letter) && letter !== ' ');
    const has = (font: FontName) => (letter: string) => setter.has(font, letter.codePointAt(0) ?? 0);
    const font = order.find((name) => letters.every(has(name)));
    for (let at = from; at < end; at++) {
      fontAt[at] = font ?? weight;
      if (font !== undefined) shown[at] = mirrored.get(at) ?? text.charAt(at);
      else shown[at] = at === from ? NO_LETTER : '';
    }
    if (font === undefined)
      for (const letter of letters) if (!order.some((name) => has(name)(letter))) missing.add(letter);
    from = end;
  }

  const pieces = (start: number, end: number): Piece[] => {
    const found: Piece[] = [];
    let at = start;
    while (at < end) {
      const first = at;
      const [font, level] = [fontAt[at] ?? weight, embedding.levels[at] ?? 0];
      while (at < end && fontAt[at] === font && embedding.levels[at] === level) at++;
      for (const part of partsOf(shown.slice(first, at).join('').replace(ISOLATE, ''), level)) {
        found.push({ text: part, font, level, width: setter.width(font, part) });
      }
    }
    return found;
  };
  const used = [...new Set(fontAt)].map(setter.reach);
  return {
    text,
    rightToLeft,
    breaks: breaksOf(text),
    clusters,
    missing: [...missing],
    reach: {
      above: Math.max(0, ...used.map(({ above }) => above)),
      below: Math.max(0, ...used.map(({ below }) => below)),
    },
    pieces,
  };
}

/**
 * The words of a run and the blanks between them, one by one, as the shaper must have them: it turns round the letters
 * of scripts written leftwards, and no others. Where the level says otherwise (brackets between such words; Persian
 * figures, which run rightwards) the text is turned round beforehand.
 */
function partsOf(run: string, level: number): string[] {
  return (run.match(/ +|[^ ]+/g) ?? []).map((part) => {
    const strong = [...part].find((letter) => !COMMON.test(letter));
    const turns = strong !== undefined && TURNED.test(strong);
    return turns === (level % 2 === 1) ? part : turnedRound(part);
  });
}

function turnedRound(text: string): string {
  let from = 0;
  const letters = clustersOf(text).map((end) => {
    const letter = text.slice(from, end);
    from = end;
    return letter;
  });
  return letters.reverse().join('');
}

/** The direction of the first letter that has one (UAX 9, P2), also within isolates. */
function firstStrong(text: string): 'ltr' | 'rtl' {
  for (const letter of text) {
    const type = bidi.getBidiCharTypeName(letter);
    if (type === 'L') return 'ltr';
    if (type === 'R' || type === 'AL') return 'rtl';
  }
  return 'ltr';
}

/** Pieces of one line in the order in which the eye meets them, from left to right (UAX 9, L2). */
export function inVisualOrder(pieces: readonly Piece[]): Piece[] {
  const order = [...pieces];
  const highest = Math.max(0, ...order.map(({ level }) => level));
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < order.length; from++) {
      let to = from;
      while (to < order.length && (order[to]?.level ?? 0) >= level) to++;
      if (to === from) continue;
      order.splice(from, to - from, ...order.slice(from, to).reverse());
      from = to;
    }
  }
  return order;
}
