import type { Thing } from '../catalogue/thing.ts';
import { smallest } from './choices.ts';
import { type Cells, formOf, isOpen, usualAs } from './form-of.ts';
import { UNKNOWN_KIND, type Usual } from './forms.ts';
import type { Form, Shelf, Size } from './model.ts';
import { inWords, type SizeReading } from './read-size.ts';
import { SLEEVES } from './sleeves.ts';
import { formByTitle, type Told, thingInTitle } from './title-form.ts';
import { sizeReading, type UsualKind, usualOf } from './usual-form.ts';

export { sizeFindings } from './size-findings.ts';

/** A row of the list as something that takes room. What is rolled or a textile is measured as if it lay open. */
export interface Piece {
  thing: Thing;
  form: Form;
  shelf: Shelf;
  /** Of each of its things, in millimetres. */
  size: Size;
  /** Of all things of the row, one on the other, each print in its sleeve; in millimetres. */
  thickness: number;
  /** What was taken for granted, in sentences. */
  assumed: readonly string[];
}

/** What rows with like cells have in common, whatever number of things they stand for. */
interface Alike extends Omit<Piece, 'thing' | 'thickness'> {
  /** Thickness of one, in millimetres. */
  each: number;
  /** What its sleeve adds to that. */
  sleeve: number;
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
  const { title, kind = '', size = '', condition = '', quantity, quantityUnread, sheets = 0 } = thing;
  const known = thing.kind === undefined ? undefined : usualOf(thing.kind);
  const told = formByTitle(title) ?? (isOpen(known) ? thingInTitle(title) : undefined);
  const several = quantity !== undefined && quantity > 1;
  // Many rows of a list have the same cells; what these come to is worked out once.
  const counts = `${several}\0${sheets}\0${quantityUnread ?? ''}`;
  const key = `${kind}\0${size}\0${condition}\0${told?.word ?? ''}\0${counts}`;
  let found = alike.get(key);
  if (found === undefined) {
    found = measure(thing, several, known, told);
    alike.set(key, found);
  }
  const count = quantity ?? found.uncounted;
  return {
    thing,
    form: found.form,
    shelf: found.shelf,
    size: found.size,
    thickness: (found.bundle ?? found.each * count) + found.sleeve * count,
    assumed: quantity === undefined ? found.assumed : found.assumedOfCounted,
  };
}

function measure(
  cells: Cells,
  several: boolean,
  known: UsualKind | undefined,
  told: Told | undefined,
): Alike {
  const { kind, quantityUnread, sheets } = cells;
  const reading = sizeReading(cells);
  const read = reading?.kind === 'size' ? reading : undefined;
  const { form, as } = formOf(cells, several, known, read, told);
  const usual = usualAs(form, known?.usual ?? UNKNOWN_KIND, as);
  const size = read?.size ?? usual.size;
  const each = eachOf(size, usual, cells.size, read);
  const sleeve = sleeveOf(form, size, each);
  const ofWhat = form === known?.usual.form ? ` for “${known.word}”` : '';
  // Sheets that nobody counted are some; of anything else, each is a row of its own in most lists.
  const some = quantityUnread ? LEAVES.has(form) : known?.plural === true && form === 'sheet';
  const whole = several && LEAVES.has(form) && (size.thick ?? 0) > 5 * usual.each ? size.thick : undefined;
  const ofSheets =
    whole === undefined && sheets !== undefined ? thicknessOf(sheets, form, usual, size) : undefined;
  const bundle = whole ?? ofSheets;
  const uncounted = some && bundle === undefined ? SOME : 1;
  const assumed = [
    ...assumedOfKind(kind, known),
    ...(form === known?.usual.form ? [] : [`It is reckoned as ${AS[form]}.`]),
    ...(read?.assumed === undefined ? [] : [read.assumed]),
    ...(read !== undefined || form === 'digital'
      ? []
      : [`No size is given; the usual one${ofWhat} is assumed: ${inWords(size)}.`]),
    ...(told !== undefined && told.usual === usual ? [`By its title it is taken for “${told.word}”.`] : []),
    ...(size.thick !== undefined || each === 0 || ofSheets !== undefined
      ? []
      : [`The usual thickness${ofWhat} is assumed: ${inTenths(each)} mm each.`]),
    ...(whole === undefined ? [] : ['The thickness given is taken for that of all of them together.']),
    ...(ofSheets === undefined ? [] : [`Its ${sheets} sheets are reckoned as ${inTenths(ofSheets)} mm.`]),
    ...(sleeve === 0 ? [] : [`A sleeve adds ${sleeve} mm to each.`]),
  ];
  const guessed = uncounted === 1 ? [] : [`How many there are is not said; ${uncounted} are assumed.`];
  const { shelf } = usual;
  const common = {
    form,
    shelf,
    size,
    each,
    sleeve,
    uncounted,
    assumed: [...assumed, ...guessed],
    assumedOfCounted: assumed,
  };
  return bundle === undefined ? common : { ...common, bundle };
}

