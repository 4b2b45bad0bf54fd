import type { Paragraph } from './paragraph.ts';

/** A text on a label that is set on lines of its own. Sizes in points. */
export interface Block {
  /** What it is, for messages: `title`. */
  what: string;
  paragraph: Paragraph;
  /** A second text on the same line, at its right end; below it where the line is too short for both. */
  beside?: Paragraph;
  weight: 'regular' | 'bold';
  /** As large as it would like to be, and as small as it may get. */
  size: number;
  least: number;
  /** Rather smaller on one line than on two. */
  oneLine: boolean;
  /** An aid only: it takes one line, is cut off where that is too short, and is the first to be left out. */
  spare?: true;
  /** Blank space above, in points at full size. */
  above: number;
  /** Where it stands if there is room to spare. */
  at: 'top' | 'bottom';
}
