import type { XmlDocument } from 'libxml2-wasm';
import { legible } from './legible.ts';

/** The declaration of an entity whose text lies in another file; with NDATA it names a picture or the like instead. */
const OUTSIDE =
  /<!ENTITY\s+(?:%\s+)?(\S+)\s+(?:SYSTEM|PUBLIC\s+(?:"[^"]*"|'[^']*'))\s+("[^"]*"|'[^']*')\s*>/g;

/**
 * Entities of the file whose text lies elsewhere. Nothing elsewhere is read, so wherever the file uses one, that text
 * is missing: a finding aid in this state is not whole, and saying that it is valid would hide it.
 * The document is taken apart on the way and good for nothing afterwards.
 */
export function outsideEntities(document: XmlDocument, bytes: Uint8Array): { line: number; says: string }[] {
  if (document.dtd === null) return [];
  document.root.remove();
  const declarations = document.toString({ format: false }).replaceAll(/<!--.*?-->/gs, '');
  return [...declarations.matchAll(OUTSIDE)].map(([, name = '', address = '']) => ({
    line: lineOf(name, bytes),
    says:
      `The entity ${legible(name)} stands for the content of another file, ${legible(address, 200)}. ` +
      'No other file is read. Put that content into this file in its place.',
  }));
}

/** The line of the declaration, sought by its name, since the parsed document does not keep it. */
function lineOf(name: string, bytes: Uint8Array): number {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.byteLength, 1_000_000)).toString();
  const declared = [...head.matchAll(/<!ENTITY\s+(?:%\s+)?(\S+)/g)].find((match) => match[1] === name);
  return head.slice(0, declared?.index ?? 0).split('\n').length;
}
