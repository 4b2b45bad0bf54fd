import type { Finding } from './finding.ts';
import type { Settings } from './settings.ts';
import type { Settled } from './settled.ts';
import type { Thing } from './thing.ts';

/** A catalogue folder as loaded: what its owner wrote, read but not yet arranged. */
export interface Catalogue {
  /** The folder's path. */
  folder: string;
  settings: Settings;
  things: readonly Thing[];
  /** The content of list.csv, from which the things were read. */
  list: Uint8Array;
  /** The numbers settled so far. */
  settled: readonly Settled[];
  /** What was noticed while reading and stops nothing: unknown columns, dates that could not be read. */
  findings: readonly Finding[];
}
