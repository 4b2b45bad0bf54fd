/** Bytes at a place in a file, written as Latin-1: `[0, '\xFF\xD8\xFF']`. */
export type Mark = readonly [at: number, bytes: string];

/** A kind of file: how it is told by its content, and whether it is fit to be kept. */
export interface MediaType {
  /** As registered with IANA; with `x-` where it is not. */
  type: string;
  /** As it is called in a sentence, in the singular. */
  name: string;
  /** Endings of names, in lower case; an ending may belong to several types. */
  extensions: readonly string[];
  /** Ways in which such a file may begin; of each, all marks must be there. */
  begins?: readonly (readonly Mark[])[];
  /** Letters that stand, besides, somewhere in the first 4 KiB. */
  holds?: readonly string[];
  /** Brands of ISO/IEC 14496-12 files, of which one must be named in the `ftyp` box. */
  brands?: readonly string[];
  /** The type in which it is wrapped, where only the ending of the name tells it from others wrapped alike. */
  inside?: string;
  /** Why it is a doubtful form to keep, and what to keep beside it. */
  unfit?: string;
  /** Where the marks stand. */
  source: string;
}

export const M = 'from memory';
