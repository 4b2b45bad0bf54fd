import type { Component } from '../../catalogue/component.ts';
import type { Row } from '../crosswalk/row.ts';

/** What a step of a path finds in the objects at hand. */
type Step = (values: readonly unknown[]) => readonly unknown[];

const fieldOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : undefined;

const NONE: readonly string[] = [];
const textOnly = (value: unknown): readonly string[] => (typeof value === 'string' ? [value] : NONE);

/**
 * Reads a field of a component by its path: `component.extents[].facets[]`. Only objects with the values that the row
 * asks for are looked at.
 */
export function fieldReader({
  field,
  when,
}: Pick<Row, 'field' | 'when'>): (unit: Component) => readonly string[] {
  const [, ...keys] = field.split('.');
  const [only = ''] = keys;
  // Most fields are texts of the component itself.
  if (keys.length === 1 && !only.endsWith('[]')) return (unit) => textOnly(fieldOf(unit, only));
  const steps = keys.map((key, at): Step => {
    const isLast = at === keys.length - 1;
    const name = key.replace(/\[\]$/, '');
    const fits = (value: unknown) =>
      when === undefined || Object.entries(when).every(([key, wanted]) => fieldOf(value, key) === wanted);
    return (values) => {
      const found: unknown[] = [];
      for (const value of values) {
        if (isLast && !fits(value)) continue;
        const next = fieldOf(value, name);
        if (Array.isArray(next)) found.push(...next);
        else if (next !== undefined) found.push(next);
      }
      return found;
    };
  });
  return (unit) => {
    let values: readonly unknown[] = [unit];
    for (const step of steps) {
      values = step(values);
      if (values.length === 0) return NONE;
    }
    return values.filter((value) => typeof value === 'string');
  };
}
