import { setImmediate } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { carryOut, type Outcome, type Task } from './task.ts';
import type { Report } from './thread.ts';

/** How tasks are to be done, and whom to tell. */
interface Telling {
  /** How many threads at most. */
  threads: number;
  /** Told of bytes that were read. */
  step: (bytes: number) => void;
  /** Told what came of each task, in no certain order. What it throws ends the work, and comes through. */
  done: (task: Task, outcome: Outcome) => void;
}

/** In bytes, and in files: less is done before other threads have so much as started. */
const WORTH_THREADS = { bytes: 1 << 26, files: 4000 };

/** In bytes, and in files: what a thread is given at a time. */
const HANDFUL = { bytes: 1 << 22, files: 64 };

/** Does tasks on several threads, the largest first, so that none is left with a large one at the end. */
export async function carryOutAll(tasks: readonly Task[], telling: Telling): Promise<void> {
  const bytes = tasks.reduce((sum, { size }) => sum + size, 0);
  if (bytes < WORTH_THREADS.bytes && tasks.length < WORTH_THREADS.files) return carryOutHere(tasks, telling);
  const handfuls = inHandfuls([...tasks].sort((one, other) => other.size - one.size));
  const count = Math.min(telling.threads, handfuls.length);
  const left = handfuls.values();
  const workers: Worker[] = [];
  try {
    await Promise.all(
      Array.from({ length: count }, () => {
        // Compiled, it lies beside this file. What the program itself was started with is none of its business.
        const worker = new Worker(new URL('./thread.js', import.meta.url), { execArgv: [] });
        workers.push(worker);
        return keepBusy(worker, left, telling);
      }),
    );
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

async function carryOutHere(tasks: readonly Task[], { step, done }: Telling): Promise<void> {
  for (const task of tasks) {
    done(task, carryOut(task, step));
    await setImmediate();
  }
}

function keepBusy(worker: Worker, left: Iterator<Task[]>, { step, done }: Telling): Promise<void> {
  return new Promise((resolve, reject) => {
    let given: Task[] = [];
    const next = () => {
      const handful = left.next();
      if (handful.done === true) return resolve();
      given = handful.value;
      worker.postMessage(given);
    };
    worker.on('error', reject);
    worker.on('exit', () => reject(new Error('A thread that reads files ended before its work was done.')));
    worker.on('message', ({ bytes, outcomes }: Report) => {
      try {
        step(bytes);
        if (outcomes === undefined) return;
        outcomes.forEach((outcome, at) => {
          const task = given[at];
          if (task !== undefined) done(task, outcome);
        });
        next();
      } catch (error) {
        reject(error);
      }
    });
    next();
  });
}

function inHandfuls(tasks: readonly Task[]): Task[][] {
  const handfuls: Task[][] = [];
  let handful: Task[] = [];
  let bytes = 0;
  for (const task of tasks) {
    handful.push(task);
    bytes += task.size;
    if (bytes < HANDFUL.bytes && handful.length < HANDFUL.files) continue;
    handfuls.push(handful);
    [handful, bytes] = [[], 0];
  }
  if (handful.length > 0) handfuls.push(handful);
  return handfuls;
}
