import { z } from 'zod';

/** What can be wrong with a digital copy as a file, before anything is asked about its content. */
const TROUBLES = ['missing', 'empty', 'unreadable', 'not a file', 'leads out', 'damaged'] as const;

/**
 * The technical facts of a digital copy. With a trouble other than `damaged`, only path, bytes and trouble are told.
 * - `missing`: there is no such file; `unreadable`: there is, but the system does not let it be read.
 * - `not a file`: a folder, a device or a link that leads round in a circle.
 * - `leads out`: a link, or a path, to something outside the catalogue folder; it is never followed.
 * - `damaged`: the content breaks off before its end, or its header makes no sense.
 */
export const copyFacts = z.strictObject({
  /** Path below the catalogue folder with forward slashes, as the list names it. */
  path: z.string(),
  bytes: z.number().int().min(0),
  /** In lower-case hexadecimal; left out where nobody asked for it, and where the file could not be read. */
  sha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .exactOptional(),
  /** By the content, never by the name alone: `image/jpeg`. Left out where the content is of no known type. */
  mediaType: z.string().exactOptional(),
  /** In pixels, as stored: turned by `orientation`, a picture may stand upright. */
  width: z.number().exactOptional(),
  height: z.number().exactOptional(),
  /** Exif orientation, 1 to 8. */
  orientation: z.number().exactOptional(),
  /** Length of a recording. */
  seconds: z.number().exactOptional(),
  /** Pictures in one TIFF file. */
  pages: z.number().exactOptional(),
  /** The day on which the picture was taken by its Exif DateTimeOriginal, as EDTF. */
  madeAt: z.string().exactOptional(),
  /** Whether the file tells where it was made. Where that is, is never read out. */
  hasLocation: z.boolean().exactOptional(),
  /** Pixels an inch, as the file says of itself; scanners set it, cameras write a number that means nothing. */
  dpi: z.number().exactOptional(),
  trouble: z.enum(TROUBLES).exactOptional(),
});

export type CopyFacts = z.infer<typeof copyFacts>;

/** Whether a copy is a file of the catalogue, and no address on the web. */
export const isPath = (copy: string): boolean => !/^https?:\/\//i.test(copy);
