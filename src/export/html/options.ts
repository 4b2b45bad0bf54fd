/** A small picture of a digital copy. */
export interface Thumbnail {
  /** A `data:` address of a JPEG or WebP picture without metadata. */
  source: string;
  /** In pixels. */
  width: number;
  height: number;
}

/** How a page is to be made. */
export interface HtmlOptions {
  /** By the path of the digital copy as the finding aid has it. */
  thumbnails?: ReadonlyMap<string, Thumbnail>;
  /** The address of a copy as seen from the page; without it, the path itself. */
  copyAddress?: (file: string) => string;
  /** Leaves out what is restricted, and what only that carries. */
  withoutRestricted?: boolean;
}
