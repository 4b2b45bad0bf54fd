import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import type { Column } from '../catalogue/thing.ts';
import { perhapsTwo } from './list-findings.ts';
import { maybeTwo, splitNames } from './names.ts';

/** Reads the columns of names. */
interface NameReader {
  read(row: number, cell: string, column: 'people' | 'creator'): readonly string[];
  /** Of each column, the first name that may be two; complete once all rows have been read. */
  findings(): Finding[];
}

/** @param names those that collection.yaml knows */
export function nameReader(names: readonly string[], file: string): NameReader {
  const known = new Set(names.map((name) => name.toLowerCase()));
  // One list for all cells that hold the same: most columns repeat a few words.
  const split = once((cell: string) => {
    const found = splitNames(cell, known);
    return { found, doubtful: found.filter((name) => maybeTwo(name) && !known.has(name.toLowerCase())) };
  });
  const joined = new Map<Column, { row: number; name: string; rows: number }>();
  return {
    read(row, cell, column) {
      const { found, doubtful } = split(cell);
      for (const name of doubtful) {
        const before = joined.get(column);
        if (before === undefined) joined.set(column, { row, name, rows: 1 });
        else before.rows++;
      }
      return found;
    },
    findings: () =>
      [...joined].map(([column, { row, name, rows }]) => perhapsTwo(file, column, row, name, rows)),
  };
}
