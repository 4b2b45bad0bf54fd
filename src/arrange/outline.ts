import type { Component } from '../catalogue/component.ts';

/**
 * A finding aid as a readable outline, a line for each unit: code, title, dates, where it lies, how much it is.
 * @param deepest the lowest level shown; with `file` the things in the folders are counted but not listed
 */
export function* outline(
  component: Component,
  deepest: 'file' | 'item' = 'file',
  depth = 0,
): Generator<string> {
  const { referenceCode, title, dates, containers, extents, children } = component;
  const heading = `${referenceCode ?? ''}  ${[title, ...dates.map(({ expression }) => expression)].join(', ')}`;
  const details = [
    ...[...containers].reverse().map(({ type, number }) => `${type} ${number}`),
    ...extents.slice(0, 3).map(sayExtent),
    ...(extents.length > 3 ? ['and more'] : []),
  ];
  yield `${'  '.repeat(depth)}${heading}${details.length === 0 ? '' : `  (${details.join(', ')})`}`;
  if (deepest === 'file' && containers.some(({ type }) => type === 'folder')) return;
  for (const child of children) yield* outline(child, deepest, depth + 1);
}

const sayExtent = ({ approximate, quantity, unit }: Component['extents'][number]) =>
  `${approximate ? 'about ' : ''}${quantity} ${unit}`;
