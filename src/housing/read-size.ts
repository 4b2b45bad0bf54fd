import { INCH } from './measures.ts';
import type { Face, Form, Size } from './model.ts';
import { gaugeApart, isStillFilm, readFilm, withoutLengths } from './size-film.ts';
import { type MeasureGroup, measureGroups } from './size-groups.ts';
import { bestOf, type Named, namesIn } from './size-named.ts';
import { likelyUnit } from './size-plausible.ts';
import { sizeTokens } from './size-tokens.ts';
import { MORE } from './size-units.ts';

/** What a phrase of the size column says. Measures in millimetres. */
export type SizeReading =
  | {
      kind: 'size';
      size: Size;
      /** What only things of such a size are: "cabinet card", "35 mm slide". */
      form?: Form;
      /** What was taken for granted, in sentences. */
      assumed?: string;
      /** The unit that was assumed for measures without one. */
      guessedUnit?: string;
    }
  /** Less than nothing, or nothing. */
  | { kind: 'impossible'; why: string }
  /** Larger or smaller than anything that is kept in a box. */
  | { kind: 'unlikely'; why: string }
  | { kind: 'unknown' };

const UNKNOWN: SizeReading = { kind: 'unknown' };
// Nothing that a family keeps in a box, and hardly a map on its roller, is longer.
const LONGEST = 5000;

/** Reads a size as people write it: `8 x 10`, `20 × 25 cm`, `A4`, `cabinet card`, `reel, 8 mm`. Never throws. */
export const readSize = (phrase: string): SizeReading => readSizeOf(phrase, undefined);

/**
 * Reads the size of something known to be sheet, disc or film, which decides what "35 mm" or "78" means.
 * @param form undefined where it is not known
 */
export function readSizeOf(phrase: string, form: Form | undefined): SizeReading {
  const tokens = sizeTokens(phrase);
  if (tokens.some((token) => token.is === 'word' && MORE.has(token.word))) return UNKNOWN;
  const { names, left } = namesIn(tokens, form);
  const named = names.find(({ row }) => row.form !== undefined)?.row.form;
  const meant = named ?? form;
  const all = gaugeApart(measureGroups(left), meant);
  const why = impossibleNumber(all);
  if (why !== undefined) return { kind: 'impossible', why };
  const film = readFilm(all, names, meant);
  if (film !== undefined) return checked(film.size, 'film', film.assumed);
  const still = isStillFilm(all) ? stillFilm(meant) : undefined;
  if (still !== undefined) return still;
  const groups = withoutLengths(all, meant).filter((group) => isMeasured(group, meant));
  if (groups.some(({ measures }) => measures.length > 3)) return UNKNOWN;
  const thickness = groups.filter(({ thick, measures }) => thick && measures.length === 1);
  const faces = groups.filter((group) => !thickness.includes(group));
  if (faces.length === 0) return readNamed(names, named);
  return readMeasures(faces, thickness, names, meant, named);
}

/** Lone numbers without a unit are no measures, unless they are said to be or the thing is a record: "12". */
const isMeasured = ({ measures, labelled }: MeasureGroup, form: Form | undefined): boolean =>
  measures.length > 1 || measures[0]?.unit !== undefined || labelled || form === 'disc';

function impossibleNumber(groups: readonly MeasureGroup[]): string | undefined {
  for (const { value, negative } of groups.flatMap(({ measures }) => measures)) {
    if (negative) return 'A measure cannot be less than nothing.';
    if (value === 0) return 'A measure cannot be nothing.';
  }
  return undefined;
}

/** "35 mm" of what is known to be a slide or a negative: the mount, or a strip of six. */
function stillFilm(form: Form | undefined): SizeReading | undefined {
  if (form === 'slide') return readNamed(namesIn(sizeTokens('slide'), form).names, form);
  if (form !== 'negative' && form !== 'photograph') return undefined;
  return {
    ...readNamed(namesIn(sizeTokens('strip of negatives'), form).names, 'negative'),
    ...{ assumed: '“35 mm” is taken for negatives in strips of six.' },
  };
}

