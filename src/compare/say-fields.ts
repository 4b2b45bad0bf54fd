import { excerpts } from './excerpt.ts';
import type { FieldChange, ValueChange } from './model.ts';
import { sayBoth, sayValue } from './say-value.ts';

/** In UTF-16 units: what is longer stands on two lines, one above the other. */
const SHORT = 70;

/** Fields that changed, as lines: `Title: Letter from Ada → Letter from Ada to Tom`. */
export function* sayFields(fields: readonly FieldChange[]): Generator<string> {
  for (const { field, name, values } of fields) {
    const [first, ...more] = values.map((value) => sayChange(field, value));
    if (first === undefined) continue;
    if (more.length === 0 && first.length === 1) yield `${name}: ${first[0]}`;
    else {
      yield `${name}:`;
      for (const line of [first, ...more].flat()) yield `  ${line}`;
    }
  }
}

function sayChange(field: string, change: ValueChange): string[] {
  if (change.reordered) return [`now in this order: ${sayValue(field, change.now)}`];
  if (!('was' in change)) return [`added: ${onOneLine(sayValue(field, change.now))}`];
  if (!('now' in change)) return [`removed: ${onOneLine(sayValue(field, change.was))}`];
  const [was, now] = excerpts(...sayBoth(field, change.was, change.now));
  return was.length + now.length <= SHORT ? [`${was} → ${now}`] : [`was  ${was}`, `now  ${now}`];
}

const onOneLine = (text: string) => text.replace(/\s+/g, ' ').trim();
