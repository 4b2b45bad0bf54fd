import { legalText } from './markup.ts';
import { FINDER } from './style/finder.ts';
import { PRINT } from './style/print.ts';
import { SCREEN } from './style/screen.ts';
import { TREE } from './style/tree.ts';

/** The whole style of a page; the title of the collection runs at the head of every printed page. */
export const styleFor = (title: string): string =>
  `${SCREEN}${TREE}${FINDER}${PRINT.replace('RUNNING-HEAD', () => cssString(title))}`;

/** A text as a string of CSS (CSS Syntax Level 3, 4.3.7): whatever could end it, or the style, is a code point. */
const cssString = (text: string): string =>
  `"${legalText(text).replace(/["\\<>&\r\n\f\u2028\u2029]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`;
