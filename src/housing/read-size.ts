import type { Form } from './model.ts';
import { checked, inWords, type SizeReading } from './size-checked.ts';
import { gaugeApart, isStillFilm, readFilm, withoutLengths } from './size-film.ts';
import { type MeasureGroup, measureGroups } from './size-groups.ts';
import { readMeasures } from './size-measured.ts';
import { bestOf, type Named, namesIn } from './size-named.ts';
import { sizeTokens } from './size-tokens.ts';
import { MORE } from './size-units.ts';

const UNKNOWN: SizeReading = { kind: 'unknown' };
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
