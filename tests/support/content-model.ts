/**
 * A content model as a regular expression over the names of children. Each is kept in one form only, so that equal
 * models have equal keys and a walk over them ends.
 */
export interface ContentModel {
  key: string;
  /** Whether it lets an element be without children. */
  nullable: boolean;
  /** The names a first child may have. */
  first: ReadonlySet<string>;
  /** What may follow after a first child of that name (Brzozowski, Derivatives of Regular Expressions, 1964). */
  after(name: string): ContentModel;
}

const NONE: ReadonlySet<string> = new Set();

/** No children at all. */
export const nothing: ContentModel = { key: '()', nullable: true, first: NONE, after: () => impossible };

/** What no list of children can meet. */
const impossible: ContentModel = { key: '!', nullable: false, first: NONE, after: () => impossible };

/** One child of that name. */
export function one(name: string): ContentModel {
  return {
    key: name,
    nullable: false,
    first: new Set([name]),
    after: (found) => (found === name ? nothing : impossible),
  };
}

export function sequence(items: readonly ContentModel[]): ContentModel {
  return items.reduceRight<ContentModel>((rest, item) => pair(item, rest), nothing);
}

function pair(head: ContentModel, rest: ContentModel): ContentModel {
  if (head === impossible || rest === impossible) return impossible;
  if (head === nothing) return rest;
  if (rest === nothing) return head;
  return {
    key: `(${head.key},${rest.key})`,
    nullable: head.nullable && rest.nullable,
    first: head.nullable ? new Set([...head.first, ...rest.first]) : head.first,
    after: (name) => {
      const inHead = pair(head.after(name), rest);
      return head.nullable ? choice([inHead, rest.after(name)]) : inHead;
    },
  };
}

export function choice(items: readonly ContentModel[]): ContentModel {
  const distinct = new Map(items.filter((item) => item !== impossible).map((item) => [item.key, item]));
  const list = [...distinct.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  const [only] = list;
  if (only === undefined) return impossible;
  if (list.length === 1) return only;
  return {
    key: `(${list.map(({ key }) => key).join('|')})`,
    nullable: list.some(({ nullable }) => nullable),
    first: new Set(list.flatMap(({ first }) => [...first])),
    after: (name) => choice(list.map((item) => item.after(name))),
  };
}

/** `item` so many times; `most` may be Infinity. */
export function repeated(item: ContentModel, least: number, most: number): ContentModel {
  const must = Array.from({ length: least }, () => item);
  if (most === Number.POSITIVE_INFINITY) return sequence([...must, anyNumber(item)]);
  return sequence([...must, ...Array.from({ length: most - least }, () => choice([item, nothing]))]);
}

function anyNumber(item: ContentModel): ContentModel {
  if (item === nothing || item === impossible) return nothing;
  const self: ContentModel = {
    key: `${item.key}*`,
    nullable: true,
    first: item.first,
    after: (name) => pair(item.after(name), self),
  };
  return self;
}

/**
 * A list of children that the narrow model allows and the wide one does not; undefined where there is none, which
 * proves that whatever the narrow one allows, the wide one allows.
 */
export function notAllowed(narrow: ContentModel, wide: ContentModel): readonly string[] | undefined {
  const seen = new Set<string>();
  const queue: { narrow: ContentModel; wide: ContentModel; so: readonly string[] }[] = [
    { narrow, wide, so: [] },
  ];
  for (const { narrow, wide, so } of queue) {
    const key = `${narrow.key} in ${wide.key}`;
    if (seen.has(key)) continue;
    seen.add(key);
    if (narrow.nullable && !wide.nullable) return so;
    for (const name of narrow.first) {
      queue.push({ narrow: narrow.after(name), wide: wide.after(name), so: [...so, name] });
    }
  }
  return undefined;
}
