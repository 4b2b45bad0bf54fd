import { addTo } from '../catalogue/add-to.ts';
import type { Component, Container } from '../catalogue/component.ts';
import { numbersInWords, sayContainer } from '../catalogue/say-container.ts';
import { sayExtent } from '../housing/extent.ts';

/**
 * A finding aid as a readable outline, a line for each unit: code, title, dates, where it lies, how much it is.
 * @param deepest the lowest level shown; with `file` the things in the folders are counted but not listed
 */
export function* outline(
  component: Component,
  deepest: 'file' | 'item' = 'file',
  depth = 0,
): Generator<string> {
  const { referenceCode, level, title, dates, containers, extents, children } = component;
  const heading = `${referenceCode ?? ''}  ${[title, ...dates.map(({ expression }) => expression)].join(', ')}`;
  const counts = extents.filter(({ type }) => type === 'materialtype');
  const shown = [
    ...counts.slice(0, 3).map((extent) => sayExtent([extent])),
    ...(counts.length > 3 ? ['and more'] : []),
    // It stands in brackets here, and brackets within brackets are hard to read.
    sayExtent(
      extents.filter(({ type, coverage }) => type !== 'materialtype' && coverage === 'whole'),
    ).replace(/ \((.*)\)$/, '; $1'),
  ];
  // Where it lies says already how many folders it takes.
  const counted = (level === 'file' ? shown.slice(0, -1) : shown).filter((count) => count !== '').join(', ');
  const inFolder = level !== 'file' || containers.length > 0;
  const { where, end } = inFolder ? sayShelf(containers) : sayBoxes(children);
  const details = [where, counted].filter((detail) => detail !== '').join(end);
  yield `${'  '.repeat(depth)}${heading}${details === '' ? '' : `  (${details})`}`;
  if (deepest === level) return;
  for (const child of children) yield* outline(child, deepest, depth + 1);
}

/** Where a unit lies, and what ends that: folder 4, box 3; or box 8, folders 41-43; box 9, folders 44-50. */
function sayShelf(containers: readonly Container[]): { where: string; end: string } {
  const ids = new Set(containers.flatMap(({ id }) => id ?? []));
  const isOuter = ({ parent }: Container) => parent === undefined || !ids.has(parent);
  const outer = containers.filter(isOuter);
  if (outer.length <= 1) {
    return { where: containers.toReversed().map(sayContainer).join(', '), end: ', ' };
  }
  const boxes = outer.map((box) => {
    const inner = containers.filter((one) => !isOuter(one) && one.parent === box.id);
    return [box, ...inner].map(sayContainer).join(', ');
  });
  return { where: boxes.join('; '), end: '; ' };
}

/** The boxes of things of which none lies in a folder: boxes 23-28, package 41. */
function sayBoxes(things: readonly Component[]): { where: string; end: string } {
  const types = new Map<string, string[]>();
  for (const { type, number } of things.flatMap(({ containers }) => containers)) addTo(types, type, number);
  const boxes = [...types].map(([type, numbers]) => {
    const many = `${type}${type.endsWith('x') ? 'es' : 's'}`;
    return `${new Set(numbers).size > 1 ? many : type} ${numbersInWords(numbers)}`;
  });
  const where = boxes.join(', ');
  return { where, end: where.includes(',') ? '; ' : ', ' };
}
