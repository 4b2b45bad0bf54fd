import type { Finding } from '../catalogue/finding.ts';
import { displayDate } from '../dates/index.ts';
import { agentsByName } from './agents-by-name.ts';
import type { Rules } from './index.ts';
import { byFirstYear, monthAt } from './run-places.ts';
import { type Filled, fewVolumes, type Run, regularRuns } from './run-regular.ts';
import { type Series, seriesOn } from './run-series.ts';
import { sayRows } from './said-together.ts';

/** A run as it is found, with how its places are called. */
interface FoundRun {
  series: Series;
  run: Run;
  call: (place: number) => string;
}

/** So many gaps are named; the rest are counted. */
const NAMED = 12;

/**
 * Series that come by the year, the month or the number, and of which some are missing or there twice; nobody has to say
 * that they are such a series. What is numbered is not looked at by its year as well. One finding a run.
 */
export const reviewRuns: Rules = ({ things }, aid) => {
  const agentOf = agentsByName(aid);
  const told = new Set<number>();
  const found: Finding[] = [];
  for (const scale of ['number', 'month', 'year'] as const) {
    const left = things.filter(({ row }) => !told.has(row));
    for (const series of seriesOn(scale, left, agentOf)) {
      for (const one of runsOf(series)) {
        for (const row of one.run.rows) told.add(row);
        found.push(...findingOf(one));
      }
    }
  }
  return found.sort((a, b) => (a.place.row ?? 0) - (b.place.row ?? 0));
};

function runsOf(series: Series): FoundRun[] {
  const { scale, filled } = series;
  if (scale === 'month')
    return regularRuns(filled).map((run) => ({ series, run, call: (place) => displayDate(monthAt(place)) }));
  if (scale === 'number')
    return numberedRuns(filled).map((run) => ({
      series,
      run: fromOne(run),
      call: (place) => `no. ${place}`,
    }));
  const { series: years, isSplit } = byFirstYear(filled);
  const call = (place: number) => (isSplit ? `${place}-${place + 1}` : `${place}`);
  return regularRuns(years).map((run) => ({ series, run, call }));
}

function numberedRuns(filled: readonly Filled[]): Run[] {
  const runs = regularRuns(filled);
  return runs.length > 0 ? runs : fewVolumes(filled);
}

/** Whoever numbers begins with 1. */
const fromOne = (run: Run): Run =>
  run.step === 1 && run.first === 2 ? { ...run, first: 1, missing: [1, ...run.missing] } : run;

function findingOf({ series, run, call }: FoundRun): Finding[] {
  const { first, last, step, missing, twice, rows } = run;
  if (missing.length === 0 && twice.length === 0) return [];
  const [row = 0] = rows;
  const said = [
    `${series.name} seem to ${howOften(series.scale, step)}, from ${call(first)} to ${call(last)}.`,
  ];
  if (missing.length > 0) said.push(`Missing: ${stretches(missing, step, call)}.`);
  if (twice.length > 0) {
    const named = twice.slice(0, NAMED).map(({ from, to, rows: both }) => {
      return `${from === to ? call(from) : `${call(from)} to ${call(to)}`} (${sayRows(both)})`;
    });
    said.push(`There more than once: ${named.join(', ')}${andMore(twice.length)}.`);
  }
  return [
    {
      rule: 'runs.incomplete',
      weight: 'consider',
      place: { file: 'list.csv', row, column: series.scale === 'number' ? 'title' : 'date' },
      found: said.join(' '),
      advice: [
        ...(missing.length > 0
          ? [
              'Look for what is missing while somebody may still know of it; if it is lost, say so in the scope of its group.',
            ]
          : []),
        ...(twice.length > 0
          ? ['Of what is there more than once, say in the titles how the one differs from the other.']
          : []),
      ].join(' '),
      source: 'DACS 3.1, ISAD(G) 3.3.1; common practice',
    },
  ];
}

function howOften(scale: Series['scale'], step: number): string {
  if (scale === 'number') return step === 1 ? 'be numbered' : `be numbered in steps of ${step}`;
  return step === 1 ? `come one a ${scale}` : `come one every ${step} ${scale}s`;
}

/** Gaps that follow one another as one: 1924 to 1935. */
function stretches(missing: readonly number[], step: number, call: (place: number) => string): string {
  const found: [from: number, to: number][] = [];
  for (const place of missing) {
    const before = found.at(-1);
    if (before !== undefined && before[1] + step === place) before[1] = place;
    else found.push([place, place]);
  }
  const said = found
    .slice(0, NAMED)
    .flatMap(([from, to]) =>
      from === to
        ? [call(from)]
        : to === from + step
          ? [call(from), call(to)]
          : [`${call(from)} to ${call(to)}`],
    );
  return `${said.join(', ')}${andMore(found.length)}`;
}

const andMore = (count: number) => (count > NAMED ? ` and ${count - NAMED} more` : '');
