import type { Thing } from '../catalogue/thing.ts';
import { formByWords } from './form-words.ts';
import { BY_FORM, FORMS_BY_KIND, UNKNOWN_KIND, type Usual } from './forms.ts';
import type { Form } from './model.ts';
import type { SizeReading } from './size-checked.ts';
import type { Told } from './title-form.ts';
import type { UsualKind } from './usual-form.ts';

/** The columns of a row that say how a thing must be kept. */
export type Cells = Pick<Thing, 'kind' | 'size' | 'condition' | 'sheets' | 'quantityUnread'>;

/** Photographs in all their forms: a size that only one of them has says more than the kind. */
const PICTURES: ReadonlySet<Form> = new Set(['photograph', 'mounted', 'negative', 'slide', 'glass']);
const CARRIERS: ReadonlySet<Form> = new Set(['disc', 'film', 'tape', 'digital']);
/** Thicker than this, what nobody named is no paper. From memory. */
const NO_PAPER = 20;

type SizeRead = Extract<SizeReading, { kind: 'size' }>;

/**
 * The form of the kind, unless the size, or a safe word in one of the cells, says another; and what such a thing usually
 * is, where those words say more than the form.
 * @param several whether the row stands for more than one
 * @param told what the title tells for certain
 */
export function formOf(
  cells: Cells,
  several: boolean,
  known: UsualKind | undefined,
  read: SizeRead | undefined,
  told: Told | undefined,
): { form: Form; as?: Usual } {
  let as: Usual | undefined;
  let form = known?.usual.form ?? UNKNOWN_KIND.form;
  const bySize = read?.form;
  const alike = [PICTURES, CARRIERS].some((group) => bySize && group.has(bySize) && group.has(form));
  if (bySize !== undefined && (known === undefined || alike)) form = bySize;
  else if (known === undefined && !several && (read?.size.thick ?? 0) >= NO_PAPER) form = 'object';
  for (const column of ['kind', 'size', 'condition'] as const) {
    const text = cells[column]?.toLowerCase();
    const found = text === undefined ? undefined : formByWords(text, column, form);
    if (found === undefined) continue;
    form = found.form;
    as = FORMS_BY_KIND.get(found.as ?? '');
  }
  if (told !== undefined && mayBe(told, form, known)) {
    form = told.form;
    as = told.usual ?? as;
  }
  return as === undefined ? { form } : { form, as };
}

/** What stands in a title changes only what it can be true of: not of a negative that shows a framed picture. */
function mayBe(told: Told, form: Form, known: UsualKind | undefined): boolean {
  if (known === undefined || form === 'photograph') return true;
  if (told.form === 'framed') return FRAMEABLE.has(form);
  if (form === 'glass') return told.form === 'glass';
  return isOpen(known) && told.usual !== undefined;
}
const FRAMEABLE: ReadonlySet<Form> = new Set(['sheet', 'mounted', 'textile']);

/** Whether the kind leaves open what the thing is: blank, not known, or no more than "object". */
export const isOpen = (known: UsualKind | undefined): boolean =>
  known === undefined || known.usual === BY_FORM.object;

/** What a kind usually is, once it has turned out to be of another form. */
export function usualAs(form: Form, usual: Usual, as?: Usual): Usual {
  if (as !== undefined) return as;
  // A carrier of files takes room; the files themselves do not.
  if (form === 'digital' && usual.form !== 'digital') return FORMS_BY_KIND.get('disk') ?? usual;
  if (form === usual.form || form === 'sheet' || form === 'textile' || form === 'digital') return usual;
  if (form === 'rolled') return { ...usual, form, shelf: 'rolls' };
  if (form !== 'framed') return BY_FORM[form];
  const { long, short } = BY_FORM.framed.size;
  const size = { long: Math.max(long, usual.size.long), short: Math.max(short, usual.size.short) };
  return { ...BY_FORM.framed, size };
}
