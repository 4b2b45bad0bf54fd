import type { Kept } from '../../catalogue/kept.ts';
import { foundIn } from '../../export/ead/as-found.ts';
import { elementsOf, type Found, isElement } from '../../intake/ead/found.ts';

/** What was kept as found, as one tree; several elements may have stood before a unit. */
const trees = ({ xml, before = '' }: Kept): Found => foundIn(`<kept>${before}${xml}</kept>`, 'a unit');

function* everyElement(element: Found): Generator<Found> {
  yield element;
  for (const child of elementsOf(element)) yield* everyElement(child);
}

/** The ids in a piece of markup. */
export const idsIn = (xml: string): string[] =>
  [...everyElement(foundIn(`<kept>${xml}</kept>`, 'a unit'))].flatMap(({ attributes }) =>
    ['id', 'xml:id'].flatMap((name) => attributes[name] ?? []),
  );

/** Whether an attribute of it names one of these ids, as references do: `target`, `parent`, `linkend`, or `#id`. */
export function pointsTo(kept: Kept, ids: ReadonlySet<string>): boolean {
  for (const { attributes } of everyElement(trees(kept)))
    for (const value of Object.values(attributes))
      if (value.split(/\s+/).some((one) => ids.has(one.replace(/^.*#/, '')))) return true;
  return false;
}

/** Everything that somebody could read in it: its text, with markup within words and between them, and its attributes. */
export function textsInKept(kept: Kept): string[] {
  const root = trees(kept);
  const attributes = [...everyElement(root)].flatMap((element) => Object.values(element.attributes));
  return [textOf(root, ''), textOf(root, ' '), ...attributes];
}

const textOf = (element: Found, between: string): string =>
  element.children.map((child) => (isElement(child) ? textOf(child, between) : child)).join(between);
