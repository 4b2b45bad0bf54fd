import { EAD2002_NAMESPACE } from '../../xml/older-ead.ts';
import { XLINK_NAMESPACE } from '../../xml/xlink-attributes.ts';
import { type Found, isElement } from './found.ts';

type InScope = ReadonlyMap<string, string>;

const XSI_NAMESPACE = 'http://www.w3.org/2001/XMLSchema-instance';
/** Prefixes that the model has whatever the file calls them: the root of what is written declares them. */
const USUAL: InScope = new Map([
  [XLINK_NAMESPACE, 'xlink'],
  [XSI_NAMESPACE, 'xsi'],
]);

/**
 * A tree in which the elements of EAD have plain names, and the attributes of XLink the prefix `xlink`, whatever
 * prefixes the file uses for them. What is of another namespace keeps its names, and its outermost element declares
 * what they mean, so that it can be taken out of the file.
 * @param ead the namespace of EAD
 * @param others whether any element but the root declares a namespace
 */
export function withPlainNames(root: Found, ead: string, others: boolean): Found {
  const declared = declaredBy(root, new Map());
  // Most files have the usual names already: then only the root has to be made anew.
  const usual = [...declared].every(([prefix, address]) =>
    prefix === '' ? address === ead : USUAL.get(address) === prefix,
  );
  if (usual && !others) return { ...root, attributes: plainAttributes(root, ead, declared) };
  return plain(root, ead, new Map());
}

function plain(element: Found, ead: string, above: InScope): Found {
  const inScope = declaredBy(element, above);
  const [prefix, local] = split(element.name);
  if (inScope.get(prefix) !== ead) return foreign(element, inScope);
  const children = element.children.map((child) => (isElement(child) ? plain(child, ead, inScope) : child));
  return { name: local, attributes: plainAttributes(element, ead, inScope), children };
}

function plainAttributes(element: Found, ead: string, inScope: InScope): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [key, value] of Object.entries(element.attributes)) {
    const [of, name] = split(key);
    if (key === 'xmlns' || (of === 'xmlns' && value === ead)) continue;
    if (of === 'xmlns') {
      // The root of EAD 2002 declares XLink anyway.
      if (value !== XLINK_NAMESPACE || ead !== EAD2002_NAMESPACE)
        attributes[`xmlns:${USUAL.get(value) ?? name}`] = value;
      continue;
    }
    const usual = of === '' ? undefined : USUAL.get(inScope.get(of) ?? '');
    attributes[usual === undefined ? key : `${usual}:${name}`] = value;
  }
  return attributes;
}

function foreign(element: Found, inScope: InScope): Found {
  const attributes: Record<string, string> = {};
  for (const [prefix, address] of inScope) attributes[prefix === '' ? 'xmlns' : `xmlns:${prefix}`] = address;
  return { ...element, attributes: { ...attributes, ...element.attributes } };
}

function declaredBy({ attributes }: Found, above: InScope): InScope {
  const own = Object.entries(attributes).flatMap(([key, value]): [string, string][] => {
    if (key === 'xmlns') return [['', value]];
    return key.startsWith('xmlns:') ? [[key.slice('xmlns:'.length), value]] : [];
  });
  return own.length === 0 ? above : new Map([...above, ...own]);
}

function split(name: string): [prefix: string, local: string] {
  const colon = name.indexOf(':');
  return colon < 0 ? ['', name] : [name.slice(0, colon), name.slice(colon + 1)];
}
