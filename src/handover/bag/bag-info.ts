import { linesOf } from './tag-text.ts';

export const INFO_FILE = 'bag-info.txt';

/** In UTF-16 units: RFC 8493, 2.2.2, recommends lines of no more than 79. */
const LINE_LENGTH = 79;
const INDENT = '  ';

/** Labels and values of `bag-info.txt` in their order; a value that was folded is one again. */
export function readInfo(text: string): [string, string][] {
  const fields: [string, string][] = [];
  for (const { text: line } of linesOf(text)) {
    const last = fields.at(-1);
    if (/^[ \t]/.test(line)) {
      if (last !== undefined) last[1] = `${last[1]} ${line.trim()}`;
      continue;
    }
    const colon = line.indexOf(':');
    if (colon > 0) fields.push([line.slice(0, colon).trim(), line.slice(colon + 1).trim()]);
  }
  return fields;
}

/** The value of `Payload-Oxum`: RFC 8493, 2.2.2, octets and streams. */
export function readOxum(value: string): { bytes: number; files: number } | undefined {
  const [, bytes, files] = /^(\d+)\.(\d+)$/.exec(value) ?? [];
  return bytes === undefined ? undefined : { bytes: Number(bytes), files: Number(files) };
}

/**
 * `bag-info.txt`: a label, a colon, one blank, the value. A long value goes on in lines that begin with blanks; line
 * ends and other control characters within a value become blanks. Fields without a value are left out.
 */
export function writeInfo(fields: readonly (readonly [string, string])[]): string {
  return fields
    .map(([label, value]) => [label, value.replace(/[\s\p{Cc}]+/gu, ' ').trim()] as const)
    .filter(([, value]) => value !== '')
    .map(([label, value]) => `${folded(`${label}: ${value}`)}\n`)
    .join('');
}

function folded(line: string): string {
  const [first = '', ...words] = line.split(' ');
  const lines = [first];
  for (const word of words) {
    const last = lines.at(-1) ?? '';
    // The label and its first word stay together: a reader of the drafts expects a value behind the colon.
    const isFull = last !== first && last.length + 1 + word.length > LINE_LENGTH;
    if (isFull) lines.push(`${INDENT}${word}`);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines.join('\n');
}
