import type { Thing } from '../catalogue/thing.ts';
import { roomIn } from '../housing/fill-boxes.ts';
import { covers } from '../housing/measures.ts';
import type { Box, Unit } from '../housing/model.ts';
import { partFolder } from '../housing/part-folder.ts';
import { pieceOf } from '../housing/piece.ts';
import { boxKindNamed } from '../housing/shelve.ts';
import type { Stock } from '../housing/stock.ts';
import { type GrowingFolder, type GrowingGroup, hold, put } from './growing.ts';

/** Adds a thing to a folder, if it belongs and fits there, and into the box of that folder. */
export function joins(folder: GrowingFolder, thing: Thing, stock: Stock, boxes: SettledBoxes): boolean {
  const [given] = folder.boxes;
  if (thing.box !== undefined && thing.box !== given?.number) return false;
  const piece = pieceOf(thing);
  const alone = partFolder([piece], stock);
  if (alone.parts.length === 0) {
    // Its folder has a box; what lies apart gets one on a shelf of its own.
    put(folder, piece, alone.apart[0], undefined, thing.box === undefined ? [] : [{ number: thing.box }]);
    return true;
  }
  const { held } = folder;
  const unit = held?.units[0];
  if (held === undefined || unit === undefined || held.units.length > 1) return false;
  const [part, ...more] = partFolder([...unit.things.map((one) => one.piece), piece], stock).parts;
  if (part === undefined || more.length > 0 || part.folders !== held.last - held.first + 1) return false;
  if (!covers(held.holder.inside, part.holder.inside)) return false;
  const box = boxes.get(given?.number ?? '');
  const grown = { ...unit, thickness: piece.thickness };
  if (box !== undefined && !roomIn(box.kind, box.units, grown)) return false;
  box?.units.push(grown);
  const things = [...unit.things, put(folder, piece, undefined)];
  hold(folder, { ...part, holder: held.holder }, held.first, things, stock);
  return true;
}

/** The boxes whose kind is settled, with what lies in them. */
type SettledBoxes = ReadonlyMap<string, { kind: Box; units: Unit[] }>;

/** The same for what has grown so far. */
export function settledBoxes(root: GrowingGroup, stock: Stock): SettledBoxes {
  const boxes = new Map<string, { kind: Box; units: Unit[] }>();
  const visit = ({ groups, folders }: GrowingGroup): void => {
    for (const group of groups.values()) visit(group);
    for (const { held, things } of folders) {
      for (const unit of new Set([...(held?.units ?? []), ...things.flatMap(({ units }) => units)])) {
        const kind = boxKindNamed(unit.given?.kind, stock);
        if (unit.given === undefined || kind === undefined) continue;
        const box = boxes.get(unit.given.number);
        if (box === undefined) boxes.set(unit.given.number, { kind, units: [unit] });
        else box.units.push(unit);
      }
    }
  };
  visit(root);
  return boxes;
}
