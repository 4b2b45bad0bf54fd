import type { BroadGroup } from '../kinds/kinds.ts';

/** How finely things should be scanned: in pixels an inch of their size, or in pixels along the longer side. */
export interface Resolution {
  /** Kinds by their singular, or a broad group of kinds. Kinds win over their group. */
  kinds?: readonly string[];
  group?: BroadGroup;
  /** Things whose longer side is above this (in mm) need less: nobody holds them close to the eye. */
  over?: number;
  /** Left out where the size of the thing says nothing: it is the size of an album, a frame, a thing in the round. */
  perInch?: number;
  /** Where no size is known, or none that says anything. */
  along: number;
  source: string;
}

const M = 'FADGI technical guidelines for digitizing cultural heritage materials, two stars; from memory';
const P = 'common practice';

/** Below this many pixels along the longer side a picture does not fill a screen; less is hardly ever of use. */
const SCREEN = 1000;

/** What is not in here is judged as a thing of no known kind. Extend it a row at a time. */
export const RESOLUTIONS: readonly Resolution[] = [
  // Small and made to be enlarged: the size of the film would ask for far too little.
  { kinds: ['negative', 'slide', 'glass plate'], along: 3000, source: M },
  // The size in the list is that of the whole, and the copy is often of one page or one picture.
  { kinds: ['photograph album', 'framed photograph', 'scrapbook'], along: SCREEN, source: P },
  { group: 'Textiles and objects', along: SCREEN, source: P },
  { group: 'Film and sound', along: 0, source: 'not a scan' },
  { group: 'Digital files', along: 0, source: 'as large as it was made' },
];

/** Whatever lies flat: prints, letters, certificates, maps. */
export const FLAT: readonly Resolution[] = [
  { over: 600, perInch: 200, along: SCREEN, source: M },
  { perInch: 300, along: SCREEN, source: M },
];
