import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { type DateContext, readDate } from '../../src/dates/index.ts';

interface Row {
  phrase: string;
  /** Blank, or the context as JSON. */
  context: string;
  /** EDTF, `undated`, `cannot read`, or `ambiguous`. */
  expect: string;
  note: string;
}

// The table was written by hand from the standards and from usage, by somebody who had not seen the reader; the rows
// from “1931-1938 (1934 missing)” on were added with what they try.
const text = readFileSync(new URL('phrases.csv', import.meta.url), 'utf8');
const rows: Row[] = parse(text, { columns: true, bom: true });

/** What became of a phrase, in the words of the table. A date with alternatives is ambiguous, whichever goes first. */
function outcome({ phrase, context }: Row): string {
  const known: DateContext = context === '' ? {} : JSON.parse(context);
  const reading = readDate(phrase, known);
  if (reading.kind === 'undated') return 'undated';
  if (reading.kind === 'unreadable') return 'cannot read';
  return reading.alternatives ? 'ambiguous' : reading.edtf;
}

describe('phrases.csv', () => {
  it('has the size that was asked for', () => {
    expect(rows.length).toBeGreaterThanOrEqual(300);
    expect(rows.filter((row) => row.expect === 'cannot read').length).toBeGreaterThanOrEqual(60);
  });

  it.each(rows.map((row, index) => ({ line: index + 2, ...row })))('line $line: $phrase $context', (row) => {
    expect(outcome(row), row.note).toBe(row.expect.replaceAll(', ', ','));
  });

  it.each(rows.filter((row) => row.expect === 'ambiguous'))(
    '$phrase $context says why it is ambiguous',
    (row) => {
      const reading = readDate(row.phrase, row.context === '' ? {} : JSON.parse(row.context));
      if (reading.kind !== 'date') throw new Error('It is no date.');
      expect(reading.alternatives?.length).toBeGreaterThan(1);
      expect(reading.assumed.length).toBeGreaterThan(0);
    },
  );
});
