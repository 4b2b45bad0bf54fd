import { sayDate } from './display.ts';
import { parseEdtf } from './edtf.ts';
import { lexiconOf } from './lexicon.ts';
import { withSenses } from './pieces.ts';
import { asEdtf, doubtfulEdtf } from './plain-edtf.ts';
import { isFuture, outOfRange } from './plausible.ts';
import { bare, saysUndated } from './read-phrase.ts';
import type { DateContext, DateReading } from './reading.ts';
import { readings } from './readings.ts';
import { readBeforeRemark } from './remarks.ts';
import { settle, unreadable } from './settle.ts';
import { fold, tokenise } from './tokens.ts';
import { ADVICE, weigh } from './weigh.ts';

/** No date takes more; what is longer is a story. */
const LONGEST = 400;

// A day and a time, as cameras and computers write it (ISO 8601-1, 5.4; Exif 2.3 with colons).
const INSTANT =
  /^(\d{4})[-:](\d\d)[-:](\d\d)[T ]\d\d:\d\d(?::\d\d(?:[.,]\d{1,9})?)?(?:Z|[+-]\d\d(?::?\d\d)?)?$/;

function readText(text: string, context: DateContext): DateReading {
  const doubtful = doubtfulEdtf(text);
  if (doubtful) {
    const [first] = doubtful;
    const likely = doubtful.filter(
      (one) => !isFuture(one, context) && outOfRange(one, context) === undefined,
    );
    const [chosen = first] = likely;
    const notes =
      likely.length === 1 ? [] : [`It may be ${doubtful.map(sayDate).join(', or ')}.`, ADVICE.second];
    return settle(chosen, notes, context, likely);
  }
  const edtf = asEdtf(text);
  if (edtf !== undefined) return settle(edtf, [], context, []);
  const instant = INSTANT.exec(text);
  if (instant) {
    const day = `${instant[1]}-${instant[2]}-${instant[3]}`;
    return parseEdtf(day)
      ? settle(day, ['The time of day is left out.'], context, [])
      : unreadable('There is no such day.');
  }
  const pieces = bare(withSenses(tokenise(fold(text)), lexiconOf(context.languages)));
  const undated = saysUndated(pieces);
  if (undated === true) return { kind: 'undated' };
  const { found, reason } = readings(undated === false ? pieces : undated, context);
  return found.length === 0 ? unreadable(reason) : weigh(found, context);
}

/** The phrase as a whole, or what stands before a remark in brackets, which stays in words. */
function readWithRemark(text: string, context: DateContext): DateReading {
  const whole = readText(text, context);
  if (whole.kind !== 'unreadable' || context.whole) return whole;
  return readBeforeRemark(text, (part) => readText(part, context)) ?? whole;
}

/**
 * Reads a date as people write it: EDTF, the forms of DACS 2.4, figures and words in English and the languages of
 * the context. Nothing is chosen in silence: what was assumed is said, and what else it may be is listed. Never throws.
 */
export function readDate(phrase: string, context: DateContext = {}): DateReading {
  const text = phrase.trim();
  if (text.length > LONGEST) return unreadable('It is too long for a date.');
  return readWithRemark(text, context);
}
