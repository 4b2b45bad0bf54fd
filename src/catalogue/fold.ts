// Where letters carry accents; in other scripts a mark is a vowel or makes another letter of it.
const ACCENT = /([\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])\p{M}+/gu;
const PLAIN = /^[a-z0-9 ]*$/;

/** A word or name as it is compared: case and accents folded, runs of blanks and a last full stop dropped. */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text.trim().replace(/ {2,}/g, ' ');
  return text
    .normalize('NFKD')
    .replace(ACCENT, '$1')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/\.$/, '')
    .trim();
}
