import type { Component, Container, Extent } from '../catalogue/component.ts';
import { NOWHERE, numbersIn, type Place, placeOf } from '../catalogue/containers.ts';
import { type Count, extentsOf, THINGS, unitOf } from '../kinds/extents.ts';

/** The things below a unit; none, where everything went. */
export const leaves = (unit: Component): Component[] =>
  unit.children.flatMap((child) => (child.children.length === 0 ? [child] : leaves(child)));

/** The counts of the things below; undefined where some bundle is not counted, so that no sum can be right. */
function countsOf(unit: Component): Count[] | undefined {
  const counts = new Map<string, Count>();
  for (const leaf of leaves(unit)) {
    const stated = leaf.extents.filter(({ type }) => type === 'materialtype');
    if (stated.length === 0 && leaf.level !== 'item') return undefined;
    for (const count of stated.length === 0 ? [ONE_ITEM] : stated.map(countOf)) {
      const sum = counts.get(count.unit.key);
      if (sum === undefined) counts.set(count.unit.key, { ...count });
      else {
        const { together } = unitOf(count.unit.one);
        if (together !== undefined && sum.unit.one !== count.unit.one) sum.unit = together;
        sum.number += count.number;
        sum.approximate ||= count.approximate;
      }
    }
  }
  return [...counts.values()].sort((one, other) => other.number - one.number);
}

const ONE_ITEM: Count = { unit: THINGS, number: 1, approximate: false };

function countOf({ unit, quantity, approximate = false }: Extent): Count {
  return { unit: unitOf(unit).unit, number: quantity, approximate };
}

/** Counted things are counted again, and so are folders, boxes and packages; room on the shelf cannot be. */
export function extentsLeft(left: Component, whole: Component): Extent[] {
  const things = whole.extents.filter(({ type }) => type === 'materialtype');
  const counts = things.length === 0 ? undefined : countsOf(left);
  const isOneSum = things.length === 1 && things.some(({ unit }) => /^items?$/.test(unit));
  const total = (counts ?? []).reduce(
    (sum, { number, approximate }) => ({
      number: sum.number + number,
      approximate: sum.approximate || approximate,
    }),
    { number: 0, approximate: false },
  );
  // An extent is never nought: where nothing is left, nothing is stated.
  const counted =
    counts === undefined || counts.length === 0
      ? []
      : extentsOf(isOneSum ? [{ unit: THINGS, ...total }] : counts);
  const carriers = whole.extents.flatMap((extent) => {
    const type = /^(folder|box|package)(?:e?s)?$/.exec(extent.unit)?.[1];
    if (extent.type !== 'carrier' || type === undefined) return [];
    const quantity = carriersOf(left, type);
    const unit = quantity === 1 ? type : type === 'box' ? 'boxes' : `${type}s`;
    return quantity === 0 ? [] : [{ ...extent, quantity, unit }];
  });
  return [...counted, ...carriers];
}

/** How many folders, boxes or packages the containers below name; folders 4-6 are three. */
function carriersOf(unit: Component, type: string): number {
  const numbers = new Set<string>();
  const note = ({ containers, children }: Component, above: Place) => {
    const place = placeOf(containers, above);
    if (containers.length > 0) {
      // Folder 1 of box 1 and that of box 2 are two.
      const found =
        type === 'folder'
          ? place.folders.map(({ folder, boxes }) => ({ of: folder, within: boxes.map(named).join(' ') }))
          : containers.filter((one) => one.type.toLowerCase() === type).map((of) => ({ of, within: '' }));
      for (const { of, within } of found)
        for (const number of numbersIn(of.number))
          numbers.add(`${of.type} ${number} ${within}`.toLowerCase());
    }
    for (const child of children) note(child, place);
  };
  note(unit, NOWHERE);
  return numbers.size;
}

const named = ({ type, number }: Container) => `${type} ${number}`;
