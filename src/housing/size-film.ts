import { INCH } from './measures.ts';
import { FILM_REELS, FILM_WIDTHS } from './media-sizes.ts';
import type { Form, Size } from './model.ts';
import type { MeasureGroup } from './size-groups.ts';
import type { Named } from './size-named.ts';

const FOOT = 12 * INCH;
// The longest piece of film that somebody measures as if it were a sheet: 3 m.
const SHORTEST_LENGTH = 3000;

const only = ({ measures, labelled }: MeasureGroup) =>
  measures.length === 1 && !labelled ? measures[0] : undefined;

/** Width of cine film that a group names: "16 mm" alone. */
function filmWidth(group: MeasureGroup) {
  const measure = only(group);
  return measure?.unit === 1 ? FILM_WIDTHS.find(({ wide }) => wide === measure.value) : undefined;
}

/** Whether a group is the running length of film or tape: `400 ft`. */
function isLength(group: MeasureGroup): boolean {
  const [measure] = group.measures;
  const { unit = 0, value } = measure ?? { value: 0 };
  return only(group) !== undefined && unit >= FOOT && value * unit >= SHORTEST_LENGTH;
}

/** Whether a group is the width of sound or video tape: `1/4 in`. */
function isTapeWidth(group: MeasureGroup): boolean {
  const measure = only(group);
  return measure?.unit !== undefined && measure.value * measure.unit < 30;
}

// Film and tape are no wider than this; a ribbon or a border is no film.
const WIDEST = 80;

/** The width and the running length of film or tape, written with a cross: of "35 mm x 300 ft" each by itself. */
export const gaugeApart = (groups: readonly MeasureGroup[], form: Form | undefined): MeasureGroup[] =>
  groups.flatMap((group) => {
    const parts = group.measures.map((measure): MeasureGroup => ({ ...group, measures: [measure] }));
    const length = parts.find(isLength);
    const width = parts.find((part) => part !== length && millimetres(part) < WIDEST);
    const runs = parts.length === 2 && length !== undefined && width !== undefined;
    const known = form === 'film' || form === 'tape' || (form === undefined && width && filmWidth(width));
    return runs && known ? [width, length] : [group];
  });

/** Measures of film and tape that say nothing of how large the reel or cassette is. */
export const withoutLengths = (groups: readonly MeasureGroup[], form: Form | undefined): MeasureGroup[] =>
  form === 'tape' ? groups.filter((group) => !isLength(group) && !isTapeWidth(group)) : [...groups];

/** Whether a phrase is about 35 mm film in sleeves or in mounts, and so says nothing of the size by itself. */
export const isStillFilm = (groups: readonly MeasureGroup[]): boolean =>
  groups.length === 1 && groups.every((group) => filmWidth(group)?.wide === 35);

/**
 * Reads cine film: its width, the length that is on the reel, the reel or can measured across. Undefined where the
 * phrase is about something else.
 * @param form what the thing is known to be
 */
export function readFilm(
  groups: readonly MeasureGroup[],
  names: readonly Named[],
  form: Form | undefined,
): { size: Size; assumed?: string } | undefined {
  if (groups.some(({ measures }) => measures.length > 1)) return undefined;
  const widthGroup = groups.find((group) => filmWidth(group) !== undefined);
  if (form !== 'film' && (form !== undefined || widthGroup === undefined)) return undefined;
  const named = names.map(({ name }) => FILM_WIDTHS.find((row) => row.names.includes(name)));
  const width = widthGroup ? filmWidth(widthGroup) : named.find((row) => row !== undefined);
  const others = groups.filter((group) => group !== widthGroup);
  const length = Math.max(0, ...others.filter(isLength).map(millimetres));
  const across = Math.max(0, ...others.filter((group) => !isLength(group)).map(millimetres));
  if (width === undefined && length === 0 && across === 0) return undefined;
  const thick = width?.reel ?? 21;
  if (across > 0) return { size: { long: across, short: across, thick } };
  // What families have is on reels of 400 ft at most, cinema film on reels of 1000 ft.
  const feet = length > 0 ? length / FOOT : width?.wide === 35 ? 1000 : 400;
  const reel = FILM_REELS.find((row) => row.feet >= feet - 1) ?? FILM_REELS.at(-1);
  const size = { long: reel?.across ?? 381, short: reel?.across ?? 381, thick };
  const what = length > 0 ? `so much film` : `film of this width`;
  return {
    size,
    assumed: `The size of the reel is not said; ${size.long} mm across are assumed for ${what}.`,
  };
}

const millimetres = ({ measures }: MeasureGroup): number =>
  (measures[0]?.value ?? 0) * (measures[0]?.unit ?? 0);
