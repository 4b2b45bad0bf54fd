import { isAscii, isUtf8 } from 'node:buffer';
import type { Found } from './found.ts';
import { withoutIndentation } from './mixed.ts';
import { scan } from './scan.ts';
import type { Seen } from './scan-tag.ts';

/** XML 1.0, 2.8 and 4.3.3; what is written before the root otherwise is for libxml2 to judge. */
const DECLARATION =
  /^<\?xml version=(?:"1\.0"|'1\.0')(?: encoding=(?:"utf-8"|'utf-8'|"UTF-8"|'UTF-8'))?(?: standalone=(?:"(?:yes|no)"|'(?:yes|no)'))? ?\?>/;
/** Characters that XML 1.0 forbids (2.2); a file in UTF-8 holds no surrogates. */
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/;
/** libxml2 refuses what is nested more deeply than 256 elements. */
const DEEPEST = 256;
/** Addresses about which nobody can disagree, RFC 3986; libxml2 refuses namespaces whose name is none. */
const ADDRESS = /^(?:https?:\/\/[\w.-]+(?:\/[\w.~:/-]*)?|urn:[\w.~:/-]+)(?:#[\w.-]*)?$/;
/** Namespaces in XML 1.0, 3: no other prefix may stand for these, and these two may stand for nothing else. */
const RESERVED = new Set(['http://www.w3.org/XML/1998/namespace', 'http://www.w3.org/2000/xmlns/']);

/**
 * The tree of a file that is well-formed beyond doubt and in which nothing has to be looked up: in UTF-8, without a
 * document type, with no entities but those of XML itself, and with all its namespaces declared by its root. Most
 * finding aids are so, and are read in a third of the time. Whatever else a file is, or is not, is for libxml2 to say.
 * @returns undefined for every other file
 */
export function plainFile(bytes: Uint8Array): { root: Found; ids: Set<string> } | undefined {
  if (!isUtf8(bytes)) return undefined;
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const written = isAscii(bytes) ? file.toString('latin1') : file.toString().replace(/^\uFEFF/, '');
  // XML 1.0, 2.11.
  const text = written.includes('\r') ? written.replace(/\r\n?/g, '\n') : written;
  if (text.startsWith('<?xml') && !text.startsWith('<?xml-') && !DECLARATION.test(text)) return undefined;
  if (FORBIDDEN.test(text) || text.includes('<!DOCTYPE')) return undefined;
  const seen: Seen = { names: new Map(), ids: new Set() };
  let root: Found;
  try {
    root = scan(text, { finish: withoutIndentation, seen, deepest: DEEPEST });
  } catch {
    return undefined;
  }
  return isDeclared(root, [...seen.names.keys()], text.split('xmlns').length - 1)
    ? { root, ids: seen.ids }
    : undefined;
}

/** @param mentions how often a namespace is declared, or at least the word for it occurs */
function isDeclared({ attributes }: Found, names: readonly string[], mentions: number): boolean {
  const declarations = Object.entries(attributes).filter(
    ([key]) => key === 'xmlns' || key.startsWith('xmlns:'),
  );
  const addresses = new Set(declarations.map(([, address]) => address));
  if (declarations.length < mentions || addresses.size < declarations.length) return false;
  if ([...addresses].some((address) => RESERVED.has(address) || !ADDRESS.test(address))) return false;
  const prefixes = new Set(declarations.map(([key]) => key.slice('xmlns:'.length)));
  if (prefixes.has('xml') || prefixes.has('xmlns')) return false;
  return names.every((name) => {
    const [prefix = '', local] = name.split(':');
    // An xml:id is looked at more closely by libxml2.
    return (
      local === undefined ||
      prefix === 'xmlns' ||
      prefixes.has(prefix) ||
      name === 'xml:lang' ||
      name === 'xml:space'
    );
  });
}
