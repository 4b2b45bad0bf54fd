import { INCH } from './measures.ts';
import type { Form, Size } from './model.ts';
import { checked, type SizeReading } from './size-checked.ts';
import type { MeasureGroup } from './size-groups.ts';
import type { Named } from './size-named.ts';
import { likelyUnit } from './size-plausible.ts';

/**
 * The size of something whose measures are written out.
 * @param faces the measures of its front, one group for each size that is given
 * @param thickness measures of its thickness alone
 * @param meant what the thing is known to be; `named` where the phrase itself says it
 */
export function readMeasures(
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
