import { h, type Markup } from './markup.ts';

const SCHEME = /^[A-Za-z][A-Za-z0-9+.-]*:/;
const WEB = /^https?:\/\//i;

/**
 * Whether a page may link to an address that came out of a catalogue: on the web, or a path below or beside the page.
 * `javascript:`, `file:`, other hosts (`//host`), and places at the root of the machine are no place to send a reader.
 */
export function isSafeAddress(address: string): boolean {
  // URL Standard, 4.4: a browser drops these before it looks at an address.
  const bare = address.replace(/[\u0000-\u0020]/g, '');
  return WEB.test(bare) || (bare !== '' && !SCHEME.test(bare) && !/^[/\\]/.test(bare));
}

/** Words that lead to an address, or only the words where nobody should be led there. */
export const linkTo = (address: string, words: Markup): Markup =>
  isSafeAddress(address) ? h`<a href="${address}" rel="noreferrer">${words}</a>` : words;

/** An identifier or an address on the web, as a link where it is one. */
export const webLink = (address: string, words: Markup): Markup =>
  WEB.test(address) ? linkTo(address, words) : words;
