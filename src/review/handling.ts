import type { Arrangement } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import { NOWHERE, type Place, placeOf } from '../catalogue/containers.ts';
import { taskOf, withSeal } from './handling-parts.ts';
import { HANDLING_WORDS, type HandlingWord, TASKS, type Task } from './handling-words.ts';
import { type Material, materialOf } from './material.ts';
import type { NotBoxed } from './not-to-be-boxed.ts';
import { isDenied } from './word-context.ts';
import { wordFinder } from './word-finder.ts';

/** A thing with which something must be done before it goes into its box, or with care. */
export interface Handling {
  /** Numbers of the box and the folder in which it is to lie. */
  box?: string;
  folder?: string;
  referenceCode: string;
  title: string;
  condition?: string;
  tasks: readonly Task[];
  /** Why it is not to be boxed before somebody has looked at it, where it is not. */
  notBoxed?: Pick<NotBoxed, 'has' | 'advice'>;
}

const ORDER = Object.keys(TASKS) as Task[];
/** What is kept apart is not worked on. */
const APART: readonly Task[] = ['isolate', 'enclose'];
const KEPT_APART: ReadonlySet<Task> = new Set([...APART, 'leave']);
/** Tasks for papers. A skin on film, glass or metal comes off with the clip; an object has no folds to lay flat. */
const OF_PAPER: ReadonlySet<Task> = new Set(['unpin', 'unfold', 'flatten']);
const LEFT: ReadonlySet<Material> = new Set(['film', 'plate', 'sound']);

/**
 * What the condition column says must still be done, in the order of the shelf, so that one box after the other can be
 * worked through at the table; before all that, what is not to be boxed, the most urgent first.
 * @param notBoxed by reference code
 */
export function handlingList(
  { aid, boxes }: Pick<Arrangement, 'aid' | 'boxes'>,
  words: readonly HandlingWord[] = HANDLING_WORDS,
  notBoxed: ReadonlyMap<string, NotBoxed> = new Map(),
): Handling[] {
  const find = wordFinder(words);
  const found: Handling[] = [];
  const visit = (unit: Component, above: Place): void => {
    // What has a box of its own lies apart from the folder above it.
    const place = placeOf(unit.containers, above);
    const [first] = place.folders;
    const inBox = (first?.boxes ?? place.boxes)[0]?.number;
    const inFolder = first?.folder.number;
    const { physicalCharacteristics: condition, referenceCode = '', title } = unit;
    const caution = notBoxed.get(referenceCode);
    const met = condition === undefined || unit.level === 'collection' ? [] : find(condition);
    const material = materialIn(unit);
    const said = new Set(met.flatMap((one) => (isDenied(one) ? [] : [taskOf(one, material)])));
    const tasks = caution === undefined ? tasksFor(withSeal(said, title, material), material) : [];
    if (tasks.length > 0 || caution !== undefined) {
      found.push({
        ...(inBox !== undefined && { box: inBox }),
        ...(inFolder !== undefined && { folder: inFolder }),
        referenceCode,
        title,
        ...(condition !== undefined && { condition }),
        tasks,
        ...(caution !== undefined && { notBoxed: { has: caution.has, advice: caution.advice } }),
      });
    }
    for (const child of unit.children) visit(child, place);
  };
  visit(aid.collection, NOWHERE);
  const place = new Map(boxes.map(({ number }, index) => [number, index]));
  const urgent = new Map([...notBoxed.keys()].map((code, index) => [code, index]));
  const rankOf = ({ referenceCode }: Handling) => urgent.get(referenceCode) ?? urgent.size;
  return found.sort((a, b) => rankOf(a) - rankOf(b) || onShelf(a, place) - onShelf(b, place));
}

const onShelf = ({ box }: Handling, place: ReadonlyMap<string, number>) => place.get(box ?? '') ?? place.size;

/** The tasks that suit what a thing is made of, in their order. */
function tasksFor(said: ReadonlySet<Task>, material: Material): Task[] {
  const wanted = new Set<Task>(
    [...said].flatMap((task): Task[] => {
      if (!OF_PAPER.has(task)) return [task];
      return LEFT.has(material) ? ['leave'] : material === 'object' ? [] : [task];
    }),
  );
  const isApart = APART.some((task) => wanted.has(task));
  return ORDER.filter((task) => wanted.has(task) && (!isApart || KEPT_APART.has(task)));
}

/** The material of a unit by its kind, which stands among its access points. */
function materialIn({ accessPoints }: Component): Material {
  const kinds = accessPoints.filter(({ type }) => type === 'genre').map(({ term }) => materialOf(term));
  return kinds.find((material) => material !== 'unknown') ?? 'unknown';
}
