import type { Answer, Hit } from './answer.ts';
import { sayReasons } from './say-reasons.ts';
import { sayWhereabouts } from './whereabouts.ts';

/** The answer as lines of plain text: of each hit what it is, where it lies, and why it was found. */
export function* sayHits({ unit, hits }: Answer): Generator<string> {
  if (unit !== undefined) {
    const { referenceCode, lies } = unit;
    yield `${referenceCode}  ${sayTitle(unit)}`;
    if (lies !== undefined) yield `${indentFor(referenceCode)}${lies}`;
  }
  for (const hit of hits) {
    const { referenceCode, uncoded, above, restricted, lacks } = hit;
    const indent = indentFor(uncoded ? '' : referenceCode);
    yield uncoded ? sayTitle(hit) : `${referenceCode}  ${sayTitle(hit)}`;
    yield `${indent}${sayWhereabouts(hit)}`;
    // Of many folders called alike only what they are part of tells which is which, where no code does.
    if (uncoded && above.length > 0)
      yield `${indent}part of ${above.map((unit) => `“${withoutEnd(unit.title)}”`).join(', ')}`;
    if (restricted !== undefined)
      yield `${indent}${/^restricted\b/i.test(restricted) ? '' : 'restricted: '}${restricted.replace(/\s+/g, ' ')}`;
    const why = sayReasons(hit);
    if (why !== '') yield `${indent}${why}`;
    if (lacks.length > 0) yield `${indent}without: ${lacks.join(', ')}`;
  }
}

/** Title and dates. Titles of others may end as if the dates followed, or hold them already. */
function sayTitle({ title, dates }: Pick<Hit, 'title' | 'dates'>): string {
  if (dates === undefined || title.endsWith(dates)) return title;
  return `${withoutEnd(title)}, ${dates}`;
}

const withoutEnd = (title: string): string => title.replace(/[\s,;:]+$/, '');

const indentFor = (code: string): string => ' '.repeat(Math.min(code.length, 20) + 2);

/** What there is to say beside the hits. */
export function* sayRest(answer: Answer): Generator<string> {
  const { found, box, hits, proposals, withoutFilters } = answer;
  if (found > hits.length)
    yield `${found} things found; ${hits.length === 1 ? 'the first is' : `the first ${hits.length} are`} shown, and --most ${found} shows all.`;
  if (found > 0 && hits.some(({ lacks }) => lacks.length > 0))
    yield 'Nothing has all that was asked for; these have the most of it.';
  if (box !== undefined) yield `For what lies in box ${box}: --box ${box}`;
  if (found > 0) return;
  yield* sayNothing(answer);
  for (const { typed, nearest } of proposals) yield `Nearest to “${typed}” in the catalogue: ${nearest}`;
  if (withoutFilters !== undefined)
    yield `Without --kind, --person, --from, --to and --box there would be ${withoutFilters === 1 ? '1 thing' : `${withoutFilters} things`}.`;
}

function* sayNothing({ notThere, wordless }: Answer): Generator<string> {
  if (notThere === undefined) {
    yield wordless ? 'Nothing found.' : 'Nothing found. Fewer words, or another spelling of them, may help.';
    return;
  }
  const { box, kind } = notThere;
  if (box !== undefined) yield `Nothing found: there is no box ${box.asked}. ${sayBoxes(box.there)}`;
  if (kind === undefined) return;
  const { asked, nearest, there } = kind;
  const said = nearest.length > 0 ? `Nearest to it: ${nearest.join(', ')}.` : sayKinds(there);
  yield `Nothing found: the catalogue has no kind “${asked}”. ${said}`;
}

function sayBoxes(there: string): string {
  if (there === '') return 'Nothing lies in a box that has a number.';
  return /[-,]/.test(there) ? `The boxes are ${there}.` : `The only box is ${there}.`;
}

/** So many kinds are named. */
const NAMED = 12;

function sayKinds(there: readonly string[]): string {
  if (there.length === 0) return 'It names no kind at all.';
  const more = there.length - NAMED;
  return `Kinds in it: ${there.slice(0, NAMED).join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}
