import fc from 'fast-check';
import { everyElement, type Tree } from './xml-tree.ts';

type Child = Tree | string;

/** One change to a document, told by numbers that fit a document of any size. */
export interface Mutation {
  kind: (typeof KINDS)[number];
  at: number;
  to: number;
  name: string;
  value: string;
}

const KINDS = [
  'drop',
  'double',
  'move',
  'swap',
  'rename',
  'wrap',
  'unwrap',
  'drop attribute',
  'change attribute',
  'copy attribute value',
  'add attribute',
  'insert text',
  'change text',
] as const;

const VALUES = [
  '',
  ' ',
  'x',
  '1',
  'c1',
  'true',
  '1952',
  '1952-05-14',
  '1952?',
  '2026-02-30',
  'eng',
  'bulk',
  'a b',
  '-',
];

/** Changes such as a careless hand or program makes; names are those of elements and attributes to draw from. */
export function mutations(
  elements: readonly string[],
  attributes: readonly string[],
): fc.Arbitrary<Mutation[]> {
  const mutation = fc.record({
    kind: fc.constantFrom(...KINDS),
    at: fc.nat(),
    to: fc.nat(),
    name: fc.nat(),
    value: fc.constantFrom(...VALUES),
  });
  return fc.array(mutation, { minLength: 1, maxLength: 2 }).map((list) =>
    list.map(({ name, ...rest }) => {
      const names = rest.kind.includes('attribute') ? attributes : elements;
      return { ...rest, name: names[name % names.length] ?? '' };
    }),
  );
}

/** The document with the changes made, one after the other; the root stays what it is. */
export function mutated(tree: Tree, changes: readonly Mutation[]): Tree {
  return changes.reduce(change, tree);
}

function change(tree: Tree, { kind, at, to, name, value }: Mutation): Tree {
  const all = everyElement(tree).map(({ element }) => element);
  const target = all[1 + (at % Math.max(all.length - 1, 1))];
  if (target === undefined) return tree;
  const other = all[to % all.length] ?? tree;
  const replace = (by: readonly Child[]) => replaced(tree, target, by);
  const keys = Object.keys(target.attributes);
  const key = keys[to % Math.max(keys.length, 1)] ?? name;
  const withAttributes = (more: Record<string, string | undefined>) =>
    replace([{ ...target, attributes: { ...target.attributes, ...more } }]);
  switch (kind) {
    case 'drop':
      return replace([]);
    case 'double':
      return replace([target, target]);
    case 'move': {
      const rest = replace([]);
      const places = everyElement(rest).map(({ element }) => element);
      const place = places[to % places.length] ?? rest;
      return replaced(rest, place, [{ ...place, children: inserted(place.children, at, target) }]);
    }
    case 'swap': {
      const children = [...target.children];
      const first = to % Math.max(children.length, 1);
      children.push(...children.splice(first, 1));
      return replace([{ ...target, children }]);
    }
    case 'rename':
      return replace([{ ...target, name }]);
    case 'wrap':
      return replace([{ name, attributes: {}, children: [target] }]);
    case 'unwrap':
      return replace(target.children);
    case 'drop attribute':
      return withAttributes({ [key]: undefined });
    case 'change attribute':
      return withAttributes({ [key]: value });
    case 'copy attribute value':
      return withAttributes({ [key]: Object.values(other.attributes)[0] ?? value });
    case 'add attribute':
      return withAttributes({ [name]: value });
    case 'insert text':
      return replace([{ ...target, children: inserted(target.children, to, value) }]);
    case 'change text':
      return replace([{ ...target, children: [value] }]);
  }
}

const inserted = (children: readonly Child[], at: number, child: Child) =>
  children.toSpliced(at % (children.length + 1), 0, child);

/** The tree with one of its elements, told by identity, replaced; the root can only be replaced by one element. */
function replaced(tree: Tree, target: Tree, by: readonly Child[]): Tree {
  if (tree === target) {
    const [only] = by;
    return typeof only === 'object' ? only : tree;
  }
  let found = false;
  const children = tree.children.flatMap((child): readonly Child[] => {
    if (typeof child === 'string' || found) return [child];
    if (child === target) {
      found = true;
      return by;
    }
    return [replaced(child, target, by)];
  });
  return { ...tree, children };
}
