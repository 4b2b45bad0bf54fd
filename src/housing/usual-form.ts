import { fold } from '../catalogue/fold.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { headWords } from '../kinds/head-words.ts';
import { heldIn } from '../kinds/held-in.ts';
import { readWholeKind } from '../kinds/kind-words.ts';
import { misleads } from '../kinds/misleading-heads.ts';
import { BY_FORM, FORMS_BY_KIND, type Usual } from './forms.ts';
import type { Form } from './model.ts';
import { lookUpObject, OBJECTS_BY_WORD } from './object-words.ts';
import { readSizeOf } from './read-size.ts';
import type { SizeReading } from './size-checked.ts';
import { containerIn } from './vessels.ts';

/** What things of a kind usually are. */
export interface UsualKind {
  usual: Usual;
  /** Whether the list uses a word for several ("letters"). */
  plural: boolean;
}

const HELD = heldIn('stack tin roll strip sheet wallet bag sleeve');

/** Forms that books and cards have, whatever stands in them. */
const AS_WRITTEN: ReadonlySet<Form> = new Set(['bound', 'sheet']);

/** What the words of the kind column usually are, in the trade's experience; undefined where they are not known. */
export const usualOf: (kind: string) => UsualKind | undefined = once((kind) => {
  const whole = lookUp(fold(kind));
  if (whole !== undefined) return whole;
  const contained = containerIn(fold(kind));
  if (contained !== undefined && usualOf(contained.content)?.usual.form === 'object')
    return { usual: contained.container, plural: false };
  const words = headWords(fold(kind).replace(HELD, '$2')).slice(-4);
  for (const from of words.keys()) {
    const found = lookUp(words.slice(from).join(' '));
    if (found === undefined) continue;
    // A school record is no disc; a stamp album is bound, whatever it holds.
    const isOther = from === words.length - 1 && misleads(words) && !AS_WRITTEN.has(found.usual.form);
    return isOther ? undefined : found;
  }
  return ofNamedSize(kind);
});

/** "stereograph" is no kind of the table, but the name of a size that only mounted photographs have. */
function ofNamedSize(kind: string): UsualKind | undefined {
  const reading = readSizeOf(kind, undefined);
  if (reading.kind !== 'size' || reading.form === undefined) return undefined;
  const { size, form } = reading;
  const usual = Object.values(BY_FORM).find((row) => row.form === form);
  if (usual === undefined) return undefined;
  const named = { ...usual, size, each: size.thick ?? usual.each };
  return { usual: named, plural: false };
}

function lookUp(word: string): UsualKind | undefined {
  const reading = readWholeKind(word);
  const object = reading?.thing || !reading ? lookUpObject(OBJECTS_BY_WORD, word) : undefined;
  if (object !== undefined) return object;
  const plural = reading?.plural ?? false;
  // "ambrotypes" say more than the kind that they belong to.
  const singular = word.endsWith('s') ? word.slice(0, -1) : word;
  for (const own of [word, singular, fold(reading?.kind.one ?? '')]) {
    const usual = FORMS_BY_KIND.get(own);
    if (usual !== undefined) return { usual, plural: plural || (own === singular && own !== word) };
  }
  return undefined;
}

/** The size column of a row, read as its kind makes likely; undefined where it is blank. */
export function sizeReading({ kind, size }: Pick<Thing, 'kind' | 'size'>): SizeReading | undefined {
  if (size === undefined) return undefined;
  return readSizeOf(size, kind === undefined ? undefined : usualOf(kind)?.usual.form);
}
