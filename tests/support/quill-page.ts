import { arrange } from '../../src/arrange/index.ts';
import { type Component, component } from '../../src/catalogue/component.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson, findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { type HtmlOptions, html } from '../../src/export/html/index.ts';

/** The finding aid of the example, as a reader of `finding-aid.json` gets it. */
export async function quillFerry(): Promise<FindingAid> {
  const aid = arrange(await loadCatalogue('examples/quill-ferry'), '2026-09-20');
  return findingAidFromJson([...findingAidToJson(aid)].join(''));
}

export const pageOf = (aid: FindingAid, options?: HtmlOptions): string => [...html(aid, options)].join('');

/** A unit and every unit below it. */
export function* everyComponent(unit: Component): Generator<Component> {
  yield unit;
  for (const child of unit.children) yield* everyComponent(child);
}

/** One pixel of WebP, made by hand: enough for a picture. */
export const PIXEL = 'data:image/webp;base64,UklGRiQAAABXRUJQVlA4IBgAAAAwAQCdASoBAAEAAgA0JaQAA3AA/vuUAAA=';

/** A thumbnail for every copy of the finding aid. */
export function thumbnailsFor({ collection }: FindingAid): NonNullable<HtmlOptions['thumbnails']> {
  const files = [...everyComponent(collection)].flatMap(({ digitalCopies }) =>
    digitalCopies.map(({ file }) => file),
  );
  return new Map(files.map((file) => [file, { source: PIXEL, width: 40, height: 30 }]));
}

/** The structured data of a page, as a machine finds it. */
export function jsonLdOf(page: string): unknown {
  const text = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(page)?.[1];
  return JSON.parse(text ?? '');
}

/** A finding aid with one thing in place of everything below its collection. */
export const withThing = (aid: FindingAid, over: Record<string, unknown>): FindingAid => ({
  ...aid,
  collection: {
    ...aid.collection,
    children: [component.parse({ id: 'QF-1', level: 'item', title: 'x', ...over })],
  },
});
