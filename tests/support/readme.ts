/** A command that a document shows, with what it prints. */
export interface Shown {
  do: 'run';
  /** The line of the document, counted from 1. */
  line: number;
  command: string;
  /** What is shown beneath it; the first of these lines is the next one of the document. */
  output: readonly string[];
  /** What the text behind it says of how it ends; 0 where it says nothing. */
  exitCode: number;
}

/** A file that a document tells its reader to fill in. */
export interface Typed {
  do: 'type';
  line: number;
  file: string;
  text: string;
}

export type Step = Shown | Typed;

interface Block {
  /** The line of the document in which its first line stands. */
  line: number;
  language: string;
  lines: readonly string[];
  before: string;
  after: string;
}

/** Every block of code of a document in Markdown, with the text before it and that after it. */
function blocksOf(document: string): Block[] {
  const parts = document.split(/^```(.*)$/m);
  const blocks: Block[] = [];
  let line = 1;
  for (let part = 0; part < parts.length; part += 4) {
    const [before = '', language, code = '', , after = ''] = parts.slice(part, part + 5);
    line += before.split('\n').length;
    if (language === undefined) break;
    blocks.push({ line, language, lines: code.trim().split('\n'), before, after });
    line += code.split('\n').length - 2;
  }
  return blocks;
}

const FILLED_IN = new Set(['csv', 'yaml']);

/** What a document has its reader do, in order. Throws where a block is neither commands nor a file to fill in. */
export function stepsOf(document: string): Step[] {
  return blocksOf(document).flatMap((block): Step[] => {
    if (block.language === 'console') return runsOf(block);
    if (!FILLED_IN.has(block.language))
      throw new Error(
        `Line ${block.line}: a block “${block.language}”, of which nobody knows what to do with it.`,
      );
    // Into the file that was named last before it.
    const file = [...block.before.matchAll(/`([^`\s]+\.(?:csv|yaml))`/g)].at(-1)?.[1];
    if (file === undefined) throw new Error(`Line ${block.line}: into which file is this to be typed?`);
    return [{ do: 'type', line: block.line, file, text: `${block.lines.join('\n')}\n` }];
  });
}

function runsOf({ line, lines, after }: Block): Shown[] {
  const starts = lines.flatMap((text, at) => (text.startsWith('$ ') ? [at] : []));
  if (starts[0] !== 0) throw new Error(`Line ${line}: a block of commands that does not begin with one.`);
  const [text = ''] = after.split(/^#/m);
  const said = Number(/exit code (?:is )?(\d)/i.exec(text)?.[1] ?? 0);
  return starts.map((start, index) => ({
    do: 'run',
    line: line + start,
    command: (lines[start] ?? '').slice(2),
    output: lines.slice(start + 1, starts[index + 1] ?? lines.length),
    // The text is about the last command of a block.
    exitCode: index === starts.length - 1 ? said : 0,
  }));
}

/** The words of a command as a shell parts them, of which only double quotation marks are known here. */
export const wordsOf = (command: string): string[] =>
  [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
