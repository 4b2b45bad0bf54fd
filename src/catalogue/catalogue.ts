import type { Finding } from './finding.ts';
import type { FindingAid } from './finding-aid.ts';
import type { Settings } from './settings.ts';
import type { Settled } from './settled.ts';
import type { Thing } from './thing.ts';

/** A catalogue folder as loaded: what its owner wrote, read but not yet arranged. */
export interface Catalogue {
  /** The folder's path. */
  folder: string;
  settings: Settings;
  things: readonly Thing[];
  /** The content of the list from which the things were read. */
  list: Uint8Array;
  /** The name of that file: list.csv, or list.xlsx, list.ods, list.tsv. */
  listFile: string;
  /** Where the list has several sheets: the name of each for messages, and how many of the things, in order, are in it. */
  sheets: readonly { file: string; things: number }[];
  /** A finding aid that was taken in, which the list extends. */
  base?: FindingAid;
  /** The numbers settled so far. */
  settled: readonly Settled[];
  /** What was noticed while reading and stops nothing: unknown columns, dates that could not be read. */
  findings: readonly Finding[];
}
