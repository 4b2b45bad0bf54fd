/** How many things a row stands for, and whether the number is a guess. */
export interface Quantity {
  quantity: number;
  approximate: boolean;
}

// Common practice: the words with which people write a small number or an estimate.
const WORDS = new Map(
  Object.entries({
    ...{
      one: 1,
      two: 2,
      three: 3,
      four: 4,
      five: 5,
      six: 6,
      seven: 7,
      eight: 8,
      nine: 9,
      ten: 10,
      eleven: 11,
    },
    ...{
      twelve: 12,
      'a pair': 2,
      'a dozen': 12,
      'one dozen': 12,
      'half a dozen': 6,
      'two dozen': 24,
      'a score': 20,
    },
  }),
);
const ABOUT = /^(?:about|approximately|approx\.?|around|roughly|circa|ca?\.?(?=[\s\d])|~|≈)\s*/;
const UNIT =
  /(?<=.)\s*(?:pieces?|items?|things?|pcs?\.?|copies|volumes?|vols?\.?|letters?|cards?|postcards?|photos?|photographs?|prints?|slides?|books?|envelopes?)$/;
const BUNDLE = /^(?:an? |one )?(?:bundle|packet|pack|set|pile|batch|lot|box|envelope) of\s+/;
// 12, or 1,200 with any mark between the thousands.
const FIGURES = /^\d{1,9}$|^\d{1,3}(?:[,.'’\s]\d{3}){1,2}$/;

/**
 * Reads a number of things as people write it: `12`, `about 40`, `c. 40`, `40?`, `a dozen`, `1,200`, `3 letters`,
 * `bundle of 14`. Anything else, ranges, fractions and pages among them, is left to a person: undefined.
 */
export function readQuantity(written: string): Quantity | undefined {
  const text = written.trim().toLowerCase().replace(/\s+/g, ' ');
  const counting = text.replace(BUNDLE, '');
  const bare = counting.replace(ABOUT, '');
  const number = bare.replace(/\s*\?$/, '');
  const approximate = number !== counting;
  const counted = number.replace(UNIT, '');
  const quantity = FIGURES.test(counted) ? Number(counted.replace(/\D/g, '')) : WORDS.get(counted);
  return quantity === undefined || quantity === 0 ? undefined : { quantity, approximate };
}
