import { smallest } from './choices.ts';
import type { Usual } from './forms.ts';
import type { Form, Size } from './model.ts';
import type { SizeReading } from './size-checked.ts';
import { SLEEVES } from './sleeves.ts';

type SizeRead = Extract<SizeReading, { kind: 'size' }>;

/** What is usually flatter than this is no higher for being wide: coins, medals. From memory. */
const FLAT = 0.4;
const SOLID = /\b(?:across|diameter|diam|dia|round|tall|high)\b/i;

/** Thickness of one, in millimetres. */
export function thicknessOfOne(
  size: Size,
  usual: Usual,
  written: string | undefined,
  read: SizeRead | undefined,
): number {
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
export function sleeveOf(form: Form, size: Size, each: number): number {
  if (form !== 'photograph' && form !== 'mounted') return 0;
  return PRINT_SLEEVES.find((sleeve) => smallest([sleeve], size, each + sleeve.wall))?.wall ?? 0;
}

/** A sheet of 80 g/m² is 0.1 mm thick; a volume has two boards of 2 mm besides. Arithmetic, and from memory. */
const SHEET = 0.1;
const BOARDS = 4;

/** Thickness of so many sheets, in millimetres; undefined where the thing is not made of sheets or its thickness is known. */
export function thicknessOfSheets(sheets: number, form: Form, usual: Usual, size: Size): number | undefined {
  if (size.thick !== undefined) return undefined;
  if (form === 'sheet') return sheets * (usual.sheet ?? SHEET);
  return form === 'bound'
    ? Math.max(sheets * SHEET + BOARDS, thicknessOfOne(size, usual, undefined, undefined))
    : undefined;
}
