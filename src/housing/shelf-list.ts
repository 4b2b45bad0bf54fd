import { sayContainer } from '../arrange/outline.ts';
import type { Component } from '../catalogue/component.ts';
import type { ShelfBox } from './placed.ts';
import { filledBoxes } from './shelve.ts';

/**
 * What lies in which box, in the order of the shelf, as lines of plain text: the other way round from the outline,
 * with what lies apart from its folder pointing back to it.
 */
export function* shelfList(collection: Component, boxes: readonly ShelfBox[]): Generator<string> {
  const content = contentOf(collection);
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

/** Lines for what lies in each box, under the number of the box. */
function contentOf(collection: Component): Map<string, string[]> {
  const lines = new Map<string, string[]>();
  const visit = ({
    referenceCode,
    title,
    dates,
    containers,
    physicalLocation,
    children,
  }: Component): void => {
    const what = `${referenceCode}  ${[title, ...dates.map(({ expression }) => expression)].join(', ')}`;
    const said = physicalLocation === undefined ? what : `${what}. ${physicalLocation}`;
    for (const box of containers.filter(({ type }) => type !== 'folder')) {
      const folder = containers.find(({ type, parent }) => type === 'folder' && parent === box.id);
      const line = `${folder === undefined ? 'apart' : sayContainer(folder)}  ${said}`;
      const known = lines.get(box.number);
      if (known === undefined) lines.set(box.number, [line]);
      else known.push(line);
    }
    children.forEach(visit);
  };
  visit(collection);
  return lines;
}
