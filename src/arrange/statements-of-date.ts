import type { DateStatement } from '../catalogue/component.ts';
import type { Thing } from '../catalogue/thing.ts';
import { datesOfWhole, displayDate } from '../dates/index.ts';
import { edtfOf } from './order.ts';

/** DACS 2.4.16: "undated", never "n.d." or "s.d." */
export const UNDATED: DateStatement = { type: 'inclusive', expression: 'undated' };

/** DACS 2.4.10: bulk dates only beside inclusive ones, and named as such. */
function statements(inclusive: DateStatement, bulk: string | undefined): DateStatement[] {
  if (bulk === undefined) return [inclusive];
  return [inclusive, { type: 'bulk', expression: `bulk ${displayDate(bulk)}`, edtf: bulk }];
}

/** The statements of date of one unit, as somebody wrote them. What could not be read stays in the owner's words. */
export function datesOf(date: Thing['date']): DateStatement[] {
  if (date === undefined || date.reading.kind === 'undated') return [UNDATED];
  const { written, reading } = date;
  if (reading.kind === 'unreadable') return [{ type: 'inclusive', expression: written }];
  const { edtf, assumed, alternatives, bulk } = reading;
  const expression = displayDate(edtf);
  const statement: DateStatement = { type: 'inclusive', expression, edtf };
  if (written !== expression && written !== edtf && bulk === undefined) statement.written = written;
  if (assumed.length > 0 || isWorkedOut(written, edtf)) statement.note = noteOn(written, alternatives);
  return statements(statement, bulk);
}

/** Whether a day was worked out from a feast or the like: "Christmas 1955" names no day of the month. */
function isWorkedOut(written: string, edtf: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(edtf) && written.match(/\d+/g)?.length === 1 && /\p{L}/u.test(written);
}

/** For the readers of the finding aid; how to write the date without a doubt is for the owner of the list alone. */
function noteOn(written: string, alternatives: readonly string[] = []): string {
  const said = `The list has “${written}”`;
  if (alternatives.length === 0) return `${said}; the date is worked out from that.`;
  return `${said}, which may be ${alternatives.map(displayDate).join(', or ')}.`;
}

/** The dates of things taken together: inclusive dates, large gaps shown, and bulk dates (DACS 2.4.7, 2.4.10, 2.4.11). */
export function datesOfThings(things: readonly Thing[]): DateStatement[] {
  // How many pieces have each date: a bundle of three hundred weighs more than a card.
  const pieces: PiecesByDate = new Map();
  for (const thing of things) addPieces(pieces, edtfOf(thing), thing.quantity);
  return datesOfPieces(pieces) ?? datesInWords(things);
}

/** How many pieces have a date, by their dates in EDTF. */
export type PiecesByDate = Map<string, number>;

/** @param number of pieces; one, where nobody says how many */
export function addPieces(pieces: PiecesByDate, edtf: string | undefined, number = 1): void {
  if (edtf !== undefined) pieces.set(edtf, (pieces.get(edtf) ?? 0) + number);
}

/**
 * The statements of date of a whole from the dates of its pieces: DACS 2.4.7, 2.4.10, 2.4.11.
 * @returns undefined where none has a date that could be read
 */
export function datesOfPieces(pieces: PiecesByDate): DateStatement[] | undefined {
  const { inclusive: edtf, bulk } = datesOfWhole(pieces);
  if (edtf === undefined) return undefined;
  return statements({ type: 'inclusive', expression: displayDate(edtf), edtf }, bulk);
}

/** What can be said of things of which no date could be read: their own words, as long as those are few. */
function datesInWords(things: readonly Thing[]): DateStatement[] {
  const unread = things.flatMap(({ date }) => (date?.reading.kind === 'unreadable' ? [date.written] : []));
  const words = [...new Set(unread)];
  if (words.length === 0) return [UNDATED];
  return [{ type: 'inclusive', expression: words.length > 3 ? 'dates in words only' : words.join('; ') }];
}
