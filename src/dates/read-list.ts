import { type Built, build, draftsOf } from './build.ts';
import { type Draft, fillFrom, isLoneDay, isYearOnly } from './draft.ts';
import { parseEdtf } from './edtf.ts';
import { crossNewYear } from './new-year.ts';
import { type Item, readItem } from './read-item.ts';
import { choose, fail, isSign, peek, type Scanner, senseAt, takeSense, takeSign } from './scanner.ts';

type Separator = 'and' | 'or' | ',';

/** Goes past what parts two members of a list; "bulk" after a comma does not. */
function takeSeparator(s: Scanner): Separator | undefined {
  const comma = isSign(s, ',') || isSign(s, ';') || isSign(s, '&') || isSign(s, '+');
  if (comma && senseAt(s, 1)?.is === 'bulk') return undefined;
  if (comma) s.at++;
  if (takeSense(s, 'or')) return 'or';
  if (takeSense(s, 'and')) return 'and';
  return comma ? ',' : undefined;
}

/** Lets the dates of a list fill each other: "14 or 15 May 1962", "1975 March, April". */
function fillAll(items: readonly Item[]): void {
  const drafts = items.flatMap(draftsOf);
  for (let at = drafts.length - 2; at >= 0; at--) fill(drafts[at], drafts[at + 1]);
  for (let at = 1; at < drafts.length; at++) fill(drafts[at], drafts[at - 1]);
}

/** What two years of a list have in common: "Christmas 1958 or 1959", but not "1958 December or 1959". */
function shareAll(s: Scanner, items: readonly Item[]): void {
  let source: Draft | undefined;
  for (const item of items) {
    if (item.shape !== 'date') return;
    const { draft } = item;
    if (source && !source.yearFirst && isYearOnly(draft) && /^\d{4}$/.test(draft.year ?? '')) {
      if (source.feast) draft.feast = source.feast;
      else if (source.season !== undefined) draft.season = source.season;
      else if (source.month !== undefined && choose(s, 'shared', [true, false])) {
        draft.month = source.month;
        if (source.day !== undefined) draft.day = source.day;
        if (source.nth !== undefined) Object.assign(draft, { nth: source.nth, weekday: source.weekday });
      }
    }
    source = draft;
  }
}

function fill(draft: Draft | undefined, source: Draft | undefined): void {
  if (draft && source) fillFrom(draft, source);
}

/** Text of a member inside a set; undefined where a set cannot hold it at that place. */
function memberText(built: Built, isFirst: boolean, isLast: boolean): string | undefined {
  if (built.kind === 'date') return built.text;
  const [from, to] = [built.from === '..' ? '' : built.from, built.to === '..' ? '' : built.to];
  if ((from === '' && !isFirst) || (to === '' && !isLast)) return undefined;
  return from === to ? from : `${from}..${to}`;
}

function setOf(s: Scanner, builts: readonly Built[], of: 'one' | 'all'): string | undefined {
  const members = builts.map((built, at) => memberText(built, at === 0, at === builts.length - 1));
  if (members.includes(undefined)) return fail(s, 'An open end stands in the middle of a list.');
  return of === 'one' ? `[${members.join(',')}]` : `{${members.join(',')}}`;
}

function single(s: Scanner, built: Built, all: boolean): string | undefined {
  if (all) return setOf(s, [built], 'all');
  if (built.kind === 'run') return setOf(s, [built], 'one');
  return built.kind === 'date' ? built.text : `${built.from}/${built.to}`;
}

/** "After 1950 but before 1960" and "before 1960 and after 1950" are some time between the two. */
function betweenEdges([one, other]: readonly Built[], byAnd: boolean): Built | undefined {
  if (one?.kind !== 'run' || other?.kind !== 'run') return undefined;
  if (one.to === '' && other.from === '') return { kind: 'run', from: one.from, to: other.to };
  // "Before 1950 and after 1960" are two times, with nothing between.
  const isBetween = byAnd && one.from === '' && other.to === '' && parseEdtf(`[${other.from}..${one.to}]`);
  return isBetween ? { kind: 'run', from: other.from, to: one.to } : undefined;
}

/** Of alternatives a mark before the first holds for all: "circa 1892 or 1893". */
function spreadMark(items: readonly Item[]): void {
  const [first, ...rest] = items;
  if (first?.shape !== 'date') return;
  for (const item of rest) {
    if (item.shape === 'date' && item.draft.mark === '') item.draft.mark = first.spread;
  }
}

/** Reads dates parted by commas, "and" or "or", to the end of the phrase or to "bulk". */
export function readList(s: Scanner): string | undefined {
  const all = takeSense(s, 'allOf') !== undefined;
  const items: Item[] = [];
  const separators = new Set<Separator>();
  for (;;) {
    const before = items.flatMap(draftsOf).findLast((draft) => !isLoneDay(draft));
    const item = readItem(s, before);
    if (!item) return fail(s, 'It is not understood.');
    items.push(item);
    const separator = takeSeparator(s);
    if (!separator) break;
    separators.add(separator);
  }
  const left = peek(s);
  if (left && senseAt(s)?.is !== 'bulk' && senseAt(s, 1)?.is !== 'bulk' && !closesBulk(s)) {
    return fail(s, `“${left.text}” is not understood here.`);
  }
  if (separators.has('or') && separators.has('and')) return fail(s, 'It has both “and” and “or”.');
  crossNewYear(s, items);
  fillAll(items);
  if (!separators.has(',')) shareAll(s, items);
  const of = separators.has('or') ? 'one' : 'all';
  if (of === 'one') spreadMark(items);
  const builts: Built[] = [];
  for (const item of items) {
    const built = build(s, item);
    if (!built) return fail(s, 'It is not understood.');
    builts.push(built);
  }
  const between =
    builts.length === 2 ? betweenEdges(builts, separators.has('and') && !separators.has(',')) : undefined;
  return between ? listText(s, [between], of, false) : listText(s, builts, of, all);
}

/** Whether the bracket closes that was opened before "bulk". */
const closesBulk = (s: Scanner) =>
  isSign(s, ')') && s.at + 1 === s.pieces.length && s.pieces.some(({ sense }) => sense?.is === 'bulk');

function listText(s: Scanner, builts: readonly Built[], of: 'one' | 'all', all: boolean): string | undefined {
  const [only] = builts;
  const text = builts.length === 1 && only ? single(s, only, all) : setOf(s, builts, of);
  if (text === undefined) return undefined;
  return parseEdtf(text) ? text : fail(s, whyNot(builts));
}

/** Why dates that are each fine make no date together. */
function whyNot(builts: readonly Built[]): string {
  const reversed = builts.find(
    (one) =>
      one.kind !== 'date' &&
      one.from !== '' &&
      one.to !== '' &&
      !parseEdtf(`${one.from}/${one.to}`) &&
      parseEdtf(one.from) &&
      parseEdtf(one.to),
  );
  return reversed ? 'It ends before it begins.' : 'There is no such day.';
}

/** Bulk dates after the inclusive ones (DACS 2.4.10), where the phrase has any left. */
export function readBulk(s: Scanner): string | undefined {
  const bracket = !takeSign(s, ',') && takeSign(s, '(');
  if (!takeSense(s, 'bulk')) return undefined;
  const bulk = readList(s);
  return bracket && !takeSign(s, ')') ? fail(s, 'A bracket is opened and not closed.') : bulk;
}
