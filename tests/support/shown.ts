/** Stands for any lines where it stands on a line of its own, and for any text within a line. */
const LEFT_OUT = '…';

const isGap = (line: string) => line.trim() === LEFT_OUT;

const escaped = (text: string) => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

const lineOf = (shown: string) =>
  new RegExp(`^${shown.trimEnd().split(LEFT_OUT).map(escaped).join('.*')}\\s*$`);

/** Where what is shown and what was printed part. */
export interface Parting {
  /** The first shown line, counted from 0, for which nothing printed stands in its place; or just after the last. */
  at: number;
  /** What was printed there; undefined where nothing more was. */
  printed: string | undefined;
}

const linesOf = (text: string): string[] => (text.trimEnd() === '' ? [] : text.trimEnd().split('\n'));

/** Holds what a document shows of an output against that output. @returns where they part; undefined if they agree */
export function partingOf(shown: readonly string[], output: string): Parting | undefined {
  const printed = linesOf(output);
  let furthest = 0;
  // For each line shown: every place in the output that may come next.
  let places = new Set([0]);
  for (const [at, line] of shown.entries()) {
    const next = new Set<number>();
    if (isGap(line)) for (let place = Math.min(...places); place <= printed.length; place++) next.add(place);
    else
      for (const place of places) {
        const there = printed[place];
        if (there !== undefined && lineOf(line).test(there)) next.add(place + 1);
      }
    if (next.size === 0) return { at, printed: printed[furthest] };
    furthest = Math.min(...next);
    places = next;
  }
  return places.has(printed.length) ? undefined : { at: shown.length, printed: printed[furthest] };
}
