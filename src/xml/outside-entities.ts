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
  const lineOf = linesOf(bytes);
  return [...declarations.matchAll(OUTSIDE)].map(([, name = '', address = '']) => ({
    line: lineOf.get(name) ?? 1,
    says:
      `The entity ${legible(name)} stands for the content of another file, ${legible(address, 200)}. ` +
      'No other file is read. Put that content into this file in its place.',
  }));
}

/** The lines of the declarations, sought by their names, since the parsed document does not keep them. */
function linesOf(bytes: Uint8Array): Map<string, number> {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.byteLength, 1_000_000)).toString();
  const lines = new Map<string, number>();
  let [line, read] = [1, 0];
  for (const { 1: name = '', index } of head.matchAll(/<!ENTITY\s+(?:%\s+)?(\S+)/g)) {
    for (; read < index; read++) if (head[read] === '\n') line += 1;
    if (!lines.has(name)) lines.set(name, line);
  }
  return lines;
}
