import { addTo } from '../catalogue/add-to.ts';
import type { Component } from '../catalogue/component.ts';
import { NOWHERE, type Place, placeOf } from '../catalogue/containers.ts';
import { sayContainer } from '../catalogue/say-container.ts';
import type { ShelfBox } from './placed.ts';
import { filledBoxes } from './shelve.ts';

/** What a thing has that keeps it from being boxed, by its reference code: ammunition, mould. */
type NotBoxed = ReadonlyMap<string, { has: string }>;

/** The words that stand beside such a thing. */
export const NOT_BOXED = 'not to be boxed before somebody has looked at it';

/**
 * What lies in which box, in the order of the shelf, as lines of plain text: the other way round from the outline,
 * with what lies apart from its folder pointing back to it. What is not to be boxed is named first, and again where it
 * would lie.
 */
export function* shelfList(
  collection: Component,
  boxes: readonly ShelfBox[],
  notBoxed: NotBoxed = new Map(),
): Generator<string> {
  const { lines: content, cautions } = contentOf(collection, notBoxed);
  if (cautions.size > 0) {
    yield `First, ${NOT_BOXED}:`;
    // The most urgent first, as they were given.
    for (const code of notBoxed.keys()) if (cautions.has(code)) yield `  ${cautions.get(code)}`;
    yield '';
  }
  const filled = new Map(filledBoxes(boxes).map((box) => [box.number, box]));
  for (const { number, type, kind } of boxes) {
    const box = filled.get(number);
    yield [`${type === 'box' ? 'Box' : 'Package'} ${number}`, kind?.one, box && sayFilled(box)]
      .filter((part) => part !== undefined)
      .join(', ');
    for (const line of content.get(number) ?? []) yield `  ${line}`;
  }
}

function sayFilled({ lies, box, slack, advice }: ReturnType<typeof filledBoxes>[number]): string {
  const full = `${Math.round(((box.deep - slack) / box.deep) * 100)} % full`;
  if (advice === 'spacer') return `${lies}, ${full}: fill the rest with a spacer`;
  return advice === 'lay flat' ? `${full}: lay it flat, or take a smaller box` : `${lies}, ${full}`;
}

/** Lines for what lies in each box, under the number of the box, and for what is not to lie in any. */
function contentOf(collection: Component, notBoxed: NotBoxed) {
  const lines = new Map<string, string[]>();
  const cautions = new Map<string, string>();
  const visit = (unit: Component, above: Place): void => {
    const { referenceCode, dates, containers, physicalLocation, children } = unit;
    const place = placeOf(containers, above);
    const where = place.boxes.map(({ type, number }) => `${type} ${number}`);
    const caution = notBoxed.get(referenceCode ?? '');
    const its = `${coded(unit)}${where.map((box) => `, ${box}`).join('')}`;
    if (caution !== undefined) cautions.set(referenceCode ?? '', `${its}: ${caution.has}`);
    const beside = [
      ...(caution === undefined ? [] : [`  ${NOT_BOXED}: ${caution.has}`]),
      ...children.flatMap((child) => {
        const one = child.containers.length > 0 ? undefined : notBoxed.get(child.referenceCode ?? '');
        return one === undefined ? [] : [`  ${coded(child)}, ${NOT_BOXED}: ${one.has}`];
      }),
    ];
    const what = [coded(unit), ...dates.map(({ expression }) => expression)].join(', ');
    const said = physicalLocation === undefined ? what : `${what}. ${physicalLocation}`;
    // What names no container is told of where the unit above it is.
    for (const box of containers.length === 0 ? [] : place.boxes) {
      const folder = place.folders.find(({ boxes }) => boxes.includes(box))?.folder;
      const line = `${folder === undefined ? 'apart' : sayContainer(folder)}  ${said}`;
      for (const one of [line, ...beside]) addTo(lines, box.number, one);
    }
    for (const child of children) visit(child, place);
  };
  visit(collection, NOWHERE);
  return { lines, cautions };
}

/** A title behind its reference code, which new things in a finding aid that was taken in may not have yet. */
const coded = ({ referenceCode, title }: Component): string =>
  referenceCode === undefined ? title : `${referenceCode}  ${title}`;
