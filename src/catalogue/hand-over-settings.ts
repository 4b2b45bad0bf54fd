import { z } from 'zod';
import { line } from './text.ts';

/** What `kinfonds hand-over` is to know. */
export const handOverSettings = z.strictObject({
  keep: z
    .array(z.union([line, z.number().transform(String)]))
    .default([])
    .describe('What stays with the family: numbers or titles of things, or titles of groups'),
});
