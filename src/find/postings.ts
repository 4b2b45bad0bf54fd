import { type ByteReader, type ByteWriter, IndexBroken, readNumber, writeNumber } from './bytes.ts';

/** In words: of a longer text only so much can be found as a phrase. */
export const LAST_POSITION = 4095;

/** Where a word stands: in which things, there in which fields, and at which places of those. */
export interface Postings {
  /** For each thing: how far it is behind the one before, and its fields as the bits of a number. */
  things: Uint8Array;
  /** For each thing and each of its fields, from the lowest: the places, each as twice its distance, plus one if last. */
  positions: Uint8Array;
}

/** Postings as they grow, in the numbers that are written in the end. */
export interface GrowingPostings {
  things: number[];
  positions: number[];
  thing: number;
  field: number;
  position: number;
}

export const newPostings = (): GrowingPostings => ({
  things: [],
  positions: [],
  thing: -1,
  field: -1,
  position: 0,
});

/** Adds a place: in the order of things, in a thing of fields, in a field of positions. */
export function addPlace(to: GrowingPostings, thing: number, field: number, position: number): void {
  const { things, positions } = to;
  const place = Math.min(position, LAST_POSITION);
  if (thing !== to.thing) {
    things.push(thing - to.thing - 1, 1 << field);
    positions.push(2 * place + 1);
  } else if (field !== to.field) {
    things[things.length - 1] = (things[things.length - 1] ?? 0) | (1 << field);
    positions.push(2 * place + 1);
  } else if (place > to.position) {
    positions[positions.length - 1] = (positions[positions.length - 1] ?? 1) - 1;
    positions.push(2 * (place - to.position) + 1);
  }
  to.thing = thing;
  to.field = field;
  to.position = place;
}

export function writeNumbers(to: ByteWriter, numbers: readonly number[]): void {
  for (const number of numbers) writeNumber(to, number);
}

/** Calls `meet` for every thing of some postings, with the mask of its fields. @throws IndexBroken */
export function eachThing(things: Uint8Array, meet: (thing: number, mask: number) => void): void {
  const reader: ByteReader = { bytes: things, at: 0 };
  let thing = -1;
  while (reader.at < things.length) {
    thing += readNumber(reader) + 1;
    meet(thing, readNumber(reader));
  }
}

/**
 * Raises the strength of every thing of some postings to that of its best field. It goes over a hundred thousand things
 * in a program that has only just started, where each call costs: so the reading of numbers is written out.
 * @param byField the strength in each field, falling
 * @returns how many of the things had none before
 * @throws IndexBroken
 */
export function raiseStrength(things: Uint8Array, byField: Uint16Array, strength: Uint16Array): number {
  let thing = -1;
  let at = 0;
  let added = 0;
  while (at < things.length) {
    let step = things[at++] ?? 0;
    for (let shift = 7, byte = step; byte >= 0x80; shift += 7) {
      byte = things[at++] ?? 0;
      step = (step & ((1 << shift) - 1)) | ((byte & 0x7f) << shift);
    }
    let mask = things[at++] ?? 0;
    for (let shift = 7, byte = mask; byte >= 0x80; shift += 7) {
      byte = things[at++] ?? 0;
      mask = (mask & ((1 << shift) - 1)) | ((byte & 0x7f) << shift);
    }
    thing += step + 1;
    const found = byField[31 - Math.clz32(mask & -mask)] ?? 0;
    const before = strength[thing] ?? 1;
    if (found > before) {
      if (before === 0) added += 1;
      strength[thing] = found;
    }
  }
  if (at > things.length) throw new IndexBroken();
  return added;
}

/**
 * Every place in order, as two whole numbers: the thing, and its field times 4096, plus the position there, less
 * `offset`. Written out for speed as well; and numbers beyond 31 bits would be slower.
 * @throws IndexBroken
 */
export function placesOf({ things, positions }: Postings, offset: number): Int32Array {
  // A place takes a byte at least.
  const places = new Int32Array(2 * positions.length);
  let count = 0;
  let thing = -1;
  let next = 0;
  let at = 0;
  while (next < things.length) {
    let step = things[next++] ?? 0;
    for (let shift = 7, byte = step; byte >= 0x80; shift += 7) {
      byte = things[next++] ?? 0;
      step = (step & ((1 << shift) - 1)) | ((byte & 0x7f) << shift);
    }
    let mask = things[next++] ?? 0;
    for (let shift = 7, byte = mask; byte >= 0x80; shift += 7) {
      byte = things[next++] ?? 0;
      mask = (mask & ((1 << shift) - 1)) | ((byte & 0x7f) << shift);
    }
    thing += step + 1;
    for (; mask !== 0; mask &= mask - 1) {
      const start = (31 - Math.clz32(mask & -mask)) * (LAST_POSITION + 1) - offset;
      let position = 0;
      for (let last = false; !last; ) {
        // Behind the end, as if it were the last, so that the loop ends.
        let far = positions[at++] ?? 1;
        for (let shift = 7, byte = far; byte >= 0x80; shift += 7) {
          byte = positions[at++] ?? 0;
          far = (far & ((1 << shift) - 1)) | ((byte & 0x7f) << shift);
        }
        position += far >>> 1;
        last = (far & 1) === 1;
        // All that comes later stands at the last position too, so it tells of no neighbour.
        if (position < LAST_POSITION) {
          places[count++] = thing;
          places[count++] = start + position;
        }
      }
    }
  }
  if (next > things.length || at > positions.length) throw new IndexBroken();
  return places.subarray(0, count);
}
