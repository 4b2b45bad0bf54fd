/** What is known of a collection that helps to read its dates; all of it optional. */
export interface DateContext {
  /** How a date in figures is to be read: 5/6/1962 is 5 June (`day-month`) or May 6 (`month-day`). */
  dateOrder?: 'day-month' | 'month-day';
  /** The years to be expected; they settle a year of two figures. */
  earliestYear?: number;
  latestYear?: number;
  /** Codes of the languages in which dates may be written (ISO 639); English is always among them. */
  languages?: readonly string[];
  /** People whose age may stand for a date; `born` is EDTF. */
  people?: readonly { name: string; also?: readonly string[]; born?: string }[];
  /** Code of the country (ISO 3166), for feasts that differ. */
  country?: string;
  /** Of whom an age without a name is, `aged 7`; `born` is EDTF. */
  ageOf?: { name: string; born?: string };
  /** Whether every word has to be understood, as of the day on which a restriction ends: no remark is left in words. */
  whole?: boolean;
  /** YYYY-MM-DD; a date later than this cannot be. Left out where dates may lie ahead. */
  today?: string;
}

/** What became of a phrase that was to be a date. */
export type DateReading =
  | {
      kind: 'date';
      /** EDTF (ISO 8601-2). */
      edtf: string;
      /** What was assumed, a sentence each. */
      assumed: readonly string[];
      /** All readings that remain possible, as EDTF, the likeliest first; only where there are several. */
      alternatives?: readonly string[];
      /** Bulk dates named beside the inclusive ones (DACS 2.4.10), as EDTF. */
      bulk?: string;
    }
  | { kind: 'undated' }
  | {
      kind: 'unreadable';
      /** Why, and how to write it, in sentences for the owner of the list. */
      reason: string;
    };
