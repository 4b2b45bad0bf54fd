import { yearText } from './calendar.ts';
import { MONTHS } from './display-point.ts';
import type { Item } from './read-item.ts';
import type { Scanner } from './scanner.ts';
import { knownYear } from './years.ts';

/** A longer span is as likely written the wrong way round. */
const MOST_MONTHS = 6;

/**
 * Lets a span begin in the year before where its end alone has a year and its months run past a New Year:
 * "30 Dec - 2 Jan 1951". What is assumed is said.
 */
export function crossNewYear(s: Scanner, items: readonly Item[]): void {
  for (const item of items) {
    if (item.shape !== 'span' || typeof item.start !== 'object' || typeof item.end !== 'object') continue;
    const { start, end } = item;
    const year = knownYear(end);
    if (start.year !== undefined || year === undefined) continue;
    if (start.month === undefined || end.month === undefined || start.month <= end.month) continue;
    if (end.month + 13 - start.month > MOST_MONTHS) continue;
    start.year = yearText(year - 1);
    s.notes.push(
      `The year stands at the end only; the start is taken as ${MONTHS[start.month - 1] ?? ''} ${start.year}.`,
    );
  }
}
