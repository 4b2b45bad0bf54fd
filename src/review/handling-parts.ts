import type { HandlingWord, Task } from './handling-words.ts';
import type { Material } from './material.ts';
import { isDenied } from './word-context.ts';
import type { Met } from './word-finder.ts';

// What is done depends on the part that is broken or loose, not on the thing alone: a spine is tied, a seal is not
// wrapped in a packet of its own, and a lid is neither. All of it is common practice.

const PARTS: readonly [part: RegExp, task: Task][] = [
  [/\bseals?\b/, 'seal'],
  [/\b(?:spines?|covers?|boards|bindings?|hinges?|joints?|headbands?)\b/, 'binding'],
];
/** What is said of a part as well as of the whole. */
const OF_PARTS: ReadonlySet<Task> = new Set(['support', 'mark']);
/** Materials that are never bound and bear no seals. */
const NOT_BOUND: ReadonlySet<Material> = new Set(['film', 'plate', 'sound', 'object', 'textile', 'digital']);
const CLAUSE_END = /[,;:!?\n()–—]|\.(?!\d)/;

/** The words around a place between the commas that part them from the rest: "spine fine" says nothing of ", loose pages". */
function clauseAround({ text, at, end }: Pick<Met<unknown>, 'text' | 'at' | 'end'>): string {
  const before = text.slice(0, at).split(CLAUSE_END).at(-1) ?? '';
  const after = text.slice(end).split(CLAUSE_END)[0] ?? '';
  return `${before}${text.slice(at, end)}${after}`;
}

/** What a word of the condition asks for, of the part that it is said of. */
export function taskOf(met: Met<HandlingWord>, material: Material): Task {
  const { task } = met.row;
  if (NOT_BOUND.has(material)) return task === 'binding' ? boundless(met) : task;
  if (!OF_PARTS.has(task)) return task;
  const clause = clauseAround(met);
  return PARTS.find(([part]) => part.test(clause))?.[1] ?? task;
}

const boundless = ({ text, at, end }: Met<HandlingWord>): Task =>
  text.slice(at, end).includes('broken') ? 'mark' : 'support';

const IN_TITLE = /\b(?:wax|pendent|pendant) seals?\b|\bseals? of wax\b|\bwith (?:\p{L}+ ){0,2}seals?\b/iu;
/** What would press on a seal, or make it hang. */
const WITH_SEAL: ReadonlySet<Task> = new Set(['unfold', 'flatten', 'unpin']);

/**
 * Tasks with that for a seal, where the thing has one: it is not pressed under a weight.
 * @param told what the title says, for a seal stands there as often as under its condition
 */
export function withSeal(tasks: ReadonlySet<Task>, told: string, material: Material): ReadonlySet<Task> {
  if (tasks.size === 0) return tasks;
  const sealed = new Set(tasks);
  if (NOT_BOUND.has(material)) {
    sealed.delete('seal');
    return sealed;
  }
  const inTitle = IN_TITLE.exec(told.toLowerCase());
  const hasSeal =
    inTitle !== null &&
    !isDenied({ text: told.toLowerCase(), at: inTitle.index, end: inTitle.index + inTitle[0].length });
  if (hasSeal && [...tasks].some((task) => WITH_SEAL.has(task))) sealed.add('seal');
  if (sealed.has('seal')) sealed.delete('flatten');
  return sealed;
}
