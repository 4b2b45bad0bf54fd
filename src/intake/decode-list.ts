import { isUtf8 } from 'node:buffer';
import type { Finding } from '../catalogue/finding.ts';
import type { Encoding } from '../catalogue/list-settings.ts';
import { decodeText, utf16Order } from './decode.ts';
import { decodeAs, NAMES, recogniseEncoding } from './encodings.ts';

/** The text of a list and the encoding it was in, or why there is none; and what was noticed. */
type DecodedList = { text: string; encoding: Encoding; findings: readonly Finding[] } | { trouble: Finding };

/** @param other an encoding that it may be in */
const sayEncoding = (other: Encoding) =>
  `If letters such as é, or quotation marks, come out wrong, say in collection.yaml which encoding it is, such as list: {encoding: ${other}}; or save the list again as “CSV UTF-8”.`;

/** What else is likely. */
const otherThan = (encoding: Encoding): Encoding =>
  encoding === 'windows-1252' ? 'mac-roman' : 'windows-1252';

/**
 * The bytes of a list as text, in the encoding that collection.yaml names or else in the one that is recognised; what
 * is neither UTF-8 nor marked is a guess, and is said.
 * @param advice how its owner gets a file in UTF-8, as a sentence
 */
export function decodeList(
  bytes: Uint8Array,
  file: string,
  advice: string,
  named: Encoding | undefined,
): DecodedList {
  if (named !== undefined) {
    const text = decodeAs(bytes, named);
    if (text !== undefined) return { text, encoding: named, findings: [] };
    const found = `The list is not in ${NAMES[named]}, which collection.yaml says of it.`;
    return {
      trouble: {
        rule: 'file.encoding',
        weight: 'must',
        place: { file },
        found,
        advice: sayEncoding(otherThan(named)),
      },
    };
  }
  const decoded = decodeText(bytes, file, advice);
  if ('text' in decoded) return { ...decoded, encoding: utf16Order(bytes) ?? 'utf-8', findings: [] };
  // Something that gives itself away as another kind of file is no text in whichever encoding.
  const isOther = decoded.trouble.rule === 'file.binary' && decoded.trouble.found.startsWith('This is a');
  const encoding = isOther ? undefined : recogniseEncoding(bytes);
  const text = encoding === undefined ? undefined : decodeAs(bytes, encoding);
  if (encoding === undefined || text === undefined || isUtf8(bytes)) return decoded;
  const findings = encoding.startsWith('utf') ? [] : [guessed(file, encoding, text)];
  return { text, encoding, findings };
}

function guessed(file: string, encoding: Encoding, text: string): Finding {
  const words = text.match(/[\p{L}\p{N}]*[^\u0000-\u007F][\p{L}\p{N}]*/gu) ?? [];
  const shown = [...new Set(words)].slice(0, 3).map((word) => `“${word}”`);
  return {
    rule: 'list.encoding-guessed',
    weight: 'consider',
    place: { file },
    found: `The list is not in UTF-8; it was read as ${NAMES[encoding]}, in which it holds ${shown.join(', ')}.`,
    advice: sayEncoding(otherThan(encoding)),
  };
}