/** So many there are taken to be where nobody counted them. */
export const SOME = 10;
/** What lies leaf on leaf, so that a third measure far above that of one is that of the bundle. */
export const LEAVES: ReadonlySet<Form> = new Set(['sheet', 'photograph', 'mounted', 'negative']);
const AS: Readonly<Record<Form, string>> = {
  sheet: 'a few sheets of paper',
  photograph: 'a photograph',
  mounted: 'a mounted photograph',
  framed: 'framed, or stiff as if it were',
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

type SizeRead = Extract<SizeReading, { kind: 'size' }>;

/** Thickness of one, in millimetres. */
function eachOf(size: Size, usual: Usual, written: string | undefined, read: SizeRead | undefined): number {
  // Bytes take no room; "on a CD" says what they are on.
  if (usual.form === 'digital') return read?.form === 'digital' ? (size.thick ?? usual.each) : usual.each;
  if (size.thick !== undefined) return size.thick;
  // A pocket diary is as much thinner than a diary as it is smaller. From memory.
  if (usual.form === 'bound') return Math.max(2, (usual.each * size.long) / usual.size.long);
  if (usual.form !== 'object') return usual.each;
  // A bell 11 in across may be as high; what is small is hardly thicker than it is wide.
  const solid = usual.each > FLAT * usual.size.short && size.long === size.short && SOLID.test(written ?? '');
  return solid ? size.short : Math.min(usual.each, size.short);
}

const PRINT_SLEEVES = SLEEVES.filter(({ takes }) => takes.includes('photograph'));

/** What the sleeve adds in which a print goes into its folder; nothing, where it is too large or too thick for any. */
function sleeveOf(form: Form, size: Size, each: number): number {
  if (form !== 'photograph' && form !== 'mounted') return 0;
  return PRINT_SLEEVES.find((sleeve) => smallest([sleeve], size, each + sleeve.wall))?.wall ?? 0;
}

/** A sheet of 80 g/m² is 0.1 mm thick; a volume has two boards of 2 mm besides. Arithmetic, and from memory. */
const SHEET = 0.1;
const BOARDS = 4;

/** Thickness of so many sheets, in millimetres; undefined where the thing is not made of sheets or its thickness is known. */
function thicknessOf(sheets: number, form: Form, usual: Usual, size: Size): number | undefined {
  if (size.thick !== undefined) return undefined;
  if (form === 'sheet') return sheets * (usual.sheet ?? SHEET);
  return form === 'bound'
    ? Math.max(sheets * SHEET + BOARDS, eachOf(size, usual, undefined, undefined))
    : undefined;
}

/** What is usually flatter than this is no higher for being wide: coins, medals. From memory. */
const FLAT = 0.4;
const SOLID = /\b(?:across|diameter|diam|dia|round|tall|high)\b/i;

const inTenths = (mm: number) => Number(mm.toFixed(1));

function assumedOfKind(kind: string | undefined, known: UsualKind | undefined): string[] {
  if (kind === undefined) return ['Nothing says what it is.'];
  if (known === undefined) return [`How “${kind}” is kept is not known.`];
  return known.partly ? [`“${kind}” is taken for “${known.word}”.`] : [];
}
