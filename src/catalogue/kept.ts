import { z } from 'zod';

/** The versions of EAD in which a description may have been taken in. */
const KEPT_FORMATS = ['ead3', 'ead2002'] as const;

/**
 * A unit of description (or the control of the description) as it was found in a finding aid that was taken in, where
 * the model does not hold all of it. An export in the same version of EAD writes what still agrees with the model as
 * it was found, and what was changed since from the model; so what is changed in the model always wins.
 */
export const kept = z.strictObject({
  format: z.enum(KEPT_FORMATS),
  xml: z
    .string()
    .describe(
      'The element with its names in no namespace, without the units below it; in a dsc, an empty c stands for them',
    ),
  before: z.string().optional().describe('What stood before it: a thead, or the dsc that begins with it'),
});

export type Kept = z.infer<typeof kept>;
