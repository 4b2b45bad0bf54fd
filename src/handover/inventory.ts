import type { Arrangement } from '../arrange/index.ts';
import { placedCodes } from '../arrange/index.ts';
import type { Component } from '../catalogue/component.ts';
import { isRestricted } from '../catalogue/restricted.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { foldersOf, type HeldFolder, type ShelfUnit } from '../housing/placed.ts';
import { countOf } from '../kinds/extents.ts';
import { type NotBoxed, sayNotBoxed } from '../review/index.ts';

/** What is handed over as one piece: a folder, or a thing that lies apart. */
export interface InventoryRow {
  /** Undefined where it lies in none: a digital file, which takes no room. */
  box?: { type: string; number: string };
  /** Number of the folder, or of several: 4-6. */
  folder?: string;
  code: string;
  title: string;
  dates: string;
  /**
   * Things in it, and whether that is a guess; nought where a bundle goes on from the box before. Left out where nobody
   * has counted them.
   */
  things?: number;
  approximate: boolean;
  /** Whether it is a unit of a finding aid that was taken in, which may name no box for what lies in one. */
  isUnit?: true;
  /**
   * That it or something in it is restricted, and what keeps it from being boxed before somebody has looked: to follow the
   * title in brackets.
   */
  caution?: string;
}

/**
 * Everything that is handed over, box by box; what lies on no shelf comes last.
 * @param notBoxed by reference code
 */
export function inventory(
  { aid, groups, boxes }: Arrangement,
  settings: Settings,
  notBoxed: ReadonlyMap<string, NotBoxed>,
): InventoryRow[] {
  const codes = placedCodes(groups, settings);
  const units = unitsByCode(aid.collection);
  const row = (code: string | undefined = '', things: readonly Thing[]): InventoryRow => {
    const { title = code, dates = [] } = units.get(code) ?? {};
    const counts = things.map(countOf);
    const sum = counts.reduce((all, { number }) => all + number, 0);
    return {
      code,
      title,
      dates: dates.map(({ expression }) => expression).join(', '),
      ...((sum > 0 || things.length === 0) && { things: sum }),
      approximate: counts.some(({ approximate }) => approximate),
    };
  };
  const rowOf = (unit: ShelfUnit): InventoryRow => {
    const { folder, things } = unit;
    const lots = folder.held?.units.includes(unit) ? folder.held.units : (things[0]?.units ?? []);
    const all = things.map(({ thing }) => thing);
    const inside = lots.indexOf(unit) > 0 ? [] : all;
    const [first] = all;
    if (lots !== folder.held?.units)
      return { ...row(first && codes.things.get(first), inside), ...cautionOf(all) };
    const code = codes.folders.get(folder);
    return {
      folder: foldersOfLot(folder.held, unit),
      ...row(code, inside),
      ...cautionOf(all, units.get(code ?? '')),
    };
  };
  const cautionOf = (things: readonly Thing[], folder?: Component): Pick<InventoryRow, 'caution'> => {
    const codesOf = things.map((thing) => codes.things.get(thing) ?? '');
    const closed = codesOf.filter((code) => isRestricted(units.get(code) ?? {})).length;
    const whole = folder !== undefined && isRestricted(folder);
    const restricted =
      closed === 0 && !whole
        ? []
        : [closed === codesOf.length || whole ? 'restricted' : 'restricted in part'];
    const held = codesOf.flatMap((code) => {
      const one = notBoxed.get(code);
      if (one === undefined) return [];
      return [folder === undefined ? sayNotBoxed(one) : `in it ${one.thing}, ${sayNotBoxed(one)}`];
    });
    const found = [...restricted, ...held];
    return found.length === 0 ? {} : { caution: found.join('; ') };
  };
  const shelved = boxes.flatMap(({ type, number, units: content }) =>
    content.map((unit): InventoryRow => ({ box: { type, number }, ...rowOf(unit) })),
  );
  const others = foldersOf(groups).flatMap(({ things }) =>
    things.filter((placed) => placed.units.length === 0),
  );
  return [
    ...shelved,
    ...others.map(({ thing }) => ({
      ...row(codes.things.get(thing), [thing]),
      ...cautionOf([thing]),
    })),
  ];
}

/** A bundle too large for a box has a share of its folders in each. */
function foldersOfLot({ first, last, units }: HeldFolder, unit: ShelfUnit): string {
  const share = Math.ceil((last - first + 1) / units.length);
  const from = first + units.indexOf(unit) * share;
  const to = Math.min(last, from + share - 1);
  return from === to ? `${from}` : `${from}-${to}`;
}

function unitsByCode(collection: Component): Map<string, Component> {
  const units = new Map<string, Component>();
  const visit = (unit: Component): void => {
    if (unit.referenceCode !== undefined) units.set(unit.referenceCode, unit);
    unit.children.forEach(visit);
  };
  visit(collection);
  return units;
}
