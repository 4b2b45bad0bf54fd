import type { ValueChange } from './model.ts';
import { keyOfValue, same } from './same.ts';

/**
 * By what an entry of a list is the one it was before: tried from left to right. Where the list has a dash at its end,
 * the last of the old and the last of the new are one entry as well; where not, one went and another came.
 */
const KNOWN_BY: Readonly<Record<string, readonly string[]>> = {
  otherIdentifiers: ['type', '-'],
  dates: ['type', '-'],
  extents: ['unit', 'type', '-'],
  creators: ['name'],
  people: ['name'],
  languages: ['code'],
  containers: ['type', '-'],
  digitalCopies: ['file', 'sha256'],
  generalNotes: ['head', '-'],
  accessPoints: ['term'],
  nameParts: ['type'],
  places: ['name'],
  relations: ['name'],
  conventions: ['citation', 'abbreviation'],
  rights: ['citation', '-'],
  history: ['date', '-'],
};

/** How a list differs from another: entries that came, went or changed; or the same in another order. */
export function listChanges(field: string, was: readonly unknown[], now: readonly unknown[]): ValueChange[] {
  const gone = without(was, now);
  const come = without(now, was);
  if (gone.length === 0 && come.length === 0) return [{ was, now, reordered: true }];
  const changes: ValueChange[] = [];
  const pair = (old: unknown, fresh: unknown) => {
    changes.push({ was: old, now: fresh });
    gone.splice(gone.indexOf(old), 1);
    come.splice(come.indexOf(fresh), 1);
  };
  for (const key of KNOWN_BY[field] ?? []) {
    if (key === '-') {
      if (gone.length === 1 && come.length === 1) pair(gone[0], come[0]);
      continue;
    }
    for (const old of [...gone]) {
      const alike = (entry: unknown) => same(valueAt(entry, key), valueAt(old, key));
      const [fresh, ...others] = come.filter(alike);
      if (fresh !== undefined && others.length === 0 && gone.filter(alike).length === 1) pair(old, fresh);
    }
  }
  return [...changes, ...gone.map((old) => ({ was: old })), ...come.map((fresh) => ({ now: fresh }))];
}

const valueAt = (entry: unknown, key: string): unknown => (entry as Readonly<Record<string, unknown>>)[key];

/** What a list holds beyond another, in its own order; of what stands there twice, the later ones. */
function without(list: readonly unknown[], other: readonly unknown[]): unknown[] {
  const counts = new Map<string, number>();
  for (const key of other.map(keyOfValue)) counts.set(key, (counts.get(key) ?? 0) + 1);
  return list.filter((entry) => {
    const key = keyOfValue(entry);
    const left = counts.get(key) ?? 0;
    counts.set(key, left - 1);
    return left <= 0;
  });
}
