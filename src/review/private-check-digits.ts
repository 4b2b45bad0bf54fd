// Check digits, each as its standard or its keeper defines it. All take digits and letters without blanks or hyphens.

const digitsOf = (text: string): number[] => [...text].map(Number);

/** The sum of the digits, each times its weight; weights beyond the digits, or digits beyond the weights, do not count. */
export function weightedSum(text: string, weights: readonly number[]): number {
  return digitsOf(text).reduce((sum, digit, at) => sum + digit * (weights[at] ?? 0), 0);
}

/** Luhn's formula, the check digit last: ISO/IEC 7812-1, annex B. */
export function holdsLuhn(text: string): boolean {
  const sum = digitsOf(text)
    .reverse()
    .reduce((total, digit, at) => total + (at % 2 === 0 ? digit : digit * 2 - (digit > 4 ? 9 : 0)), 0);
  return sum % 10 === 0;
}

/** The rest of a number of any length, divided; longer than what a number of the language holds exactly. */
export function restOf(digits: string, divisor: number): number {
  return digitsOf(digits).reduce((rest, digit) => (rest * 10 + digit) % divisor, 0);
}

/** MOD 97-10 over letters and digits, the first four moved to the end: ISO 13616-1, ISO/IEC 7064. */
export function holdsIban(text: string): boolean {
  const turned = text.slice(4) + text.slice(0, 4);
  return (
    restOf(
      turned.replace(/[A-Z]/g, (letter) => String(letter.charCodeAt(0) - 55)),
      97,
    ) === 1
  );
}

/** MOD 11,10, the check digit last: ISO/IEC 7064. */
export function holdsMod11And10(text: string): boolean {
  const product = digitsOf(text.slice(0, -1)).reduce((last, digit) => {
    const sum = (last + digit) % 10;
    return ((sum === 0 ? 10 : sum) * 2) % 11;
  }, 10);
  return (11 - product) % 10 === Number(text.at(-1));
}

/** The check digit of an article number, last of thirteen: GS1 General Specifications, 7.9. */
export function holdsEan13(text: string): boolean {
  return weightedSum(text, [1, 3, 1, 3, 1, 3, 1, 3, 1, 3, 1, 3, 1]) % 10 === 0;
}

/** Whether a day and a month can be, whatever the year. */
export function isDayAndMonth(day: string, month: string): boolean {
  const longest = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(month) - 1];
  return longest !== undefined && Number(day) >= 1 && Number(day) <= longest;
}

const FROM_ODD = [
  1, 0, 5, 7, 9, 13, 15, 17, 19, 21, 2, 4, 18, 20, 11, 3, 6, 8, 12, 14, 16, 10, 22, 25, 24, 23,
];

/** The letter at the end of an Italian tax code: decree of 23 December 1976, from memory. */
export function holdsItalianTaxCode(text: string): boolean {
  const place = (sign: string) => (/\d/.test(sign) ? Number(sign) : sign.charCodeAt(0) - 65);
  const sum = [...text.slice(0, 15)].reduce(
    (total, sign, at) => total + (at % 2 === 0 ? (FROM_ODD[place(sign)] ?? 0) : place(sign)),
    0,
  );
  return String.fromCharCode(65 + (sum % 26)) === text.at(15);
}
