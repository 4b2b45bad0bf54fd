import { arrangement } from '../../src/arrange/index.ts';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import type { Finding } from '../../src/catalogue/finding.ts';
import { type Settings, settings } from '../../src/catalogue/settings.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { readDate } from '../../src/dates/index.ts';
import { review } from '../../src/review/index.ts';

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

/** Everything that is said of a list; `over` is as `collection.yaml` would say it, `before` was found in reading it. */
export function reviewOf(
  over: Record<string, unknown>,
  things: readonly Thing[],
  before: readonly Finding[] = [],
): Finding[] {
  const catalogue = someCatalogue(over, things, before);
  return review(catalogue, arrangement(catalogue, '2026-01-01'), undefined, '2026-01-01').findings;
}

/** A catalogue as loaded from a folder in which nothing is settled. */
export function someCatalogue(
  over: Record<string, unknown>,
  things: readonly Thing[],
  findings: readonly Finding[] = [],
): Catalogue {
  const list = { list: new Uint8Array(), listFile: 'list.csv', sheets: [] };
  return { folder: '.', settings: someSettings(over), things, findings, ...list, settled: [] };
}
