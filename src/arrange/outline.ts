import type { Component, Container } from '../catalogue/component.ts';
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
    sayExtent(extents.filter(({ type, coverage }) => type !== 'materialtype' && coverage === 'whole')),
  ];
  const details = [
    ...containers.toReversed().map(sayContainer),
    // Where it lies says already how many folders it takes.
    ...(level === 'file' ? shown.slice(0, -1) : shown),
  ].filter((detail) => detail !== '');
  yield `${'  '.repeat(depth)}${heading}${details.length === 0 ? '' : `  (${details.join(', ')})`}`;
  if (deepest === level) return;
  for (const child of children) yield* outline(child, deepest, depth + 1);
}

/** A container in words: box 3, folders 4-6. */
export const sayContainer = ({ type, number }: Container): string =>
  `${type}${/^\d+-\d+$/.test(number) ? 's' : ''} ${number}`;
