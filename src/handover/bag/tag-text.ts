/** Decoders that the standard library lacks or reads otherwise: there, ISO 8859-1 is taken for Windows-1252. */
const OWN: Readonly<Record<string, (bytes: Uint8Array) => string>> = {
  'iso-8859-1': (bytes) => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1'),
  // RFC 2781, 4.3: without a mark of the byte order, the high byte comes first.
  'utf-16': (bytes) => decoder(bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : 'utf-16be')(bytes),
};

/**
 * Reads a tag file in the encoding that `bagit.txt` declares.
 * @returns undefined where the encoding is none that is known
 * @throws TypeError where the bytes are none of that encoding
 */
export function decodeTagFile(bytes: Uint8Array, encoding: string): string | undefined {
  const name = encoding.toLowerCase();
  try {
    return (OWN[name === 'latin1' ? 'iso-8859-1' : name] ?? decoder(name))(bytes);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function decoder(name: string): (bytes: Uint8Array) => string {
  const known = new TextDecoder(name, { fatal: true });
  return (bytes) => known.decode(bytes);
}

/** A line of a tag file; numbers count from 1. */
interface TagLine {
  line: number;
  text: string;
}

/** The lines of a tag file that hold anything: RFC 8493, 2.3, ends them with LF, CR, or both. */
export function* linesOf(text: string): Generator<TagLine> {
  const end = /\r\n|\r|\n/g;
  let line = 0;
  for (let at = 0; at <= text.length; ) {
    const found = end.exec(text);
    const until = found?.index ?? text.length;
    line += 1;
    if (text.slice(at, until).trim() !== '') yield { line, text: text.slice(at, until) };
    if (found === null) return;
    at = end.lastIndex;
  }
}
