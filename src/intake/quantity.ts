import { heldIn } from '../kinds/held-in.ts';
import { amountIn, isCounted, isVolume, names, unitIn } from './quantity-unit.ts';
import { CONTAINERS, HOLDERS, NOTHING, SHEETS } from './quantity-words.ts';

/** How many things a row stands for. */
interface Quantity {
  /** Undefined where the cell says only how many sheets a thing has, or nothing at all. */
  quantity?: number;
  /** Whether the number is a guess, the least or the most. */
  approximate: boolean;
  /** How many sheets there are in all. */
  sheets?: number;
}

const ABOUT =
  /^(?:about|approximately|approx\.?|around|roughly|circa|ca?\.?(?=[\s\d])|est\.?|nearly|almost|up to|at least|at most|more than|over|under|~|≈|>|<)\s*/;
const OR_SO = /\s*(?:\?|\+|\(?approx\.?\)?| or (?:more|so)|ish)$/;
const LEAST = /^(\d[\d,. ]*)\+(?= \D+$)/;
const IN_ALL = / (?:in all|in total|total|altogether)$/;
const HELD = heldIn();
// No number of things takes more letters.
const LONGEST = 80;
// Sums, products and what stands in brackets are taken apart; deeper than this nobody writes.
const DEEPEST = 3;

/**
 * Reads a number of things as people write it: `12`, `about 40`, `200+`, `a dozen`, `1,200`, `3 letters`, `2 boxes of
 * 36`, `12 + 3`, `40-50` (the upper end), `1 (52 prints)`; `6 sheets` is how much one thing is. Anything else, fractions
 * and words such as "several" among them, is left to a person: undefined.
 * @param kind what the kind column says, in the light of which "2 albums" are two things, or an unknown number of prints
 */
export function readQuantity(written: string, kind = ''): Quantity | undefined {
  const text = written.trim().toLowerCase().replace(/\s+/g, ' ');
  if (text.length > LONGEST) return undefined;
  if (NOTHING.has(text)) return { approximate: false };
  return read(text, kind.toLowerCase().replace(HELD, '$2'), 0);
}

type Reader = (text: string, kind: string, depth: number) => Quantity | undefined;

const read: Reader = (written, kind, depth) => {
  if (depth > DEEPEST) return undefined;
  const counting = written.replace(IN_ALL, '');
  const bare = counting.replace(OR_SO, '').replace(ABOUT, '').replace(OR_SO, '').replace(LEAST, '$1');
  for (const reader of [counted, inBrackets, product, sum, range]) {
    const found = reader(bare, kind, depth);
    if (found !== undefined) return bare === counting ? found : { ...found, approximate: true };
  }
  return undefined;
};

/** A number with or without a unit: 12, three letters, a dozen, 6 sheets. */
const counted: Reader = (text, kind) => {
  const { number = 0, rest = '' } = amountIn(text) ?? {};
  const unit = unitIn(rest);
  if (number < 1) return undefined;
  const perSheet = SHEETS.get(unit ?? '');
  // Of "loose sheets", so many sheets are so many things; "sheet music" of 6 sheets is one piece.
  if (unit !== undefined && perSheet !== undefined && !names(kind.split(' ').at(-1) ?? '', unit))
    return { approximate: false, sheets: Math.ceil(number / perSheet) };
  if (unit !== undefined && !isCounted(unit, kind)) return undefined;
  return { quantity: number, approximate: false };
};

/** 1 (52 prints) is 52 prints, but 1 (6 sheets) one thing of 6 sheets, and an album (52 prints) one album. */
const inBrackets: Reader = (text, kind, depth) => {
  const [, outside = '', inside = ''] = /^([^()]+?),? ?\(([^()]+)\)$/.exec(text) ?? [];
  const whole = counted(outside, kind, depth);
  if (whole === undefined) return undefined;
  const within = read(inside, kind, depth + 1) ?? read(inside, '', depth + 1);
  if (within === undefined) return isCounted(unitIn(inside) ?? '', kind) ? whole : undefined;
  if (within.sheets !== undefined) return { ...whole, sheets: within.sheets };
  if (isVolume(kind)) return whole;
  // Of several, nobody knows whether that many are in each.
  return whole.quantity === 1 ? within : undefined;
};

/** 2 bundles of 20, 2 boxes (36 each), 2 x 36. */
const product: Reader = (text, kind, depth) => {
  const [, many = '', times = '', of = ''] =
    /^(\d{1,4}) ?([x×*]) ?(\d{1,4})$/.exec(text) ??
    /^(.+?) (of|with|containing|holding) (.+?)(?: each)?$/.exec(text) ??
    /^(.+?)(, | \()(.+?) each\)?$/.exec(text) ??
    [];
  const each = times === '' ? undefined : read(of, kind, depth + 1);
  const amount = amountIn(many.replace(/^(?:an? )?(?=[a-z])/, 'one ').replace(/^one (?=one )/, ''));
  if (amount === undefined || amount.number < 1) return undefined;
  const unit = unitIn(amount.rest);
  if (unit !== undefined && unit !== '' && names(kind, unit))
    return { quantity: amount.number, approximate: false };
  const holds = unit === undefined ? /[x×*]/.test(times) : CONTAINERS.has(unit) || HOLDERS.has(unit);
  if (!holds || each?.quantity === undefined) return undefined;
  return { quantity: amount.number * each.quantity, approximate: each.approximate };
};

/** 12 + 3, 12 and 3 letters. */
const sum: Reader = (text, kind, depth) => {
  const parts = text.split(/ ?\+ ?| (?:and|plus|&) /);
  if (parts.length < 2) return undefined;
  const units = new Set(parts.map((part) => unitIn(amountIn(part)?.rest ?? '')));
  units.delete(undefined);
  // "12 letters and 3 cards" are not 15 of either.
  if (units.size > 1) return undefined;
  const all = parts.map((part) => read(part, kind, depth + 1));
  let quantity = 0;
  for (const one of all) {
    if (one?.quantity === undefined) return undefined;
    quantity += one.quantity;
  }
  return { quantity, approximate: all.some((one) => one?.approximate) };
};

/** 40-50, 40 to 50, two or three: the upper end. */
const range: Reader = (text, kind, depth) => {
  const [, from = '', to = ''] =
    /^(?:between )?([^ -]+(?: [^ -]+)?) ?(?:-|–|—|to |or |and )(?: ?)(.+)$/.exec(text) ?? [];
  const low = amountIn(from.trim());
  const high = counted(to, kind, depth)?.quantity;
  if (low?.rest !== '' || high === undefined || low.number >= high) return undefined;
  // 1914-1918 are years.
  return low.number >= 1000 && high < 2100 ? undefined : { quantity: high, approximate: true };
};
