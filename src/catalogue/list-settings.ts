import { z } from 'zod';
import { line } from './text.ts';
import { COLUMNS } from './thing.ts';

/** The encodings in which a list of comma-separated values can be. */
const ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252', 'mac-roman'] as const;

export type Encoding = (typeof ENCODINGS)[number];

/** For a column of which the program is not to make anything: its cells are kept in the notes. */
export const KEPT = 'kept';

/** How the list is to be read, where the program would not see it by itself. */
export const listSettings = z.strictObject({
  file: line.optional().describe('Which file is the list, where there are several'),
  encoding: z.enum(ENCODINGS).optional().describe('Recognised if not given'),
  sheets: z
    .array(line)
    .min(1)
    .optional()
    .describe('The sheets of a workbook to read; all that hold things if not given'),
  headings: z
    .number()
    .int()
    .min(1)
    .max(1000)
    .optional()
    .describe('The row in which the headings stand; recognised if not given'),
  columns: z
    .record(line, z.enum([...COLUMNS, KEPT]))
    .default({})
    .describe('What a heading of your list means: one of the columns, or kept for the notes'),
});

export type ListSettings = z.infer<typeof listSettings>;
