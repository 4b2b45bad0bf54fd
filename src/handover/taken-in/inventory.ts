import type { Arrangement } from '../../arrange/index.ts';
import type { Component } from '../../catalogue/component.ts';
import { NOWHERE, numbersIn, type Place, placeOf } from '../../catalogue/containers.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { isRestricted } from '../../catalogue/restricted.ts';
import { numbersInWords } from '../../catalogue/say-container.ts';
import type { Settings } from '../../catalogue/settings.ts';
import { unitsFrom } from '../../catalogue/units.ts';
import type { NotBoxed } from '../../review/index.ts';
import { type InventoryRow, inventory } from '../inventory.ts';

/**
 * What is handed over by a finding aid that was taken in, and what a list adds to it. Of the finding aid there is a row
 * for each lowest unit of which it names the container; how many things are in it, nobody has counted.
 * @param notBoxed what the list adds, by reference code
 */
export function inventoryWith(
  base: FindingAid,
  arranged: Arrangement,
  settings: Settings,
  notBoxed: ReadonlyMap<string, NotBoxed>,
): InventoryRow[] {
  return [...ofUnits(base.collection), ...ofList(base, arranged, settings, notBoxed)];
}

function ofUnits(collection: Component): InventoryRow[] {
  const rows: InventoryRow[] = [];
  const visit = (unit: Component, code: string, above: Place, within: boolean): void => {
    const closed = within || isRestricted(unit);
    const here = placeOf(unit.containers, above);
    const own = unit.referenceCode ?? code;
    const hasMore = unit.children.some((child) =>
      [...unitsFrom(child)].some(({ containers }) => containers.length > 0),
    );
    const isRow = unit.children.length === 0 || (unit.containers.length > 0 && !hasMore);
    if (isRow) rows.push({ ...rowOf(unit, own, here), ...(closed && { caution: 'restricted' }) });
    else for (const child of unit.children) visit(child, own, here, closed);
  };
  visit(collection, '', NOWHERE, false);
  return rows;
}

function rowOf({ title, dates }: Component, code: string, { boxes, folders }: Place): InventoryRow {
  const [first] = folders;
  const [box] = first?.boxes ?? boxes;
  const within = folders.filter((one) => one.boxes[0] === box);
  const numbers = numbersInWords(within.flatMap(({ folder }) => numbersIn(folder.number)));
  return {
    ...(box !== undefined && { box: { type: box.type.toLowerCase(), number: box.number } }),
    ...(numbers !== undefined && { folder: numbers }),
    code,
    title,
    dates: dates.map(({ expression }) => expression).join(', '),
    approximate: false,
    isUnit: true,
  };
}

/** What the list adds, in boxes of its own; its codes only where the finding aid has them too. */
function ofList(
  base: FindingAid,
  arranged: Arrangement,
  settings: Settings,
  notBoxed: ReadonlyMap<string, NotBoxed>,
): InventoryRow[] {
  // By itself: in the finding aid it may stand without its codes.
  const { added: aid = arranged.aid } = arranged;
  const own = new Set([...unitsFrom(base.collection)].map(({ referenceCode }) => referenceCode));
  const added = [...unitsFrom(arranged.aid.collection)].map(({ referenceCode }) => referenceCode);
  const known = new Set(added.filter((code) => !own.has(code)));
  return inventory({ ...arranged, aid }, settings, notBoxed).map((row) =>
    known.has(row.code) ? row : { ...row, code: '' },
  );
}
