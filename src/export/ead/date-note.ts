import type { DateStatement } from '../../catalogue/component.ts';

/** What was assumed in reading a date, as a note of the `did`. */
export function dateNoteOf({ note }: DateStatement): string[] {
  return note === undefined ? [] : [`Date: ${note}`];
}
