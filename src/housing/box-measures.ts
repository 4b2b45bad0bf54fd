import { measureGroups } from './size-groups.ts';
import { sizeTokens } from './size-tokens.ts';
import { FILLERS } from './size-units.ts';

/** Three measures in millimetres, in the order in which they are written; or what is wrong with them, as a sentence. */
type BoxMeasures = { measures: [first: number, second: number, third: number] } | { wrong: string };

/** Below this no box is measured, and above that none is carried; a unit is more likely wrong. Millimetres. */
const LEAST = 10;
const MOST = 5000;

/**
 * Reads the three measures of a box, as in `12 x 10 x 4 in`, `33 × 26 × 10,5 cm` or `12¼" by 10" by 5"`, in the units that
 * sizes may have. A unit may be written once for all; three measures without any are not guessed at.
 */
export function readBoxMeasures(written: string): BoxMeasures {
  const tokens = sizeTokens(written);
  const [group, ...others] = measureGroups(tokens);
  const hasWords = tokens.some((token) => token.is === 'word' && !FILLERS.has(token.word));
  // 10/4 in is no fraction that a ruler has, and of a box nobody writes 10 by 4 in that way.
  const fractions = tokens.filter((token) => token.is === 'number' && token.text.includes('/'));
  const hasSlash = written.split('/').length - 1 > fractions.length;
  if (group === undefined || others.length > 0 || hasWords || hasSlash)
    return { wrong: `“${written}” cannot be read as three measures.` };
  const found = group.measures;
  if (found.length !== 3) {
    const count = found.length === 1 ? 'one measure' : `${found.length} measures`;
    return { wrong: `“${written}” is ${count}, and a box has three.` };
  }
  const measures: number[] = [];
  for (const { value, unit, negative } of found) {
    if (unit === undefined) return { wrong: `“${written}” has no unit.` };
    const millimetres = negative ? -value * unit : value * unit;
    if (millimetres < LEAST) return { wrong: `“${written}” has a measure of less than ${LEAST} mm.` };
    if (millimetres > MOST) return { wrong: `“${written}” has a measure of more than ${MOST / 1000} m.` };
    measures.push(millimetres);
  }
  const [first = 0, second = 0, third = 0] = measures;
  return { measures: [first, second, third] };
}
