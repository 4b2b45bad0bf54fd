import { z } from 'zod';
import { line, prose } from './text.ts';

/** Words of one's own for the tables of `kinfonds check`. */
const wordSettings = z.strictObject({
  words: z.array(line).min(1),
  mean: line.describe('What they point to, such as mould, medicines, health, vague or unfold'),
});

// 24 without quotation marks is the thing of that number.
const numberOrName = z.union([line, z.number().int().transform(String)]);

/** An answer to a finding: it is then quiet, and the reason is kept. */
const answerSettings = z.strictObject({
  rule: line.describe('The rule, as the report names it'),
  of: numberOrName
    .optional()
    .describe('Number or title of one thing, or a reference code; all of the rule if not given'),
  because: prose,
});

/** What `kinfonds check` is to know. */
export const checkSettings = z.strictObject({
  words: z.array(wordSettings).default([]),
  answers: z.array(answerSettings).default([]),
});

export type CheckSettings = z.infer<typeof checkSettings>;