function readNamed(names: readonly Named[], form: Form | undefined): SizeReading {
  const best = bestOf(names);
  const { face, thick, loose } = best?.row ?? {};
  if (best === undefined || face === undefined) return UNKNOWN;
  const assumed = `“${best.name}” has no one size; ${inWords(face)} is assumed.`;
  return checked({ ...face, ...(thick !== undefined && { thick }) }, form, loose ? assumed : undefined);
}

/** A size in words: `203 × 254 mm`. */
export const inWords = ({ long, short }: Face): string => `${Math.round(short)} × ${Math.round(long)} mm`;

function readMeasures(
  faces: readonly MeasureGroup[],
  thickness: readonly MeasureGroup[],
  names: readonly Named[],
  meant: Form | undefined,
  named: Form | undefined,
): SizeReading {
  const assumed = new Set<string>();
  const units = new Set<string>();
  const sizes = faces.map((group) => sizeOfGroup(group, meant, assumed, units));
  const size = sizes.reduce((one, other) => ({
    long: Math.max(one.long, other.long),
    short: Math.max(one.short, other.short),
    ...thickOf(Math.max(one.thick ?? 0, other.thick ?? 0)),
  }));
  // The same size in inches and in centimetres differs by the rounding.
  const same = ({ long, short }: Size) => long > size.long * 0.96 && short > size.short * 0.96;
  if (!sizes.every(same)) assumed.add('Of several sizes, the largest counts.');
  if (faces.some((group) => group.measures.length === 1 && !group.round) && !isRound(meant))
    assumed.add('Only one measure is given; the other is assumed to be no larger.');
  const own = Math.max(0, ...thickness.map(({ measures: [m] }) => (m?.value ?? 0) * (m?.unit ?? 10)));
  const usual = names.find(({ row }) => row.thick !== undefined)?.row.thick ?? 0;
  const whole = { ...size, ...thickOf(own || size.thick || usual) };
  const read = checked(whole, named, assumed.size === 0 ? undefined : [...assumed].join(' '));
  return read.kind === 'size' && units.size > 0 ? { ...read, guessedUnit: [...units].join(', ') } : read;
}

const thickOf = (thick: number) => (thick > 0 ? { thick } : {});
const isRound = (form: Form | undefined) => form === 'disc' || form === 'film' || form === 'tape';

/** The measures of a group, the largest first: the thickness is the smallest of three. */
function sizeOfGroup(
  group: MeasureGroup,
  form: Form | undefined,
  assumed: Set<string>,
  units: Set<string>,
): Size {
  const bare = group.measures.some(({ unit }) => unit === undefined);
  const likely = bare ? unitOf(group, form) : undefined;
  if (likely !== undefined) {
    assumed.add(likely.why);
    units.add(UNIT_NAMES.get(likely.mm) ?? 'millimetres');
  }
  const all = group.measures.map(({ value, unit }) => value * (unit ?? likely?.mm ?? 1));
  const [long = 0, short = long, thick = 0] = all.sort((one, other) => other - one);
  return { long, short, ...thickOf(thick) };
}

const UNIT_NAMES: ReadonlyMap<number, string> = new Map([
  [INCH, 'inches'],
  [10, 'centimetres'],
]);

function unitOf(group: MeasureGroup, form: Form | undefined): { mm: number; why: string } {
  const [first] = group.measures;
  // Records are made in 7, 10, 12 and 16 inches; from memory.
  if (form === 'disc' && first !== undefined && first.value <= 16)
    return { mm: INCH, why: `“${first.value}” has no unit; records are measured in inches.` };
  return likelyUnit(group);
}

function checked(size: Size, form: Form | undefined, assumed: string | undefined): SizeReading {
  const { long, short } = size;
  // Not more than 5 m, by the rounding of the measure; not NaN either.
  if (!(long <= LONGEST)) return { kind: 'unlikely', why: `${said(long)} is longer than 5 m.` };
  if (!(short >= 1)) return { kind: 'unlikely', why: `${said(short)} is less than 1 mm.` };
  return {
    kind: 'size',
    size,
    ...(form !== undefined && { form }),
    ...(assumed !== undefined && { assumed }),
  };
}

const said = (mm: number) =>
  mm < 1000 ? `A measure of ${Number(mm.toPrecision(2))} mm` : `A measure of ${Math.round(mm / 1000)} m`;
