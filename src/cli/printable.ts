// C0 and C1 controls but the line feed, and the bidirectional controls of Unicode Standard Annex 9.
const UNSEEN = /[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g;

/** A text of somebody else's, without what a terminal would take for a command or turn round. */
export function printable(text: string): string {
  return text.replace(UNSEEN, ' ');
}
