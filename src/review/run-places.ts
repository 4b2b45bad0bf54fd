import type { Thing } from '../catalogue/thing.ts';
import { firstYear, lastYear } from '../dates/index.ts';
import type { Filled } from './run-regular.ts';

type Place = Omit<Filled, 'row'>;

const YEARS = /^(\d{4})(?:\/(\d{4}))?$/;
const WHOLE_YEAR = /^(\d{4})-01(?:-01)?\/(\d{4})-12(?:-31)?$/;
const MONTHS = /^(\d{4})-(0[1-9]|1[0-2])(?:\/(\d{4})-(0[1-9]|1[0-2]))?$/;
const YEARS_IN_TITLE =
  /(?<![\d.#-]|\b(?:no|nos|nr|number)\.? ?)((?:1[4-9]|20)\d\d)(?:\s*[-–/]\s*((?:1[4-9]|20)\d\d|\d\d))?(?![\d-])/giu;
/** A doubtful date within so many years fills them; a vaguer one would fill every gap. */
const DOUBTFUL = 3;

/**
 * The years that a thing fills, by its date, or by the one year in its title where it has none.
 * @param isFinerEnough whether a day or a month stands for its year
 */
export function yearsOf({ title, date }: Thing, isFinerEnough: boolean): Place | undefined {
  if (date?.reading.kind !== 'date') return yearsInTitle(title);
  const { edtf, alternatives = [edtf] } = date.reading;
  // "1911/12" may be a month or two years; beside others of its kind it is the years.
  for (const each of alternatives) {
    const [, from, to = from] = YEARS.exec(each) ?? WHOLE_YEAR.exec(each) ?? [];
    if (from !== undefined)
      return { from: Number(from), to: Number(to), isProof: true, said: `${from}/${to}` };
  }
  const [from, to] = [firstYear(edtf), lastYear(edtf)];
  if (from === undefined || to === undefined || to - from >= DOUBTFUL) return undefined;
  const isProof = isFinerEnough && alternatives.length === 1 && /^[\d/-]+$/.test(edtf);
  return { from, to, isProof, said: edtf };
}

/** The years of the one year or span that a title names. */
export function yearsInTitle(title: string): Place | undefined {
  const [found, another] = [...title.matchAll(YEARS_IN_TITLE)];
  const [, from, end = from] = found ?? [];
  if (from === undefined || end === undefined || another !== undefined) return undefined;
  const to = end.length === 2 ? `${from.slice(0, 2)}${end}` : end;
  return Number(to) < Number(from)
    ? undefined
    : { from: Number(from), to: Number(to), isProof: true, said: `${from}/${to}` };
}

/** The months that a thing fills, counted from the year 0. */
export function monthsOf({ date }: Thing): Place | undefined {
  if (date?.reading.kind !== 'date' || date.reading.alternatives !== undefined) return undefined;
  const { edtf } = date.reading;
  const [, year, month, lastYearOf = year, lastMonth = month] = MONTHS.exec(edtf) ?? [];
  if (year === undefined || month === undefined) return undefined;
  const [from, to] = [countMonths(year, month), countMonths(lastYearOf ?? year, lastMonth ?? month)];
  return { from, to, isProof: true, said: edtf };
}

const countMonths = (year: string, month: string) => Number(year) * 12 + Number(month) - 1;

/** A count of months as EDTF. */
export const monthAt = (count: number): string =>
  `${String(Math.floor(count / 12)).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}`;

/**
 * Where the years of a series are school or business years ("1910-1911", "1911-1912"), each is taken by its first; else
 * the series is as it was.
 */
export function byFirstYear(series: readonly Filled[]): { series: readonly Filled[]; isSplit: boolean } {
  const proofs = series.filter(({ isProof }) => isProof).sort((a, b) => a.from - b.from);
  const twoYears = proofs.filter(({ from, to }) => to === from + 1);
  const ends = new Set(twoYears.map(({ to }) => to));
  const meeting = twoYears.filter(({ from }) => ends.has(from));
  if (twoYears.length * 2 <= proofs.length || meeting.length * 2 < twoYears.length)
    return { series, isSplit: false };
  const split = series.map((each) =>
    each.to > each.from
      ? { ...each, to: each.to - 1 }
      : // The year of a single date may be the first or the second.
        { ...each, from: each.from - 1, isProof: false },
  );
  return { series: split, isSplit: true };
}
