import { type Settings, settings } from '../../src/catalogue/settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { readDate } from '../../src/dates/index.ts';

/** Settings of a small catalogue; `over` is as `collection.yaml` would say it. */
export function someSettings(over: Record<string, unknown> = {}): Settings {
  return settings.parse({
    title: 'Quill family papers',
    prefix: 'QF',
    repository: { name: 'Quill family' },
    ...over,
  });
}

/** A date cell, read. */
export function dated(written: string): NonNullable<Thing['date']> {
  return { written, reading: readDate(written) };
}

/** A thing of the list; what is not given is blank. */
export function someThing(over: Partial<Thing> & { row: number }): Thing {
  return {
    title: `Thing of row ${over.row}`,
    people: [],
    creators: [],
    places: [],
    copies: [],
    languages: [],
    extra: [],
    ...over,
  };
}
