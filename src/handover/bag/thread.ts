import { parentPort } from 'node:worker_threads';
import { carryOut, type Outcome, type Task } from './task.ts';

/** What a thread tells: bytes it has read, and what came of the tasks it was given, once it is through. */
export interface Report {
  bytes: number;
  outcomes?: Outcome[];
}

/** In bytes: so often a thread says how far it is. */
const TELL_EVERY = 1 << 24;

parentPort?.on('message', (tasks: Task[]) => {
  let bytes = 0;
  const tell = (report: Report) => {
    parentPort?.postMessage(report);
    bytes = 0;
  };
  const outcomes = tasks.map((task) =>
    carryOut(task, (more) => {
      bytes += more;
      if (bytes >= TELL_EVERY) tell({ bytes });
    }),
  );
  tell({ bytes, outcomes });
});
