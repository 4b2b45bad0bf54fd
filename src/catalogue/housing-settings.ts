import { z } from 'zod';
import { line } from './text.ts';

/** More than this and a folder neither closes nor lets itself be carried; less is no folder. */
const thickness = z.number().min(3).max(60);

/** A box of one's own, measured inside. */
const ownMeasures = z.strictObject({
  name: line.describe('What it is called on lists and labels'),
  inside: line.describe(
    'Inside: width and height of what stands in it, then depth from the first to the last, such as 12 x 10 x 4 in or 33 × 26 × 10 cm; of a flat box the smallest is its height',
  ),
  flat: z.boolean().default(false).describe('Whether its content lies flat, one on the other'),
  for: z
    .array(line)
    .min(1)
    .default(['papers'])
    .describe(
      'What goes into it: papers, oversize, volumes, photographs (negatives and slides), glass, discs, film, tapes, textiles, objects, rolls',
    ),
});

/** Folders and boxes at hand or to be had, and how extent is measured. */
export const housingSettings = z.strictObject({
  folders: z
    .array(line)
    .default([])
    .describe('Folders and sleeves to use, such as letter folder; the usual ones for what none is named for'),
  boxes: z
    .array(line)
    .default([])
    .describe('Boxes to use, such as letter document box; the usual ones for what none is named for'),
  own: z.array(ownMeasures).default([]).describe('Boxes of your own, with their measures'),
  thickness: thickness
    .optional()
    .describe('Of what lies in a folder at most, in millimetres; 19 if not given'),
  measure: z.enum(['feet', 'metres', 'both']).default('both').describe('In which extent is stated'),
});

export type HousingSettings = z.infer<typeof housingSettings>;
