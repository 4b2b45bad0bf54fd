import type { Arrangement } from '../../arrange/index.ts';
import { arrangement } from '../../arrange/index.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Component, Container } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { unitsFrom } from '../../catalogue/units.ts';
import type { NotBoxed } from '../../review/index.ts';
import { type InventoryRow, inventory } from '../inventory.ts';

/**
 * What is handed over by a finding aid that was taken in, and what a list adds to it. Of the finding aid there is a row
 * for each lowest unit of which it names the container; how many things are in it, nobody has counted.
 * @param notBoxed what the list adds, by reference code
 * @param today YYYY-MM-DD
 */
export function inventoryWith(
  base: FindingAid,
  arranged: Arrangement,
  catalogue: Pick<Catalogue, 'settings' | 'things' | 'settled'>,
  notBoxed: ReadonlyMap<string, NotBoxed>,
  today: string,
): InventoryRow[] {
  return [...ofUnits(base.collection), ...ofList(base, arranged, catalogue, notBoxed, today)];
}

function ofUnits(collection: Component): InventoryRow[] {
  const rows: InventoryRow[] = [];
  const visit = (unit: Component, code: string, above: readonly Container[]): void => {
    const here = unit.containers.length > 0 ? unit.containers : above;
    const own = unit.referenceCode ?? code;
    const hasMore = unit.children.some((child) =>
      [...unitsFrom(child)].some(({ containers }) => containers.length > 0),
    );
    const isRow = unit.children.length === 0 || (unit.containers.length > 0 && !hasMore);
    if (isRow) rows.push(rowOf(unit, own, here));
    else for (const child of unit.children) visit(child, own, here);
  };
  visit(collection, '', []);
  return rows;
}

function rowOf({ title, dates }: Component, code: string, containers: readonly Container[]): InventoryRow {
  const folder = containers.find(({ type }) => isFolder(type));
  const box = containers.find(({ type }) => !isFolder(type));
  return {
    ...(box !== undefined && { box: { type: box.type.toLowerCase(), number: box.number } }),
    ...(folder !== undefined && { folder: folder.number }),
    code,
    title,
    dates: dates.map(({ expression }) => expression).join(', '),
    approximate: false,
    isUnit: true,
  };
}

const isFolder = (type: string) => /^folder/i.test(type);

/** What the list adds, in boxes of its own; its codes only where the finding aid has them too. */
function ofList(
  base: FindingAid,
  arranged: Arrangement,
  { settings, things, settled }: Pick<Catalogue, 'settings' | 'things' | 'settled'>,
  notBoxed: ReadonlyMap<string, NotBoxed>,
  today: string,
): InventoryRow[] {
  if (things.length === 0) return [];
  // As it goes into the finding aid: by series.
  const bySeries = { ...settings, sort: { ...settings.sort, groups: ['series' as const] } };
  const { aid } = arrangement({ settings: bySeries, things, settled }, today);
  const own = new Set([...unitsFrom(base.collection)].map(({ referenceCode }) => referenceCode));
  const added = [...unitsFrom(arranged.aid.collection)].map(({ referenceCode }) => referenceCode);
  const known = new Set(added.filter((code) => !own.has(code)));
  return inventory({ ...arranged, aid }, settings, notBoxed).map((row) =>
    known.has(row.code) ? row : { ...row, code: '' },
  );
}
