import { sayCount } from '../catalogue/say-count.ts';
import type { Preview } from '../intake/preview.ts';

/**
 * How a list is understood, line by line: the headings that are other words for a column, or none; then a line for each
 * thing, and below it what is understood otherwise than it is written.
 */
export function* sayPreview(tables: readonly Preview[]): Generator<string> {
  for (const { file, headingRow, headings, things, first } of tables) {
    yield `${file}, headings in row ${headingRow}, ${sayCount(things, 'thing')}`;
    const others = headings.filter(({ heading, column }) => heading.trim().toLowerCase() !== column);
    const widest = Math.max(0, ...others.map(({ heading }) => heading.length));
    for (const { heading, column } of others) {
      yield `  ${heading.padEnd(Math.min(widest, 40))}  ${column ?? '(kept in the notes)'}`;
    }
    if (others.length < headings.length)
      yield others.length === 0 ? '  The headings mean what they say.' : '  The others mean what they say.';
    yield '';
    for (const { row, cells, changed } of first) {
      const plain = cells.filter(([column]) => !changed.includes(column));
      yield `row ${row}  ${plain.map(([, text]) => onOneLine(text)).join(' | ')}`;
      for (const [column, text] of cells)
        if (changed.includes(column)) yield `  ${column}: ${onOneLine(text)}`;
    }
    const more = things - first.length;
    if (more > 0) yield* ['', `and ${sayCount(more, 'more row')}`];
    yield '';
  }
}

const onOneLine = (text: string) => text.replace(/\s+/g, ' ');
