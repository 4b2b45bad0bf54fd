import { plainLetters } from './plain-letters.ts';

/** In characters; fits on any screen and on any sheet. */
const WIDTH = 76;

/**
 * Lines of plain text in plain letters, long ones broken between words; what follows a line that is set in is set in as
 * far, and behind the number or sign of an entry as far as its words.
 */
export function printed(lines: readonly string[]): string {
  return `${lines.map((line) => wrapped(plainLetters(line.replace(/[\t\r\n\f\v]+/g, ' ')))).join('\n')}\n`;
}

function wrapped(line: string): string {
  if (line.length <= WIDTH) return line.trimEnd();
  const [indent = ''] = /^ *(?:(?:\d+\.|-) +)?/.exec(line) ?? [];
  const out: string[] = [];
  let current = indent;
  let isEmpty = true;
  for (const word of line.slice(indent.length).split(' ')) {
    if (!isEmpty && current.length + 1 + word.length > WIDTH) {
      out.push(current);
      current = ' '.repeat(indent.length);
      isEmpty = true;
    }
    current += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...out, current].join('\n');
}
