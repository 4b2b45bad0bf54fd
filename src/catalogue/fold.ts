// Where letters carry accents; in other scripts a mark is a vowel or makes another letter of it.
const ACCENT = /([\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])\p{M}+/gu;
const PLAIN = /^[a-z0-9 ]*$/;

/** A word or name as it is compared: case and accents folded, runs of blanks and a last full stop dropped. */
export function fold(text: string): string {
  const small = text.toLowerCase();
  if (PLAIN.test(small)) return (small.includes('  ') ? small.replace(/ {2,}/g, ' ') : small).trim();
  return text
    .normalize('NFKD')
    .replace(ACCENT, '$1')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/\.$/, '')
    .trim();
}
