import { paragraphs } from '../../catalogue/text.ts';
import { h, type Markup } from './markup.ts';

// Unicode Standard Annex 9: letters and figures that run from right to left (their blocks, present and reserved, as
// DerivedBidiClass.txt has them), and the controls that turn what follows. Nothing else can.
const TURNS =
  /[\u0590-\u08FF\u200E\u200F\u202A-\u202E\u2066-\u2069\uFB1D-\uFDFF\uFE70-\uFEFF\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u;

/** A text within a line. One that could turn round what stands beside it is kept from that; most need nothing. */
export const isolated = (text: string): Markup => (TURNS.test(text) ? h`<bdi>${text}</bdi>` : h`${text}`);

/** Running text, a `p` for each paragraph; one with letters from right to left finds its own direction. */
export const prose = (text: string): Markup[] =>
  paragraphs(text).map((paragraph) =>
    TURNS.test(paragraph) ? h`<p dir="auto">${paragraph}</p>` : h`<p>${paragraph}</p>`,
  );
