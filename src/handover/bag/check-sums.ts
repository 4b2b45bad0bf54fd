import { availableParallelism } from 'node:os';
import type { Finding } from '../../catalogue/finding.ts';
import { calledAlgorithm } from './algorithms.ts';
import type { ToCheck, Wanted } from './match.ts';
import type { Task } from './task.ts';
import { carryOutAll } from './threads.ts';

/** What came of reckoning the checksums of the files of a bag anew. Paths are as the manifests list them. */
interface Checked {
  changed: string[];
  missing: string[];
  findings: Finding[];
}

/** More would only wait for the disk. */
const THREADS = Math.min(8, availableParallelism());

/**
 * Reckons the checksums of files anew, on all cores, and compares.
 * @param step told how many bytes have been read of how many; a large file may be read once for each of its checksums
 */
export async function checkSums(
  files: readonly ToCheck[],
  step: (done: number, total: number) => void,
): Promise<Checked> {
  const share = files.reduce((sum, { file }) => sum + file.size, 0) / THREADS;
  let [done, total] = [0, 0];
  const whose = new Map<Task, ToCheck>();
  for (const one of files) {
    const { size, real } = one.file;
    const algorithms = [...new Set(one.wanted.map(({ algorithm }) => algorithm))];
    // A file so large that the others would be done long before it: each of its checksums on a thread of its own.
    const parts = size > share ? algorithms.map((algorithm) => [algorithm]) : [algorithms];
    for (const part of parts) whose.set({ do: 'hash', file: real, size, algorithms: part }, one);
    total += parts.length * size;
  }
  const sums = new Map<ToCheck, Map<string, string>>();
  const unreadable = new Map<ToCheck, string>();
  await carryOutAll([...whose.keys()], {
    threads: THREADS,
    step(bytes) {
      done = Math.min(total, done + bytes);
      step(done, total);
    },
    done(task, outcome) {
      const one = whose.get(task);
      if (one === undefined || task.do !== 'hash') return;
      if (!('sums' in outcome)) return void unreadable.set(one, outcome.code);
      const known = sums.get(one) ?? new Map<string, string>();
      task.algorithms.forEach((algorithm, at) => {
        known.set(algorithm, outcome.sums[at] ?? '');
      });
      sums.set(one, known);
    },
  });
  return judged(files, sums, unreadable);
}

function judged(
  files: readonly ToCheck[],
  sums: ReadonlyMap<ToCheck, ReadonlyMap<string, string>>,
  unreadable: ReadonlyMap<ToCheck, string>,
): Checked {
  const checked: Checked = { changed: [], missing: [], findings: [] };
  for (const one of files) {
    const { path, wanted, foundAs } = one;
    const place = { file: path };
    const code = unreadable.get(one);
    const wrong = wanted.filter(({ algorithm, sum }) => sums.get(one)?.get(algorithm) !== sum);
    if (code !== undefined) {
      const found = `The file cannot be read (${code}).`;
      const advice =
        'The disk may be failing: copy all else from it first, and take this file from another copy.';
      checked.changed.push(path);
      checked.findings.push({ rule: 'bag.unreadable', weight: 'must', place, found, advice });
    } else if (wrong.length > 0 && foundAs !== undefined) {
      const found = `The file is missing. What lies there as ${foundAs} is another.`;
      const advice =
        'On some systems two names that differ so little are one: the one file has replaced the other.';
      checked.missing.push(path);
      checked.findings.push({ rule: 'bag.missing', weight: 'must', place, found, advice });
    } else if (wrong.length > 0) {
      checked.changed.push(path);
      checked.findings.push(changed(place.file, wanted, wrong));
    }
  }
  return checked;
}

function changed(file: string, wanted: readonly Wanted[], wrong: readonly Wanted[]): Finding {
  const called = (sums: readonly Wanted[]) =>
    [...new Set(sums.map(({ algorithm }) => calledAlgorithm(algorithm)))].join(' and ');
  const right = wanted.filter((one) => !wrong.includes(one) && !/^(?:md5|sha1)$/.test(one.algorithm));
  const isOne = new Set(wrong.map(({ algorithm }) => algorithm)).size === 1;
  const differs = `${called(wrong)} ${isOne ? 'checksum is' : 'checksums are'} not what the manifest says`;
  const found =
    right.length === 0
      ? `The file is not as it was: its ${differs}.`
      : `Its ${differs}, but its ${called(right)} is: it is a manifest that was changed, and not the file.`;
  const advice = 'Take it from another copy of this bag in which it is as it was.';
  return { rule: 'bag.changed', weight: 'must', place: { file }, found, advice, source: 'RFC 8493, 3' };
}
