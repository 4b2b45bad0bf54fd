import { z } from 'zod';

const DAY_OR_INSTANT = /^(\d{4})(?:-(\d\d)(?:-(\d\d)(?:T\d\d:\d\d:\d\d(?:Z|[+-]\d\d:\d\d))?)?)?$/;

/** Whether a text is a year, month, day or instant that exists, in the years that EAD3 allows here. */
function isDayOrInstant(text: string): boolean {
  const [, year, month = '01', day = '01'] = DAY_OR_INSTANT.exec(text) ?? [];
  if (year === undefined || year < '1900' || year > '2098' || Number.isNaN(Date.parse(text))) return false;
  return new Date(`${year}-${month}-${day}`).toISOString().startsWith(`${year}-${month}-${day}`);
}

/** A date on which a description was made, in the forms that EAD3 takes: ISO 8601. */
export const dayOrInstant = z
  .string()
  .refine(isDayOrInstant, 'must be a year, month, day or instant as in ISO 8601, such as 2026-05-14');
