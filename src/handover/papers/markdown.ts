import { paragraphs } from '../../catalogue/text.ts';
import type { Block, Paper } from './paper.ts';

// CommonMark 0.31, 2.4 and 6: what could begin something within a line; a line of a paper is no code and no HTML.
const MEANS = /[\\`*_[\]<>|~]|&(?=#?\w+;)/g;
const RULE = '_'.repeat(40);

/** A paper as Markdown (CommonMark, with tables as commonly read): `letter-of-offer.md`. */
export function paperToMarkdown({ title, blocks }: Paper): string {
  return `# ${inLine(title)}\n\n${blocks.map(blockToMarkdown).join('\n\n')}\n`;
}

function blockToMarkdown(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `## ${inLine(block.text)}`;
    case 'text':
      return paragraphs(block.text).map(inLine).join('\n\n');
    case 'list':
      return block.items.map((item) => `- ${inLine(item)}`).join('\n');
    case 'ticks':
      return block.items.map((item) => `- [ ] ${inLine(item)}`).join('\n');
    case 'lines':
      return block.labels.map((label) => `${inLine(label)}: ${RULE}`).join('\n\n');
    case 'table': {
      const headings = block.ticked ? [...block.headings, 'Received'] : block.headings;
      const rows = block.rows.map((row) => (block.ticked ? [...row, '[ ]'] : row));
      const record = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
      return [
        record(headings.map(inLine)),
        record(headings.map(() => '---')),
        ...rows.map((row) =>
          record(row.map((cell, at) => (block.ticked && at === row.length - 1 ? cell : inLine(cell)))),
        ),
      ].join('\n');
    }
  }
}

/** A text on one line, with nothing in it or at its beginning (4 and 5: headings, lists) that means more than text. */
function inLine(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim().replace(MEANS, '\\$&');
  // The stop behind a number is what makes a list of it.
  return line.replace(/^\d{1,9}(?=[.)](?:\s|$))/, '$&\\').replace(/^[-+=#]/, '\\$&');
}
