import { XmlElement as LibElement, XmlCData, XmlDocument, XmlText, type XmlTreeNode } from 'libxml2-wasm';
import type { XmlElement } from '../../src/xml/element.ts';

/** An element as it was read: its children are an array, and adjacent texts are one. */
export interface Tree extends XmlElement {
  children: readonly (Tree | string)[];
}

/**
 * Reads a document with libxml2 into a plain tree, without comments and processing instructions.
 * @throws XmlParseError where it is not well-formed
 */
export function parseTree(xml: string | Uint8Array): Tree {
  const document = typeof xml === 'string' ? XmlDocument.fromString(xml) : XmlDocument.fromBuffer(xml);
  try {
    return treeOf(document.root);
  } finally {
    document.dispose();
  }
}

function treeOf(node: LibElement): Tree {
  const attributes: Record<string, string> = {};
  for (const [prefix, uri] of Object.entries(node.nsDeclarations)) {
    attributes[prefix === '' ? 'xmlns' : `xmlns:${prefix}`] = uri;
  }
  for (const { name, prefix, value } of node.attrs) attributes[qualified(prefix, name)] = value;
  const children: (Tree | string)[] = [];
  for (let child: XmlTreeNode | null = node.firstChild; child !== null; child = child.next) {
    if (child instanceof LibElement) children.push(treeOf(child));
    else if (child instanceof XmlText || child instanceof XmlCData) {
      const before = children.at(-1);
      if (typeof before === 'string') children.splice(-1, 1, before + child.content);
      else children.push(child.content);
    }
  }
  return { name: qualified(node.prefix, node.name), attributes, children };
}

const qualified = (prefix: string, name: string) => (prefix === '' ? name : `${prefix}:${name}`);

/** The element children, of one name or of any. */
export function elementsOf(tree: Tree, name?: string): Tree[] {
  return tree.children.filter(
    (child): child is Tree => typeof child !== 'string' && (name === undefined || child.name === name),
  );
}

/** All text within an element, in order: what XPath calls its string value. */
export function textOf(tree: Tree): string {
  return tree.children.map((child) => (typeof child === 'string' ? child : textOf(child))).join('');
}

/** An element and where it stands. */
export interface Placed {
  element: Tree;
  path: string;
}

/** Every element of a tree in document order, with its path. */
export function everyElement(tree: Tree, path = `/${tree.name}`): Placed[] {
  const count = new Map<string, number>();
  const below = elementsOf(tree).flatMap((child) => {
    const position = (count.get(child.name) ?? 0) + 1;
    count.set(child.name, position);
    return everyElement(child, `${path}/${child.name}[${position}]`);
  });
  return [{ element: tree, path }, ...below];
}
