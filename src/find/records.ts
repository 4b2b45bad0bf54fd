import { type ByteWriter, byteWriter, writeCheck, writeText } from './bytes.ts';

/** Values as JSON, each with a checksum, and where each starts. */
export interface Records {
  starts: number[];
  bytes: ByteWriter;
}

export const newRecords = (): Records => ({ starts: [], bytes: byteWriter() });

export function addRecord({ starts, bytes }: Records, value: unknown): void {
  const start = bytes.length;
  starts.push(start);
  writeText(bytes, JSON.stringify(value));
  writeCheck(bytes, start);
}

/** Gives every value a number, the same for those that are the same as JSON. */
export function sharing(records: Records): (value: unknown) => number {
  const numbers = new Map<string, number>();
  return (value) => {
    const key = JSON.stringify(value);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const number = records.starts.length;
    numbers.set(key, number);
    addRecord(records, value);
    return number;
  };
}
