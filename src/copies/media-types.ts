import type { MediaType } from './media-type.ts';
import { PICTURES } from './media-types-pictures.ts';
import { SOUND_AND_FILM } from './media-types-sound.ts';
import { TEXTS } from './media-types-texts.ts';

/** Every type of file that is known, in the order in which they are tried. */
export const MEDIA_TYPES: readonly MediaType[] = [...PICTURES, ...SOUND_AND_FILM, ...TEXTS];

const byType = new Map(MEDIA_TYPES.map((row) => [row.type, row]));

/** The row of the table for `image/jpeg` and the like. */
export const mediaTypeOf = (type: string): MediaType | undefined => byType.get(type);

/** The ending of a name in lower case and without its dot; empty where it has none. */
export function extensionOf(path: string): string {
  // A dot at the very beginning hides a file on many systems, and parts nothing.
  return /[^/]\.([^./\s]{1,10})$/.exec(path)?.[1]?.toLowerCase() ?? '';
}

/** All types whose names end so. */
export const typesNamed = (extension: string): MediaType[] =>
  MEDIA_TYPES.filter(({ extensions }) => extensions.includes(extension));
