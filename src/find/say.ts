import type { Answer } from './answer.ts';
import { sayReasons } from './say-reasons.ts';
import { sayWhereabouts } from './whereabouts.ts';

/** The answer as lines of plain text: of each hit what it is, where it lies, and why it was found. */
export function* sayHits({ unit, hits }: Answer): Generator<string> {
  if (unit !== undefined) {
    const { referenceCode, title, dates, lies } = unit;
    yield `${referenceCode}  ${dates === undefined ? title : `${title}, ${dates}`}`;
    if (lies !== undefined) yield `${indentFor(referenceCode)}${lies}`;
  }
  for (const hit of hits) {
    const { referenceCode, title, dates, restricted, lacks } = hit;
    const indent = indentFor(referenceCode);
    yield `${referenceCode}  ${dates === undefined ? title : `${title}, ${dates}`}`;
    yield `${indent}${sayWhereabouts(hit)}`;
    if (restricted !== undefined)
      yield `${indent}${/^restricted\b/i.test(restricted) ? '' : 'restricted: '}${restricted}`;
    const why = sayReasons(hit);
    if (why !== '') yield `${indent}${why}`;
    if (lacks.length > 0) yield `${indent}without: ${lacks.join(', ')}`;
  }
}

const indentFor = (code: string): string => ' '.repeat(Math.min(code.length, 20) + 2);

/** What there is to say beside the hits. */
export function* sayRest({ found, box, hits, proposals, withoutFilters }: Answer): Generator<string> {
  if (found > hits.length)
    yield `${found} things found; ${hits.length === 1 ? 'the first is' : `the first ${hits.length} are`} shown, and --most ${found} shows all.`;
  if (found > 0 && hits.some(({ lacks }) => lacks.length > 0))
    yield 'Nothing has all that was asked for; these have the most of it.';
  if (box !== undefined) yield `For what lies in box ${box}: --box ${box}`;
  if (found > 0) return;
  yield 'Nothing found. Fewer words, or another spelling of them, may help.';
  for (const { typed, nearest } of proposals) yield `Nearest to “${typed}” in the list: ${nearest}`;
  if (withoutFilters !== undefined)
    yield `Without --kind, --person, --from, --to and --box there would be ${withoutFilters === 1 ? '1 thing' : `${withoutFilters} things`}.`;
}
