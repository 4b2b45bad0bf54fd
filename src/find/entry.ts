import type { FieldName } from './fields.ts';

/** Where a thing lies, in the numbers on the shelf. */
export interface Whereabouts {
  /** The boxes (or packages) in which it lies; a large bundle may take several. */
  boxes: readonly { type: string; number: string }[];
  /** The folder, or several (`3-5, 9`); undefined for what lies apart or by itself. */
  folder?: string;
  /** Which thing it is of those in the folder, from 1. */
  position?: { number: number; of: number };
  /** Why it lies apart from its folder, as a sentence; of a finding aid that was taken in, where it is beyond its box. */
  apart?: string;
  /** What a finding aid that was taken in says (Box 3, Folder 7), blank where it names no container; undefined for a list. */
  named?: string;
}

/** A folder or group, as it is shown before what is in it. */
export interface Above {
  referenceCode: string;
  title: string;
  dates?: string;
  /** Where it lies, as people say it; undefined where it lies in no box. */
  lies?: string;
}

/** What the index keeps of a thing to show it. */
export interface Entry extends Whereabouts {
  /** Of what has none, the `id` in the finding aid. */
  referenceCode: string;
  /** It has no reference code. */
  uncoded?: true;
  title: string;
  dates?: string;
  /** First and last year; null for a side that is open. Undefined for what is undated. */
  years?: readonly [number | null, number | null];
  /** Conditions governing access, where it is restricted. */
  restricted?: string;
  /** The groups and the folder it is described in, from the outermost on. */
  above: readonly Above[];
  /** Places in the list of people. */
  creators: readonly number[];
  people: readonly number[];
  mentioned: readonly number[];
  /** What is said of it in other fields, where there is something. */
  texts: Readonly<Partial<Record<FieldName, readonly string[]>>>;
}

/** A person, family or corporate body: the name, then every other form of it. */
export type Names = readonly [string, ...string[]];

/** A thing with what it is found by and need not be shown. */
export interface Findable {
  entry: Entry;
  /** Its numbers: the reference code, and the one in the list. */
  codes: readonly string[];
  /** Other words for its kind. */
  kindWords: readonly string[];
}

/** All that can be found in a catalogue, in the order of the arrangement, each unit once. */
export interface Findables {
  things: Iterable<Findable>;
  people: readonly Names[];
}
