const PLAIN = /^[a-z0-9 ]*$/;

/** A word or name as it is compared: case and accents folded, runs of blanks and a last full stop dropped. */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text.trim().replace(/ {2,}/g, ' ');
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/\.$/, '')
    .trim();
}
