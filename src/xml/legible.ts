// What a terminal may take for a command, and what turns the order of the letters on a screen: C0 and C1 controls,
// and the bidirectional controls of Unicode Standard Annex 9.
const UNSEEN = /[\u0000-\u001F\u007F-\u009F\u061C\u200E\u200F\u2028\u2029\u202A-\u202E\u2066-\u2069]/g;

/**
 * A text out of somebody else's file, fit to be shown in a message: on one line, no longer than `most` letters, with
 * every character that could do something to the screen written as its code point.
 */
export function legible(text: string, most = 80): string {
  const short = text.length > most ? `${text.slice(0, most).replace(/[\uD800-\uDBFF]$/, '')}…` : text;
  return short.replace(UNSEEN, (character) =>
    /\s/.test(character) ? ' ' : `[U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}]`,
  );
}
