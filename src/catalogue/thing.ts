import type { DateReading } from '../dates/index.ts';

/** One row of the list: a thing, or a bundle of like things. Every text is trimmed and never blank. */
export interface Thing {
  /** Row in the list as a spreadsheet counts it, the headings being row 1. */
  row: number;
  number?: string | undefined;
  title: string;
  /** What the date column holds, to the letter, and how it was read; undefined where it is blank. */
  date?: { written: string; reading: DateReading } | undefined;
  kind?: string | undefined;
  people: readonly string[];
  creators: readonly string[];
  places: readonly string[];
  occasion?: string | undefined;
  description?: string | undefined;
  /** How many things the row stands for; undefined where the list does not say. */
  quantity?: number | undefined;
  /** Whether that number is a guess ("about 40"). */
  quantityApproximate?: boolean;
  /** Whether the list says how many, in words that could not be read; then the things of the row are not counted. */
  quantityUnread?: boolean;
  /** How many sheets the things of the row have in all: "6 sheets" is one letter of six. */
  sheets?: number;
  size?: string | undefined;
  condition?: string | undefined;
  access?: string | undefined;
  /** When the restriction in `access` ends. */
  until?: { written: string; reading: DateReading } | undefined;
  note?: string | undefined;
  /** Paths of digital copies below the catalogue folder, with forward slashes. */
  copies: readonly string[];
  series?: string | undefined;
  folder?: string | undefined;
  /** Box in which the thing lies now, where the list has such a column. */
  box?: string | undefined;
  languages: readonly string[];
  /** What marks the thing as staying with the family; undefined where the list does not, or says no. */
  stays?: string;
  /** A note meant for the family: no export and no package has it. */
  familyNote?: string;
  /** Cells of columns the program does not know, under their headings as written. */
  extra: readonly { heading: string; text: string }[];
}

/** The columns of the list that have a meaning, by their proper headings. */
export const COLUMNS = [
  'number',
  'title',
  'date',
  'kind',
  'people',
  'place',
  'occasion',
  'description',
  'quantity',
  'size',
  'condition',
  'access',
  'until',
  'note',
  'copy',
  'series',
  'folder',
  'box',
  'language',
  'creator',
  'stays',
  'family note',
] as const;

export type Column = (typeof COLUMNS)[number];
