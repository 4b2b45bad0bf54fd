import type { Arrangement } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import { HANDLING_WORDS, type HandlingWord, TASKS, type Task } from './handling-words.ts';
import { isDenied } from './word-context.ts';
import { wordFinder } from './word-finder.ts';

/** A thing with which something must be done before it goes into its box, or with care. */
export interface Handling {
  /** Numbers of the box and the folder in which it is to lie. */
  box?: string;
  folder?: string;
  referenceCode: string;
  title: string;
  condition: string;
  tasks: readonly Task[];
}

const ORDER = Object.keys(TASKS) as Task[];

/**
 * What the condition column says must still be done, in the order of the shelf, so that one box after the other can be
 * worked through at the table.
 */
export function handlingList(
  { aid, boxes }: Pick<Arrangement, 'aid' | 'boxes'>,
  words: readonly HandlingWord[] = HANDLING_WORDS,
): Handling[] {
  const find = wordFinder(words);
  const found: Handling[] = [];
  const visit = (unit: Component, box: string | undefined, folder: string | undefined): void => {
    const own = unit.containers.find(({ type }) => type !== 'folder')?.number;
    const here = unit.containers.find(({ type }) => type === 'folder')?.number;
    // What has a box of its own lies apart from the folder above it.
    const inBox = own ?? box;
    const inFolder = here ?? (own === undefined ? folder : undefined);
    const condition = unit.physicalCharacteristics;
    if (condition !== undefined && unit.level !== 'collection') {
      const tasks = new Set(find(condition).flatMap((met) => (isDenied(met) ? [] : [met.row.task])));
      if (tasks.size > 0) {
        found.push({
          ...(inBox !== undefined && { box: inBox }),
          ...(inFolder !== undefined && { folder: inFolder }),
          referenceCode: unit.referenceCode ?? '',
          title: unit.title,
          condition,
          tasks: ORDER.filter((task) => tasks.has(task)),
        });
      }
    }
    for (const child of unit.children) visit(child, inBox, inFolder);
  };
  visit(aid.collection, undefined, undefined);
  const place = new Map(boxes.map(({ number }, index) => [number, index]));
  return found.sort((a, b) => placeOf(a, place) - placeOf(b, place));
}

const placeOf = ({ box }: Handling, place: ReadonlyMap<string, number>) => place.get(box ?? '') ?? place.size;

/** The list as lines of plain text, box by box, each thing with what to do. */
export function* sayHandling(list: readonly Handling[]): Generator<string> {
  let box: string | undefined;
  let first = true;
  for (const { box: its, folder, referenceCode, title, condition, tasks } of list) {
    if (first || its !== box) {
      if (!first) yield '';
      yield its === undefined ? 'In no box' : `Box ${its}`;
      box = its;
      first = false;
    }
    yield `  [ ] ${referenceCode}  ${title}${folder === undefined ? '' : `, folder ${folder}`} (${condition})`;
    for (const task of tasks) yield `        ${TASKS[task]}`;
  }
}
