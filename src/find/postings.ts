import { type ByteReader, type ByteWriter, readNumber, writeNumber } from './bytes.ts';

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
  let at = 0;
  while (at < things.length) {
    let step = things[at] ?? 0;
    let mask = things[at + 1] ?? 0x80;
    at += 2;
    if ((step | mask) >= 0x80) {
      reader.at = at - 2;
      step = readNumber(reader);
      mask = readNumber(reader);
      at = reader.at;
    }
    thing += step + 1;
    meet(thing, mask);
  }
}

/**
 * Raises the strength of every thing of some postings to that of its best field. Written out for speed: it goes over a
 * hundred thousand things in a program that has only just started.
 * @param byField the strength in each field, falling
 * @returns how many of the things had none before
 * @throws IndexBroken
 */
export function raiseStrength(things: Uint8Array, byField: Uint16Array, strength: Uint16Array): number {
  const reader: ByteReader = { bytes: things, at: 0 };
  let thing = -1;
  let at = 0;
  let added = 0;
  while (at < things.length) {
    let step = things[at] ?? 0;
    let mask = things[at + 1] ?? 0x80;
    at += 2;
    if ((step | mask) >= 0x80) {
      reader.at = at - 2;
      step = readNumber(reader);
      mask = readNumber(reader);
      at = reader.at;
    }
    thing += step + 1;
    const found = byField[31 - Math.clz32(mask & -mask)] ?? 0;
    const before = strength[thing] ?? 1;
    if (found > before) {
      if (before === 0) added += 1;
      strength[thing] = found;
    }
  }
  return added;
}

/**
 * Every place in order: the number of the thing times `perThing`, plus its field times 4096, plus the position there,
 * less `offset`. Written out for speed as well.
 * @throws IndexBroken
 */
export function placesOf({ things, positions }: Postings, perThing: number, offset: number): Float64Array {
  // A place takes a byte at least.
  const places = new Float64Array(positions.length);
  const reader: ByteReader = { bytes: positions, at: 0 };
  let count = 0;
  let at = 0;
  eachThing(things, (thing, mask) => {
    for (let bits = mask; bits !== 0; bits &= bits - 1) {
      let position = 0;
      const start = thing * perThing + (31 - Math.clz32(bits & -bits)) * (LAST_POSITION + 1) - offset;
      for (let last = false; !last; ) {
        let step = positions[at++] ?? 0x80;
        if (step >= 0x80) {
          reader.at = at - 1;
          step = readNumber(reader);
          at = reader.at;
        }
        position += step >>> 1;
        last = (step & 1) === 1;
        // All that comes later stands at the last position too, so it tells of no neighbour.
        if (position < LAST_POSITION) places[count++] = start + position;
      }
    }
  });
  return places.subarray(0, count);
}
