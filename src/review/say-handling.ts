import { NOT_BOXED } from '../housing/shelf-list.ts';
import type { Handling } from './handling.ts';
import { TASKS } from './handling-words.ts';

/** What has to be done with one thing, a sentence each. */
export const sayTasks = ({ tasks, notBoxed }: Pick<Handling, 'tasks' | 'notBoxed'>): string[] => [
  ...(notBoxed?.advice ?? []),
  ...tasks.map((task) => TASKS[task]),
];

/** The list as lines of plain text: what is not to be boxed, then box by box, each thing with what to do. */
export function* sayHandling(list: readonly Handling[]): Generator<string> {
  let above: string | undefined;
  for (const one of list) {
    const { box, folder, referenceCode, title, condition, notBoxed } = one;
    const inBox = box === undefined ? 'In no box' : `Box ${box}`;
    const heading = notBoxed === undefined ? inBox : `First, ${NOT_BOXED}`;
    if (heading !== above) {
      if (above !== undefined) yield '';
      yield heading;
      above = heading;
    }
    const where = folder === undefined ? '' : `, folder ${folder}`;
    const state = condition === undefined ? '' : ` (${condition})`;
    yield `  [ ] ${referenceCode}  ${title}${where}${state}${notBoxed === undefined ? '' : `: ${notBoxed.has}`}`;
    for (const task of sayTasks(one)) yield `        ${task}`;
  }
}
