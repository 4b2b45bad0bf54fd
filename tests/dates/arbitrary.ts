import fc from 'fast-check';

const two = (value: number) => String(value).padStart(2, '0');
const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const year = fc.integer({ min: 1000, max: 2999 }).map(String);
const month = fc.integer({ min: 1, max: 12 });
const day = fc
  .tuple(year, month, fc.integer({ min: 1, max: 31 }))
  .map(([y, m, d]) => `${y}-${two(m)}-${two(Math.min(d, LENGTHS[m - 1] ?? 28))}`);
const yearMonth = fc.tuple(year, month).map(([y, m]) => `${y}-${two(m)}`);

/** A year, month or day. */
export const plain = fc.oneof(year, yearMonth, day);
/** `?`, `~`, `%` or nothing. */
export const mark = fc.constantFrom('', '?', '~', '%');
const marked = fc.tuple(plain, mark).map(([text, sign]) => text + sign);
const decade = fc.integer({ min: 100, max: 299 }).map((tens) => `${tens}X`);
const century = fc.integer({ min: 10, max: 29 }).map((hundreds) => `${hundreds}XX`);
const doubtedDecade = fc.tuple(decade, fc.constantFrom('', '?')).map(([text, sign]) => text + sign);
const season = fc
  .tuple(year, fc.integer({ min: 21, max: 41 }), mark)
  .map(([y, code, sign]) => `${y}-${code}${sign}`);
const decadeDay = fc
  .tuple(decade, month, fc.integer({ min: 1, max: 28 }))
  .map(([y, m, d]) => `${y}-${two(m)}-${two(d)}`);

/** A single date as people and archivists know them. */
export const point = fc.oneof(
  { weight: 4, arbitrary: marked },
  { weight: 1, arbitrary: doubtedDecade },
  { weight: 1, arbitrary: century },
  { weight: 1, arbitrary: season },
  { weight: 1, arbitrary: decadeDay },
);

const startOf = (text: string) => text.replaceAll(/[?~%]/g, '').replaceAll('X', '0');
/** Two different points of which the first begins no later than the second; by text, which for four-figure years is by time. */
const pair = fc
  .tuple(fc.oneof(marked, decade, century), fc.oneof(marked, decade, century))
  .filter(([one, other]) => startOf(one) !== startOf(other))
  .map(([one, other]) => (startOf(one) <= startOf(other) ? [one, other] : [other, one]) as [string, string]);

export const interval = fc.oneof(
  pair.map(([from, to]) => `${from}/${to}`),
  point.map((text) => `${text}/..`),
  point.map((text) => `../${text}`),
  plain.map((text) => `${text}/`),
  plain.map((text) => `/${text}`),
);

const run = pair.map(([from, to]) => `${from}..${to}`);
const member = fc.oneof({ weight: 3, arbitrary: point }, { weight: 1, arbitrary: run });
const members = fc
  .tuple(
    fc.option(point.map((text) => `..${text}`)),
    fc.array(member, { maxLength: 3 }),
    fc.option(point.map((text) => `${text}..`)),
  )
  .map(([before, middle, after]) => [before, ...middle, after].filter((one) => one !== null));
const choice = members
  .filter((all) => all.length > 1 || (all.length === 1 && all[0]?.includes('..') === true))
  .map((all) => `[${all.join(',')}]`);
const listing = members.filter((all) => all.length > 0).map((all) => `{${all.join(',')}}`);

/** Any date, interval or set in the form the reader of phrases gives it. */
export const date = fc.oneof(point, interval, choice, listing);
