import { micrometres } from './measures.ts';
import type { Box, Filled, Shelf, Unit } from './model.ts';

// Common practice, all of them, with no single source; in millimetres.
/** A box is larger than what stands in it, so that its lid and its sides touch nothing. */
const CLEARANCE = 3;
/** Between pieces that stand there is room for a finger, so that one can be drawn out and put back without force. */
export const FINGER = 10;
/** More room than this, about an inch, and what stands begins to lean and slump: it wants a spacer. */
const SLUMPS = 25;
/** With less than this share of its depth filled, what stands would fall over: it is better laid flat. */
const STANDS = 1 / 3;
/** What breaks or warps where it lies, and so stands with a spacer however little of it there is. */
const ALWAYS_STANDS: ReadonlySet<Shelf> = new Set<Shelf>(['glass', 'discs', 'tapes']);

/** The cheapest way to put all units from one of them on into boxes: its first box, and where the next one begins. */
interface Way {
  box?: Box;
  end: number;
  /** Of the shelf, in thousandths of a mm³. */
  space: number;
  boxes: number;
}

const DONE: Way = { end: 0, space: 0, boxes: 0 };

/**
 * Puts the units of one shelf into boxes, in order, no unit divided, so that the boxes take the least space that holds
 * nothing: what a box takes up outside, less what lies in it. Of equal ways the one with fewer boxes,
 * then the one whose boxes come earlier in the list. Each box is as full as it may be before the next one begins, so
 * that room for more is left at the end. `unplaced` are the units that fit no box; the others close up.
 */
export function fillBoxes<U extends Unit>(
  units: readonly U[],
  boxes: readonly Box[],
): { filled: Filled<U>[]; unplaced: U[] } {
  const homeless = new Set(units.filter((unit) => !boxes.some((box) => roomIn(box, [], unit))));
  const placed = units.filter((unit) => !homeless.has(unit));
  const ways = cheapestWays(placed, boxes);
  const filled: Filled<U>[] = [];
  for (let first = 0; first < placed.length; ) {
    const { box, end } = ways[first] ?? DONE;
    if (box === undefined) throw new Error(`No box was found for unit ${first + 1}.`);
    filled.push(asFilled(box, placed.slice(first, end)));
    first = end;
  }
  return { filled, unplaced: [...homeless] };
}

/**
 * Dynamic programming from the last unit to the first. What lies in the boxes is the same in every way, so the least
 * empty space is the least space. A way for fewer units never takes more space, nor more boxes in the same space: it
 * is the way for more of them with some left out. So of all that one box could hold from a unit on, the most is best,
 * and that end only moves forward as the first unit does: a step for each unit and kind of box, however many fit in.
 */
function cheapestWays(units: readonly Unit[], boxes: readonly Box[]): Way[] {
  const ways: Way[] = new Array(units.length);
  const kinds = boxes.map((box) => ({
    box,
    space: spaceOf(box),
    room: roomForSeveral(box),
    end: units.length,
    content: 0,
  }));
  for (const [back, unit] of units.toReversed().entries()) {
    const first = units.length - 1 - back;
    let best: Way = { end: first, space: Number.POSITIVE_INFINITY, boxes: 0 };
    for (const kind of kinds) {
      if (!roomIn(kind.box, [], unit)) {
        kind.end = first;
        kind.content = 0;
        continue;
      }
      kind.content += micrometres(unit.thickness);
      while (kind.content > kind.room && kind.end > first + 1) {
        kind.end--;
        kind.content -= micrometres(units[kind.end]?.thickness ?? 0);
      }
      const rest = ways[kind.end] ?? DONE;
      const space = kind.space + rest.space;
      const count = 1 + rest.boxes;
      if (space < best.space || (space === best.space && count < best.boxes)) {
        best = { box: kind.box, end: kind.end, space, boxes: count };
      }
    }
    ways[first] = best;
  }
  return ways;
}

/**
 * Whether a box with some units in it takes one more: it is meant for that shelf, is larger than the unit's outside,
 * and has the depth left. One unit alone may fill a box to the last millimetre, since nothing is drawn out beside it.
 */
export function roomIn(box: Box, units: readonly Unit[], next: Unit): boolean {
  const { shelf, outside, thickness } = next;
  if (!box.takes.includes(shelf)) return false;
  if (outside.long + CLEARANCE > box.face.long || outside.short + CLEARANCE > box.face.short) return false;
  if (units.length === 0) return micrometres(thickness) <= micrometres(box.deep);
  return contentOf(units) + micrometres(thickness) <= roomForSeveral(box);
}

/**
 * Units in a box, with how they lie there and what to do about it. `slack` is in millimetres, and negative where
 * things have been added to a settled box that it does not hold.
 */
export function asFilled<U extends Unit>(box: Box, units: readonly U[]): Filled<U> {
  const content = contentOf(units);
  const slack = (micrometres(box.deep) - content) / 1000;
  const filled: Filled<U> = { box, units: [...units], lies: box.lies, slack };
  if (box.lies !== 'upright') return filled;
  const mustStand = units.some(({ shelf }) => ALWAYS_STANDS.has(shelf));
  if (content < STANDS * micrometres(box.deep) && !mustStand) {
    return { ...filled, lies: 'flat', advice: 'lay flat' };
  }
  return slack > SLUMPS ? { ...filled, advice: 'spacer' } : filled;
}

const contentOf = (units: readonly Unit[]) =>
  units.reduce((sum, { thickness }) => sum + micrometres(thickness), 0);

/** What lies is lifted off from above, and needs no finger beside it. */
const roomForSeveral = ({ lies, deep }: Box) => micrometres(lies === 'upright' ? deep - FINGER : deep);

/** From sides in whole tenths of a millimetre: two boxes of half the width take exactly the space of one. */
const spaceOf = ({ outside }: Box) =>
  [outside.width, outside.height, outside.depth].reduce((space, side) => space * Math.round(side * 10), 1);
