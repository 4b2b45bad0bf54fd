import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';

/** Something that can be named: by its id, or in plain words. */
interface Named {
  id: string;
  one: string;
  many: string;
}

/** What a name stands for: one thing of the table; or what it may be meant to be, and that may be nothing. */
type NameReading<Row> = { row: Row } | { meant: readonly string[] };

// Words that tell nothing apart: "a legal-size file folder" is a legal folder.
const EMPTY = new Set(['a', 'an', 'the', 'of', 'for', 'in', 'inch', 'inche', 'size', 'sized', 'file']);

/** The words of a name that count, in one order and in the singular: "folders, legal size" and "legal folder" are one. */
function wordsOf(name: string): Set<string> {
  const words = fold(name)
    .replace(/(\d\S*) *[x×] *(?=\d)/g, '$1x')
    .replace(/[^\p{L}\p{N}./⁄]+/gu, ' ')
    .split(' ')
    .map((word) => (/xes$/.test(word) ? word.slice(0, -2) : /[^s]s$/.test(word) ? word.slice(0, -1) : word));
  return new Set(words.filter((word) => word !== '' && !EMPTY.has(word)));
}

const within = (some: ReadonlySet<string>, all: ReadonlySet<string>) =>
  [...some].every((word) => all.has(word));

/** Reads the name of a row: the same words in any order, or so few of them that they fit one row only. */
export function readName<Row extends Named>(name: string, rows: readonly Row[]): NameReading<Row> {
  const said = wordsOf(name);
  const spelled = rows.map((row) => ({ row, ways: [row.id, row.one, row.many].map(wordsOf) }));
  const fitting = spelled.filter(({ ways }) => said.size > 0 && ways.some((words) => within(said, words)));
  const exact = fitting.filter(({ ways }) => ways.some((words) => words.size === said.size));
  const [only, ...others] = exact.length > 0 ? exact : fitting;
  if (only !== undefined && others.length === 0) return { row: only.row };
  if (only !== undefined) return { meant: [only, ...others].map(({ row }) => row.one) };
  const near = nearest(
    fold(name),
    rows.flatMap(({ id, one }) => [one, id]),
  );
  return { meant: near === undefined ? [] : [near] };
}
