import type { XmlElement, XmlNode } from '../../xml/element.ts';

/**
 * Whether two elements are the same when written: attributes in the same order, undefined ones left out, and texts that
 * stand side by side taken together. It stops at the first difference, and builds nothing.
 */
export function isSame(one: XmlElement, other: XmlElement): boolean {
  return (
    one.name === other.name &&
    haveSameAttributes(one.attributes, other.attributes) &&
    areSame(listOf(one.children), listOf(other.children))
  );
}

type Attributes = XmlElement['attributes'];

function haveSameAttributes(one: Attributes, other: Attributes): boolean {
  const keys = Object.keys(one);
  let at = 0;
  for (const key in other) {
    const value = other[key];
    if (value === undefined) continue;
    while (at < keys.length && one[keys[at] ?? ''] === undefined) at += 1;
    if (keys[at] !== key || one[key] !== value) return false;
    at += 1;
  }
  while (at < keys.length && one[keys[at] ?? ''] === undefined) at += 1;
  return at === keys.length;
}

const listOf = (nodes: Iterable<XmlNode>): readonly XmlNode[] => (Array.isArray(nodes) ? nodes : [...nodes]);

function areSame(some: readonly XmlNode[], others: readonly XmlNode[]): boolean {
  let [at, of] = [0, 0];
  for (;;) {
    const node = some[at];
    const other = others[of];
    if (typeof node === 'string' || typeof other === 'string') {
      let text = '';
      for (let next = node; typeof next === 'string'; next = some[at]) {
        text += next;
        at += 1;
      }
      let otherText = '';
      for (let next = other; typeof next === 'string'; next = others[of]) {
        otherText += next;
        of += 1;
      }
      if (text !== otherText) return false;
    } else if (node === undefined || other === undefined) return node === other;
    else if (!isSame(node, other)) return false;
    else {
      at += 1;
      of += 1;
    }
  }
}
