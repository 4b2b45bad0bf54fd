import type { XmlDocument, XmlElement } from 'libxml2-wasm';
import { legible } from './legible.ts';

/** A path as people read it, and the name of the element at its end. */
export interface ElementPath {
  path: string;
  element: string;
}

/**
 * Makes readable paths, such as `/ead/archdesc/dsc/c[3]/did`, out of those of the engine, `/*\/*[2]/*[2]/*[3]/*[1]`.
 * An element is numbered where its parent holds several of its name. Paths that begin alike are worked out once.
 */
export function elementPaths(document: XmlDocument): (xpath: string) => ElementPath | undefined {
  const known = new Map<string, ElementPath | undefined>();
  const pathOf = (place: string): ElementPath | undefined => {
    // The place of an attribute or a text is its element.
    const xpath = place.replace(/\/(?:@[^/]*|[a-z-]+\(\)[^/]*)$/, '');
    if (xpath === '') return { path: '', element: '' };
    if (!known.has(xpath)) known.set(xpath, work(xpath));
    return known.get(xpath);
  };
  const work = (xpath: string): ElementPath | undefined => {
    // The engine names an element by its prefix where it has one; XPath would ask what the prefix stands for.
    const node = document.get(
      xpath.replaceAll(/[^/*[\]:]+:[^/[\]]+/g, '*[name() = "$&"]'),
    ) as XmlElement | null;
    const parent = pathOf(xpath.slice(0, xpath.lastIndexOf('/')));
    if (node === null || parent === undefined) return undefined;
    const alike = `*[name() = "${name(node)}"]`;
    const siblings = Number(node.eval(`count(../${alike})`));
    const number = siblings > 1 ? `[${Number(node.eval(`count(preceding-sibling::${alike})`)) + 1}]` : '';
    const element = legible(name(node));
    return { path: `${parent.path}/${element}${number}`, element };
  };
  return pathOf;
}

function name({ prefix, name: local }: XmlElement): string {
  return prefix === '' ? local : `${prefix}:${local}`;
}
