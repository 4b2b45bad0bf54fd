import { type Copied, CopyError, copyFile } from './copy-file.ts';
import { hashFile, PIECE } from './hash-file.ts';

/** A file to be hashed or copied, by whichever thread is free. `size` is in bytes. */
export type Task =
  | { do: 'hash'; file: string; size: number; algorithms: readonly string[] }
  | { do: 'copy'; file: string; size: number; to: string; root?: string };

/** What came of a task: checksums in the order of the algorithms, or what went wrong, and with which of the two files. */
export type Outcome = ({ sums: string[] } & Partial<Copied>) | { side: 'from' | 'to'; code: string };

const buffer = Buffer.allocUnsafeSlow(PIECE);

/**
 * Does one task, in this thread. It throws nothing that has to do with the files.
 * @param step told of bytes that were read
 */
export function carryOut(task: Task, step: (bytes: number) => void): Outcome {
  try {
    if (task.do === 'copy') return copyFile(task.file, task.to, task.root, buffer, step);
    return { sums: hashFile(task.file, task.algorithms, buffer, step) };
  } catch (error) {
    if (error instanceof CopyError) return { side: error.side, code: error.code };
    return { side: 'from', code: (error as NodeJS.ErrnoException).code ?? String(error) };
  }
}
