import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { elementsOf, parseTree, type Tree } from './xml-tree.ts';

const XSD = 'http://www.w3.org/2001/XMLSchema';

/**
 * The global declarations of a W3C Schema by kind and name, `xs:complexType did`; those of a file that it imports
 * from beside it have the prefix it gives them, `xs:attribute xlink:href`.
 */
export function globalsOf(file: string): ReadonlyMap<string, Tree> {
  const schema = parseTree(readFileSync(file));
  const imported = elementsOf(schema, 'xs:import').flatMap(({ attributes }): [string, Tree][] => {
    const beside = join(dirname(file), attributes.schemaLocation ?? '');
    if (attributes.schemaLocation === undefined || !existsSync(beside)) return [];
    const prefix = prefixOf(schema, attributes.namespace ?? '');
    return keyed(foreign(parseTree(readFileSync(beside)), prefix));
  });
  return new Map([...imported, ...keyed(schema)]);
}

const keyed = (schema: Tree): [string, Tree][] =>
  elementsOf(schema).map((item) => [`${item.name} ${item.attributes.name}`, item]);

function prefixOf(schema: Tree, namespace: string): string {
  const [name] = Object.entries(schema.attributes).find(([, uri]) => uri === namespace) ?? [];
  if (name?.startsWith('xmlns:') !== true) throw new Error(`The schema gives no prefix to ${namespace}`);
  return name.slice('xmlns:'.length);
}

/** A schema as it looks from one that imports it: names have a prefix, XML Schema itself has `xs:`. */
function foreign(schema: Tree, prefix: string): Tree {
  const ofXsd = (name: string) => (name.includes(':') ? name : `xs:${name}`);
  const inXsd = schema.attributes.xmlns === XSD;
  const seen = (item: Tree, depth: number): Tree => {
    const { name, form, type, base } = item.attributes;
    const qualified = name !== undefined && (depth === 1 || form === 'qualified');
    return {
      name: inXsd ? ofXsd(item.name) : item.name,
      attributes: {
        ...item.attributes,
        ...(qualified && { name: `${prefix}:${name}` }),
        ...(inXsd && type !== undefined && { type: ofXsd(type) }),
        ...(inXsd && base !== undefined && { base: ofXsd(base) }),
      },
      children: item.children.map((child) => (typeof child === 'string' ? child : seen(child, depth + 1))),
    };
  };
  return seen(schema, 0);
}
