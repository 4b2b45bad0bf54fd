import { type Interval, parseEdtf } from './edtf.ts';
import { grainOf, isPlain, plainText, standardText } from './grain.ts';

/** One end of a pair: the date itself where it is plain, else its first or last day at its own grain. */
function endText(end: Interval['start'], side: 'earliest' | 'latest'): string | undefined {
  if (typeof end !== 'object') return undefined;
  return isPlain(end) ? plainText(end) : standardText(end[side], grainOf(end.earliest, end.latest));
}

function pairOf(from: string | undefined, to: string | undefined): string | undefined {
  if (from === undefined || to === undefined) return undefined;
  return from === to ? from : `${from}/${to}`;
}

/**
 * A date for EAD 2002 `unitdate/@normal`: `YYYY[-MM[-DD]]`, or two of them with `/`; a set gives its outer ends.
 * @returns undefined where an end is open or unknown, a year lies outside 0000 to 2999, or the text is no EDTF
 */
export function normalDate(edtf: string): string | undefined {
  const date = parseEdtf(edtf);
  if (!date) return undefined;
  if (date.kind === 'interval') return pairOf(endText(date.start, 'earliest'), endText(date.end, 'latest'));
  if (date.kind === 'point' && isPlain(date)) return plainText(date);
  const { earliest: first, latest: last } = date;
  if (first === undefined || last === undefined) return undefined;
  const grain = grainOf(first, last);
  return pairOf(standardText(first, grain), standardText(last, grain));
}

/**
 * A date for a Dublin Core field that takes W3CDTF: YYYY, YYYY-MM or YYYY-MM-DD (W3C Note of 1997-09-15).
 * @returns undefined where the date is not exactly one year, month or day, or is marked uncertain or approximate
 */
export function w3cDate(edtf: string): string | undefined {
  const date = parseEdtf(edtf);
  const isExact = date?.kind === 'point' && date.mark === '' && isPlain(date) && date.year.low >= 0;
  // An instant is told by its day: W3CDTF wants a time zone with every time, and few lists have one.
  return isExact && date.year.low <= 9999 ? date.text.replace(/T.*$/s, '') : undefined;
}
