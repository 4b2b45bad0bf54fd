/** Enough for the comments that some programs put before the document type declaration. */
const HEAD = 100_000;

/**
 * The document type definition outside the file that its declaration names: the public name where it has one, else
 * the address. Told from the bytes of a well-formed file, since the parser does not hand it on.
 */
export function documentTypeOf(bytes: Uint8Array): string | undefined {
  const head = decode(bytes.subarray(0, HEAD)).replaceAll(/<!--[\s\S]*?-->|<\?[\s\S]*?\?>/g, '');
  const declaration = /^[^<]*<!DOCTYPE\s+[^\s>[]+\s+(?:PUBLIC|SYSTEM)\s+(?:"([^"]*)"|'([^']*)')/.exec(head);
  return declaration?.[1] ?? declaration?.[2];
}

/** Two bytes a letter where the file begins so (XML 1.0, appendix F), else one: a declaration is plain ASCII. */
function decode(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff || second === 0) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe || first === 0) return new TextDecoder('utf-16be').decode(bytes);
  return Buffer.from(bytes).toString('latin1');
}
