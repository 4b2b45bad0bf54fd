import type { Thing } from '../catalogue/thing.ts';
import { type Cells, formOf, usualAs } from './form-of.ts';
import { formByTitle } from './form-words.ts';
import { BY_FORM, UNKNOWN_KIND, type Usual } from './forms.ts';
import type { Form, Shelf, Size } from './model.ts';
import { inWords } from './read-size.ts';
import { sizeReading, type UsualKind, usualOf } from './usual-form.ts';

export { sizeFindings } from './size-findings.ts';

/** A row of the list as something that takes room. What is rolled or a textile is measured as if it lay open. */
export interface Piece {
  thing: Thing;
  form: Form;
  shelf: Shelf;
  /** Of each of its things, in millimetres. */
  size: Size;
  /** Of all things of the row, one on the other, in millimetres. */
  thickness: number;
  /** What was taken for granted, in sentences. */
  assumed: readonly string[];
}

/** What rows with like cells have in common, whatever number of things they stand for. */
interface Alike extends Omit<Piece, 'thing' | 'thickness'> {
  /** Thickness of one, in millimetres. */
  each: number;
  /** How many there are where the list does not say. */
  uncounted: number;
  /** Thickness of all of them, where that is known, in millimetres. */
  bundle?: number;
  /** What was taken for granted where the list says how many there are. */
  assumedOfCounted: readonly string[];
}

const alike = new Map<string, Alike>();

/** How a row of the list lies on a shelf, from its kind, quantity, size and condition. */
export function pieceOf(thing: Thing): Piece {
  const { title, kind = '', size = '', condition = '', quantity } = thing;
  const titleForm = formByTitle(title);
  const several = quantity !== undefined && quantity > 1;
  // Many rows of a list have the same cells; what these come to is worked out once.
  const key = `${kind}\0${size}\0${condition}\0${titleForm ?? ''}\0${several}`;
  let found = alike.get(key);
  if (found === undefined) {
    found = measure(thing, several, titleForm);
    alike.set(key, found);
  }
  return {
    thing,
    form: found.form,
    shelf: found.shelf,
    size: found.size,
    thickness: found.bundle ?? found.each * (quantity ?? found.uncounted),
    assumed: quantity === undefined ? found.assumed : found.assumedOfCounted,
  };
}

function measure(cells: Cells, several: boolean, titleForm: Form | undefined): Alike {
  const { kind } = cells;
  const known = kind === undefined ? undefined : usualOf(kind);
  const reading = sizeReading(cells);
  const read = reading?.kind === 'size' ? reading : undefined;
  const form = formOf(cells, several, known, read, titleForm);
  const usual = usualAs(form, known?.usual ?? UNKNOWN_KIND);
  const size = read?.size ?? usual.size;
  const each = eachOf(size, usual, cells.size);
  const ofWhat = form === known?.usual.form ? ` for “${known.word}”` : '';
  // Sheets that nobody counted are some; of anything else, each is a row of its own in most lists.
  const uncounted = known?.plural === true && form === 'sheet' ? SOME : 1;
  const bundle = several && LEAVES.has(form) && (size.thick ?? 0) > 5 * usual.each ? size.thick : undefined;
  const assumed = [
    ...assumedOfKind(kind, known),
    ...(form === known?.usual.form ? [] : [`It is reckoned as ${AS[form]}.`]),
    ...(read?.assumed === undefined ? [] : [read.assumed]),
    ...(read !== undefined || form === 'digital'
      ? []
      : [`No size is given; the usual one${ofWhat} is assumed: ${inWords(size)}.`]),
    ...(size.thick !== undefined || each === 0
      ? []
      : [`The usual thickness${ofWhat} is assumed: ${inTenths(each)} mm each.`]),
    ...(bundle === undefined ? [] : ['The thickness given is taken for that of all of them together.']),
  ];
  const some = uncounted === 1 ? [] : [`How many there are is not said; ${uncounted} are assumed.`];
  const { shelf } = usual;
  const common = {
    form,
    shelf,
    size,
    each,
    uncounted,
    assumed: [...assumed, ...some],
    assumedOfCounted: assumed,
  };
  return bundle === undefined ? common : { ...common, bundle };
}

const SOME = 10;
/** What lies leaf on leaf, so that a third measure far above that of one is that of the bundle. */
const LEAVES: ReadonlySet<Form> = new Set(['sheet', 'photograph', 'mounted', 'negative']);
const AS: Readonly<Record<Form, string>> = {
  sheet: 'a few sheets of paper',
  photograph: 'a photograph',
  mounted: 'a mounted photograph',
  framed: 'framed',
  bound: 'a volume',
  negative: 'a negative',
  slide: 'a slide',
  glass: 'glass',
  disc: 'a record',
  film: 'film',
  tape: 'tape',
  textile: 'a textile',
  object: 'an object',
  rolled: 'rolled',
  digital: 'digital',
};

/** Thickness of one, in millimetres. */
function eachOf(size: Size, usual: Usual, written: string | undefined): number {
  if (usual.form === 'digital') return usual.each;
  if (size.thick !== undefined) return size.thick;
  // A pocket diary is as much thinner than a diary as it is smaller. From memory.
  if (usual.form === 'bound') return Math.max(2, (usual.each * size.long) / usual.size.long);
  if (usual.form !== 'object') return usual.each;
  // A bell 11 in across may be as high; what is small is hardly thicker than it is wide.
  const solid = usual === BY_FORM.object && size.long === size.short && SOLID.test(written ?? '');
  return solid ? size.short : Math.min(usual.each, size.short);
}

const SOLID = /\b(?:across|diameter|diam|dia|round|tall|high)\b/i;

const inTenths = (mm: number) => Number(mm.toFixed(1));

function assumedOfKind(kind: string | undefined, known: UsualKind | undefined): string[] {
  if (kind === undefined) return ['Nothing says what it is.'];
  if (known === undefined) return [`How “${kind}” is kept is not known.`];
  return known.partly ? [`“${kind}” is taken for “${known.word}”.`] : [];
}
