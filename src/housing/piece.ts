import type { Thing } from '../catalogue/thing.ts';
import { type Cells, formOf, isOpen, usualAs } from './form-of.ts';
import { UNKNOWN_KIND } from './forms.ts';
import type { Form, Shelf, Size } from './model.ts';
import { sleeveOf, thicknessOfOne, thicknessOfSheets } from './thickness.ts';
import { formByTitle, type Told, thingInTitle } from './title-form.ts';
import { sizeReading, type UsualKind, usualOf } from './usual-form.ts';

/** A row of the list as something that takes room. What is rolled or a textile is measured as if it lay open. */
export interface Piece {
  thing: Thing;
  form: Form;
  shelf: Shelf;
  /** Of each of its things, in millimetres. */
  size: Size;
  /** Whether it is one thing, whatever quantity the list notes: a tin of 200 buttons. */
  inOne?: boolean;
  /** Whether that is the usual size of such things, since the list notes none that can be read. */
  assumed?: boolean;
  /** Of all things of the row, one on the other, each print in its sleeve; in millimetres. */
  thickness: number;
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
}

const alike = new Map<string, Alike>();

/** How a row of the list lies on a shelf, from its kind, quantity, size and condition. */
export function pieceOf(thing: Thing): Piece {
  const { title, kind = '', size = '', condition = '', quantity, quantityUnread, sheets = 0 } = thing;
  const known = thing.kind === undefined ? undefined : usualOf(thing.kind);
  const told = formByTitle(title, known?.usual.form) ?? (isOpen(known) ? thingInTitle(title) : undefined);
  const several = quantity !== undefined && quantity > 1;
  // Many rows of a list have the same cells; what these come to is worked out once.
  const counts = `${several}\0${sheets}\0${quantityUnread ?? ''}`;
  const key = `${kind}\0${size}\0${condition}\0${told?.word ?? ''}\0${counts}`;
  let found = alike.get(key);
  if (found === undefined) {
    found = measure(thing, several, known, told);
    alike.set(key, found);
  }
  const count = told?.inOne ? 1 : (quantity ?? found.uncounted);
  return {
    thing,
    form: found.form,
    shelf: found.shelf,
    size: found.size,
    assumed: found.assumed ?? false,
    inOne: told?.inOne ?? false,
    thickness: (found.bundle ?? found.each * count) + found.sleeve * count,
  };
}

function measure(
  cells: Cells,
  several: boolean,
  known: UsualKind | undefined,
  told: Told | undefined,
): Alike {
  const { quantityUnread, sheets } = cells;
  const reading = sizeReading(cells);
  const read = reading?.kind === 'size' ? reading : undefined;
  const { form, as } = formOf(cells, several, known, read, told);
  const usual = usualAs(form, known?.usual ?? UNKNOWN_KIND, as);
  const size = read?.size ?? usual.size;
  const each = thicknessOfOne(size, usual, cells.size, read);
  const sleeve = sleeveOf(form, size, each);
  // Sheets that nobody counted are some; of anything else, each is a row of its own in most lists.
  const some = quantityUnread ? LEAVES.has(form) : known?.plural === true && form === 'sheet';
  const whole = several && LEAVES.has(form) && (size.thick ?? 0) > 5 * usual.each ? size.thick : undefined;
  const ofSheets =
    whole === undefined && sheets !== undefined ? thicknessOfSheets(sheets, form, usual, size) : undefined;
  const bundle = whole ?? ofSheets;
  const uncounted = some && bundle === undefined ? SOME : 1;
  const { shelf } = usual;
  const assumed = read === undefined;
  return { form, shelf, size, assumed, each, sleeve, uncounted, ...(bundle !== undefined && { bundle }) };
}

/** So many there are taken to be where nobody counted them. */
export const SOME = 10;
/** What lies leaf on leaf, so that a third measure far above that of one is that of the bundle. */
export const LEAVES: ReadonlySet<Form> = new Set(['sheet', 'photograph', 'mounted', 'negative']);
