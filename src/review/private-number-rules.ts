import { listed } from './listed.ts';
import {
  holdsEan13,
  holdsIban,
  holdsItalianTaxCode,
  holdsLuhn,
  holdsMod11And10,
  isDayAndMonth,
  restOf,
  weightedSum,
} from './private-check-digits.ts';

/** A number by which a person, or their money, can be got at. */
export interface NumberRule {
  /** With its article: "a payment card number". */
  name: string;
  about: 'identity' | 'money';
  /** Its form as people write it, in capitals, for the middle of a regular expression. */
  form: string;
  /** Whether its check digits hold, or what takes their place; given without blanks, dots, hyphens and slashes. */
  holds: (bare: string) => boolean;
  /** Words of which one must stand in the same cell, where the form alone would take in other numbers. */
  beside?: readonly string[];
  source: string;
}

const M = 'from memory';

function holdsSwedish(bare: string): boolean {
  const short = bare.slice(-10);
  const day = Number(short.slice(4, 6));
  return isDayAndMonth(String(day > 60 ? day - 60 : day), short.slice(2, 4)) && holdsLuhn(short);
}

/** The rules, the surest first: where two would take the same digits, the first has them. */
export const NUMBER_RULES: readonly NumberRule[] = [
  {
    name: 'an international bank account number (IBAN)',
    about: 'money',
    form: '[A-Z]{2}\\d{2}(?: ?[A-Z0-9]{4}){2,7}(?: ?[A-Z0-9]{1,3})?',
    holds: holdsIban,
    source: 'ISO 13616-1: MOD 97-10',
  },
  {
    name: 'a payment card number',
    about: 'money',
    // By the first digits that are given out: 4, 51-55, 2221-2720, 34, 37, 36, 38, 60, 65, 35.
    form: '(?:(?:4\\d|5[1-5]|2[2-7]|6[05]|35)\\d{2}(?:[ -]?\\d{4}){3}|3[47]\\d{2}[ -]?\\d{6}[ -]?\\d{5}|3[68]\\d{2}[ -]?\\d{6}[ -]?\\d{4})',
    holds: holdsLuhn,
    source: `ISO/IEC 7812-1: Luhn; first digits ${M}`,
  },
  {
    name: 'a US social security number',
    about: 'identity',
    // Never given out: 000, 666 and 900-999 in front, 00 in the middle, 0000 at the end.
    form: '(?!000|666|9)\\d{3}-(?!00)\\d{2}-(?!0000)\\d{4}',
    holds: () => true,
    source: `the form as the US Social Security Administration gives it out, ${M}; there is no check digit`,
  },
  {
    name: 'a US social security number',
    about: 'identity',
    form: '(?!000|666|9)\\d{3} ?(?!00)\\d{2} ?(?!0000)\\d{4}',
    holds: () => true,
    beside: listed('ssn, social security, soc sec, soc. sec'),
    source: `as above, ${M}`,
  },
  {
    name: 'a Canadian social insurance number',
    about: 'identity',
    form: '\\d{3}[ -]?\\d{3}[ -]?\\d{3}',
    holds: holdsLuhn,
    beside: listed('sin, s.i.n, social insurance, nas, assurance sociale, soc. ins'),
    source: `Luhn, ${M}`,
  },
  {
    name: 'a UK National Health Service number',
    about: 'identity',
    form: '\\d{3}[ -]?\\d{3}[ -]?\\d{4}',
    holds: (bare) => {
      const check = 11 - (weightedSum(bare, [10, 9, 8, 7, 6, 5, 4, 3, 2]) % 11);
      return check !== 10 && check % 11 === Number(bare.at(-1));
    },
    beside: listed('nhs, health service, health number'),
    source: 'NHS Data Dictionary: modulus 11',
  },
  {
    name: 'a UK national insurance number',
    about: 'identity',
    form: '(?!BG|GB|KN|NK|NT|TN|ZZ)[A-CEGHJ-PR-TW-Z][A-CEGHJ-NPR-TW-Z] ?\\d{2} ?\\d{2} ?\\d{2} ?[A-D]',
    holds: () => true,
    source: `HM Revenue and Customs, NIM39110: the form, ${M}; there is no check digit`,
  },
  {
    name: 'a Norwegian identity number (fødselsnummer)',
    about: 'identity',
    // Temporary numbers add 4 to the first digit of the day.
    form: '[0-7]\\d[01]\\d{3}[ -]?\\d{5}',
    holds: (bare) =>
      isDayAndMonth(`${Number(bare.charAt(0)) % 4}${bare.charAt(1)}`, bare.slice(2, 4)) &&
      weightedSum(bare, [3, 7, 6, 1, 8, 9, 4, 5, 2, 1]) % 11 === 0 &&
      weightedSum(bare, [5, 4, 3, 2, 7, 6, 5, 4, 3, 2, 1]) % 11 === 0,
    source: `two digits modulus 11, the Norwegian Tax Administration, ${M}`,
  },
  {
    name: 'a Danish identity number (CPR)',
    about: 'identity',
    form: '[0-3]\\d[01]\\d{3}-\\d{4}',
    holds: (bare) =>
      isDayAndMonth(bare.slice(0, 2), bare.slice(2, 4)) &&
      weightedSum(bare, [4, 3, 2, 7, 6, 5, 4, 3, 2, 1]) % 11 === 0,
    source: `modulus 11, which some numbers given out since 2007 do not keep, ${M}`,
  },
  {
    name: 'a Swedish identity number (personnummer)',
    about: 'identity',
    // Coordination numbers add 60 to the day.
    form: '(?:18|19|20)?\\d{2}[01]\\d[0-9]\\d[-+]\\d{4}',
    holds: holdsSwedish,
    source: `Luhn, the Swedish Tax Agency (SKV 704), ${M}`,
  },
  {
    name: 'a Swedish identity number (personnummer)',
    about: 'identity',
    form: '(?:18|19|20)?\\d{2}[01]\\d[0-9]\\d{5}',
    holds: holdsSwedish,
    beside: ['personnummer', 'personnr', 'pnr'],
    source: `as above, ${M}`,
  },
  {
    name: 'a Finnish identity code (henkilötunnus)',
    about: 'identity',
    form: '[0-3]\\d[01]\\d{3}[-+A-FU-Y]\\d{3}[0-9A-FHJ-NPR-Y]',
    holds: (bare) => {
      const digits = `${bare.slice(0, 6)}${bare.slice(-4, -1)}`;
      return (
        isDayAndMonth(bare.slice(0, 2), bare.slice(2, 4)) &&
        '0123456789ABCDEFHJKLMNPRSTUVWXY'.charAt(restOf(digits, 31)) === bare.at(-1)
      );
    },
    source: `the rest by 31, the Digital and Population Data Services Agency, ${M}`,
  },
  {
    name: 'a Danish identity number (CPR)',
    about: 'identity',
    form: '[0-3]\\d[01]\\d{3}[- ]?\\d{4}',
    holds: (bare) => isDayAndMonth(bare.slice(0, 2), bare.slice(2, 4)),
    beside: ['cpr', 'cpr-nr', 'cpr nr'],
    source: `a day and four digits, ${M}`,
  },
  {
    name: 'a German tax number (IdNr)',
    about: 'identity',
    form: '[1-9]\\d ?\\d{3} ?\\d{3} ?\\d{3}',
    // Among the first ten digits, one stands there twice or three times, and no other more than once.
    holds: (bare) => {
      const times = [...'0123456789'].map((digit) => bare.slice(0, 10).split(digit).length - 1);
      const several = times.filter((number) => number > 1);
      return several.length === 1 && several.every((number) => number < 4) && holdsMod11And10(bare);
    },
    source: `ISO/IEC 7064, MOD 11,10; the digits that may be repeated ${M}`,
  },
  {
    name: 'a Polish identity number (PESEL)',
    about: 'identity',
    // The month tells the century too: 21-32 are those of the years 2000 to 2099, 81-92 of the 1800s.
    form: '\\d{2}[0-3890]\\d[0-3]\\d{6}',
    holds: (bare) =>
      isDayAndMonth(bare.slice(4, 6), String(Number(bare.slice(2, 4)) % 20)) &&
      weightedSum(bare, [1, 3, 7, 9, 1, 3, 7, 9, 1, 3, 1]) % 10 === 0,
    source: `weights 1, 3, 7, 9, ${M}`,
  },
  {
    name: 'a Belgian national number',
    about: 'identity',
    form: '\\d{2}[. ]?[01]\\d[. ]?[0-3]\\d[- ]?\\d{3}[. ]?\\d{2}',
    holds: (bare) =>
      isDayAndMonth(bare.slice(4, 6), bare.slice(2, 4)) &&
      // Those born since 2000 have a 2 before the number.
      ['', '2'].some((front) => 97 - restOf(front + bare.slice(0, 9), 97) === Number(bare.slice(9))),
    source: `97 less the rest by 97, ${M}`,
  },
  {
    name: 'a French social security number (NIR)',
    about: 'identity',
    form: '[12] ?\\d{2} ?[01]\\d ?(?:\\d{2}|2[AB]) ?\\d{3} ?\\d{3} ?\\d{2}',
    // Corsica's 2A and 2B count as 19 and 18.
    holds: (bare) =>
      97 - restOf(bare.slice(0, 13).replace('2A', '19').replace('2B', '18'), 97) === Number(bare.slice(13)),
    source: `97 less the rest by 97, INSEE, ${M}`,
  },
  {
    name: 'a Spanish identity number (DNI or NIE)',
    about: 'identity',
    form: '(?:\\d{8}|[XYZ]-?\\d{7})-?[A-HJ-NP-TV-Z]',
    holds: (bare) => {
      const digits = bare.slice(0, -1).replace(/^[XYZ]/, (letter) => String('XYZ'.indexOf(letter)));
      return 'TRWAGMYFPDXBNJZSQVHLCKE'.charAt(restOf(digits, 23)) === bare.at(-1);
    },
    source: `the rest by 23, Ministry of the Interior, ${M}`,
  },
  {
    name: 'an Italian tax code',
    about: 'identity',
    form: '[A-Z]{6}\\d{2}[A-EHLMPRST]\\d{2}[A-Z]\\d{3}[A-Z]',
    holds: holdsItalianTaxCode,
    source: `decree of 23 December 1976, ${M}`,
  },
  {
    name: 'a Swiss insurance number (AHV)',
    about: 'identity',
    form: '756[. ]?\\d{4}[. ]?\\d{4}[. ]?\\d{2}',
    holds: holdsEan13,
    source: `the check digit of GS1 article numbers, ${M}`,
  },
  {
    name: 'a Dutch citizen service number (BSN)',
    about: 'identity',
    form: '\\d{9}|\\d{4}[. ]\\d{2}[. ]\\d{3}|\\d{3}[. ]\\d{3}[. ]\\d{3}',
    holds: (bare) => weightedSum(bare, [9, 8, 7, 6, 5, 4, 3, 2, -1]) % 11 === 0,
    beside: listed('bsn, sofinummer, sofi-nummer, sofi, burgerservicenummer'),
    source: `the test of eleven, ${M}`,
  },
  {
    name: 'the sort code of a bank',
    about: 'money',
    form: '\\d{2}[- ]\\d{2}[- ]\\d{2}',
    holds: () => true,
    beside: ['sort code', 'sort codes'],
    source: `the form, ${M}; there is no check digit`,
  },
  {
    name: 'a bank account number',
    about: 'money',
    form: '\\d{6,12}|\\d{4}[ -]\\d{4}(?:[ -]\\d{1,4})?',
    // Not the years of an account book.
    holds: (bare) => !/^(?:(?:1[5-9]|20)\d\d){2}$/.test(bare),
    beside: listed(
      'account number, account no, account nr, acct, acct no, acct number, a/c, a/c no, sort code, savings account, bank account, kontonummer, kontonr, kto nr, numéro de compte',
    ),
    source: `the words beside it, ${M}; there is no check digit`,
  },
];
