import { sayCount } from '../catalogue/say-count.ts';
import type { Preview } from '../intake/preview.ts';

/** How a list is understood, line by line: what each heading means, then the first things. */
export function* sayPreview(tables: readonly Preview[]): Generator<string> {
  for (const { file, headingRow, headings, things, first } of tables) {
    yield `${file}, headings in row ${headingRow}, ${sayCount(things, 'thing')}`;
    const widest = Math.max(0, ...headings.map(({ heading }) => heading.length));
    for (const { heading, column } of headings) {
      yield `  ${heading.padEnd(Math.min(widest, 40))}  ${column ?? '(kept in the notes)'}`;
    }
    for (const { row, cells } of first) {
      yield '';
      yield `row ${row}`;
      for (const [column, text] of cells) {
        yield `  ${column}: ${text.replace(/\s+/g, ' ')}`;
      }
    }
    const more = things - first.length;
    if (more > 0) yield* ['', `and ${sayCount(more, 'more row')}`];
    yield '';
  }
}
