/** The larger side of something seen from the front, and the smaller, in millimetres. */
export interface Face {
  long: number;
  short: number;
}

/** A size in millimetres; `thick` where a third measure is known. */
export interface Size extends Face {
  thick?: number;
}

/** How a thing must be handled on the shelf, whatever it is about. */
export const FORMS = [
  'sheet',
  'photograph',
  'mounted',
  'framed',
  'bound',
  'negative',
  'slide',
  'glass',
  'disc',
  'film',
  'tape',
  'textile',
  'object',
  'rolled',
  'digital',
] as const;

export type Form = (typeof FORMS)[number];

/** What stands together on the shelf: each shelf has boxes of its own, and an order of its own. */
export const SHELVES = [
  'papers',
  'oversize',
  'volumes',
  'photographs',
  'glass',
  'discs',
  'film',
  'tapes',
  'textiles',
  'objects',
  'rolls',
] as const;

export type Shelf = (typeof SHELVES)[number];

/** What things are put into before they go into a box: a folder, an envelope, a sleeve. Measures in millimetres. */
export interface Holder {
  /** As `collection.yaml` names it: `folder-letter`. */
  id: string;
  one: string;
  many: string;
  type: 'folder' | 'envelope' | 'sleeve';
  /** The largest content that it covers on all sides. */
  inside: Face;
  outside: Face;
  /** Thickness of content that it takes at most. */
  limit: number;
  /** What it adds to the thickness of its content. */
  wall: number;
  takes: readonly Form[];
  shelf: Shelf;
  material: string;
  use: string;
  source: string;
}

/** A box. Measures in millimetres. */
export interface Box {
  /** As `collection.yaml` names it: `document-box-letter`. */
  id: string;
  one: string;
  many: string;
  /** How its content lies: one behind the other, one on the other, or rolled in a tube. */
  lies: 'upright' | 'flat' | 'rolled';
  /** What of its content the front shows, inside. */
  face: Face;
  /** Inside, from the first to the last piece of its content: along the shelf where upright, the height of the stack where flat. */
  deep: number;
  outside: { width: number; height: number; depth: number };
  /** How much of a shelf it counts for: its depth where it stands, its height where it lies in a stack. Millimetres. */
  along: number;
  takes: readonly Shelf[];
  material: string;
  use: string;
  source: string;
}

/** What lies in a box as one piece: a folder with its things, or a thing that goes into the box without one. */
export interface Unit {
  shelf: Shelf;
  outside: Face;
  /** Everything in it included, in millimetres. */
  thickness: number;
}

/** Units in one box, in order. */
export interface Filled<U extends Unit = Unit> {
  box: Box;
  units: U[];
  /** How they lie: in an upright box with too little in it for standing, flat. */
  lies: Box['lies'];
  /** What is left of the depth, in millimetres. */
  slack: number;
  /** What to do about a box that is neither full nor empty enough. */
  advice?: 'spacer' | 'lay flat';
}
