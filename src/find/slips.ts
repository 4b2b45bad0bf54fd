import type { Term, Terms } from './terms.ts';

/** How many slips in typing are forgiven in a word; none in a short one or in a number. */
export function slipsAllowed(word: string): number {
  if (word.length < 4 || /\p{N}/u.test(word)) return 0;
  return word.length < 6 ? 1 : 2;
}

/** From so many letters on, one slip more is forgiven in a word that is nowhere else: dagerotype for daguerreotype. */
const LONG = 10;

/** How many slips are forgiven in a word that is nowhere, and nothing within `slipsAllowed` of it. */
export function slipsAtMost(word: string): number {
  const allowed = slipsAllowed(word);
  return allowed > 0 && word.length >= LONG ? allowed + 1 : allowed;
}

/**
 * Other spellings of a word, one for the other by the ear: f and ph. Where they are the only slip, they count as one,
 * though they are two letters.
 */
export function spellings(word: string): string[] {
  const others = [word.replaceAll('f', 'ph'), word.replaceAll('ph', 'f')];
  return others.filter((other) => other !== word);
}

/**
 * The words that differ from one by some slips and no more: a letter too many, too few, another one, or two swapped
 * (optimal string alignment). Words that begin with a number are none.
 * @returns each with its slips, at least one
 */
export function wordsNear(terms: Terms, word: string, allowed: number): { term: Term; slips: number }[] {
  if (allowed === 0) return [];
  const found: { term: Term; slips: number }[] = [];
  const letters = Uint16Array.from({ length: word.length }, (_, at) => word.charCodeAt(at));
  const size = letters.length;
  const over = allowed + 1;
  const deepest = size + over;
  // Rows of the usual table, one for each letter of the word met; of a row only what lies near the diagonal.
  const rows = Array.from({ length: deepest + 1 }, () => new Uint8Array(size + 1).fill(over));
  rows[0]?.forEach((_, at, row) => {
    row[at] = Math.min(at, over);
  });
  const fewest = new Uint8Array(deepest + 1);
  let depth = 0;
  const cursor = terms.from('a');
  while (cursor.next()) {
    const { units, length, shared } = cursor;
    // Of what the word has in common with the one before, the rows are there; where all of a row is too far, so is the rest.
    depth = Math.min(depth, shared);
    while (depth < length && depth < deepest && (fewest[depth] ?? 0) <= allowed) {
      depth += 1;
      fewest[depth] = fillRow(rows, depth, units, letters, allowed);
    }
    if (depth < length) continue;
    const slips = rows[length]?.[size] ?? over;
    if (slips > 0 && slips <= allowed && (units[0] ?? 0) > LAST_DIGIT) {
      found.push({ term: cursor.term(), slips });
    }
  }
  return found;
}

// Before the letters stand numbers, and before these what is no word.
const LAST_DIGIT = 57;

/** @returns the fewest slips in the row */
function fillRow(
  rows: readonly Uint8Array[],
  depth: number,
  units: Uint16Array,
  letters: Uint16Array,
  allowed: number,
): number {
  const [row, above, twoAbove] = [rows[depth], rows[depth - 1], rows[depth - 2]];
  if (row === undefined || above === undefined) return allowed + 1;
  const over = allowed + 1;
  const unit = units[depth - 1] ?? 0;
  const from = Math.max(1, depth - allowed);
  const to = Math.min(letters.length, depth + allowed);
  row[0] = Math.min(depth, over);
  if (from > 1) row[from - 1] = over;
  let fewest = from === 1 ? row[0] : over;
  for (let at = from; at <= to; at++) {
    const letter = letters[at - 1] ?? 0;
    let slips = (above[at - 1] ?? over) + (unit === letter ? 0 : 1);
    const added = (row[at - 1] ?? over) + 1;
    if (added < slips) slips = added;
    const dropped = at === depth + allowed ? over : (above[at] ?? over) + 1;
    if (dropped < slips) slips = dropped;
    if (
      depth > 1 &&
      at > 1 &&
      unit === (letters[at - 2] ?? 0) &&
      (units[depth - 2] ?? 0) === letter &&
      twoAbove !== undefined &&
      (twoAbove[at - 2] ?? over) + 1 < slips
    ) {
      slips = (twoAbove[at - 2] ?? over) + 1;
    }
    row[at] = Math.min(slips, over);
    if (slips < fewest) fewest = slips;
  }
  if (to < letters.length) row[to + 1] = over;
  return fewest;
}
