import type { Kept } from '../catalogue/kept.ts';
import { fieldsOf } from '../catalogue/schema-at.ts';
import { listChanges } from './list-changes.ts';
import type { FieldChange } from './model.ts';
import { same } from './same.ts';

type Schema = Parameters<typeof fieldsOf>[0];

/** What was kept as found says again what the fields say, in markup; it is of interest only where they are silent. */
const KEPT = 'kept';

/**
 * What two of a kind say differently, field by field in the order of the model.
 * @param names what the fields are called; a field that is not among them is not looked at
 */
export function fieldChanges(
  schema: Schema,
  was: object,
  now: object,
  names: Readonly<Record<string, string>>,
): FieldChange[] {
  const changes: FieldChange[] = [];
  for (const [field] of fieldsOf(schema)) {
    const name = names[field];
    if (name === undefined || (field === KEPT && (changes.length > 0 || !bothKept(was, now)))) continue;
    const before = was[field as never] as unknown;
    const after = now[field as never] as unknown;
    if (same(before, after) || (field === KEPT && isLaidOutOtherwise(before as Kept, after as Kept)))
      continue;
    changes.push({ field, name, values: valueChanges(field, before, after) });
  }
  return changes;
}

/** Whether both sides have kept something, as found in the same version of EAD. */
function bothKept(was: { kept?: Kept | undefined }, now: { kept?: Kept | undefined }): boolean {
  return was.kept !== undefined && was.kept.format === now.kept?.format;
}

/** Whether only blanks between tags, or how many there are, tell them apart. */
function isLaidOutOtherwise(was: Kept, now: Kept): boolean {
  const plain = ({ before = '', xml }: Kept) =>
    `${before}${xml}`.replace(/\s+/g, ' ').replaceAll('> <', '><');
  return plain(was) === plain(now);
}

function valueChanges(field: string, was: unknown, now: unknown): FieldChange['values'] {
  if (Array.isArray(was) || Array.isArray(now))
    return listChanges(field, (was ?? []) as unknown[], (now ?? []) as unknown[]);
  return [{ ...(was !== undefined && { was }), ...(now !== undefined && { now }) }];
}
