/** What stands for letters and signs that have no plain form of their own in Unicode (CLDR, Latin-ASCII; from memory). */
const PLAIN: Readonly<Record<string, string>> = {
  ...{ ø: 'o', Ø: 'O', æ: 'ae', Æ: 'AE', œ: 'oe', Œ: 'OE', ß: 'ss', ẞ: 'SS', đ: 'd', Đ: 'D', ð: 'd', Ð: 'D' },
  ...{ þ: 'th', Þ: 'TH', ł: 'l', Ł: 'L', ħ: 'h', Ħ: 'H', ŧ: 't', Ŧ: 'T', ŋ: 'n', Ŋ: 'N', ı: 'i', ĸ: 'k' },
  ...{
    '‘': "'",
    '’': "'",
    '‚': "'",
    '‛': "'",
    '“': '"',
    '”': '"',
    '„': '"',
    '«': '"',
    '»': '"',
    '‹': "'",
    '›': "'",
  },
  ...{
    '–': '-',
    '—': '-',
    '‐': '-',
    '‑': '-',
    '−': '-',
    '×': 'x',
    '⁄': '/',
    '·': '-',
    '•': '-',
    '°': ' deg',
  },
  ...{ '£': 'GBP ', '€': 'EUR ', '©': '(c)', '®': '(R)', '§': 'section ', '¶': '', '¿': '', '¡': '' },
};

const ACCENT = /(\p{Script=Latin})\p{M}+/gu;
const HALF = /(\d)(?=[¼½¾⅓⅔⅛⅜⅝⅞])/gu;

/**
 * A text in letters that any machine can show: accents are left off and Latin letters spelt out, typographic signs
 * become those of a typewriter. Letters of other scripts have no such form and stay as they are.
 */
export function plainLetters(text: string): string {
  if (/^[\x20-\x7E\n]*$/.test(text)) return text;
  return text
    .replace(HALF, '$1 ')
    .normalize('NFKD')
    .replace(ACCENT, '$1')
    .replace(/[^\x00-\x7F]/g, (sign) => PLAIN[sign] ?? sign)
    .normalize('NFC');
}
