import type { Found } from '../../intake/ead/found.ts';
import type { XmlElement } from '../../xml/element.ts';

/** So many of one kind: `unitdate/@datechar`, 1056. */
type Counts = Map<string, number>;

/** Where nothing more is there, the same is told in another order, with other blanks, or in other words. */
export const AS_LAID_OUT = 'order, blanks or wording';

/** A name of elements, or of attributes in one of those. */
interface Tally {
  /** How often it was found in the unit at hand, less how often it is written. */
  more: number;
  /** The sum of that over all units in which more was found than is written. */
  beyond: number;
}
interface ElementTally extends Tally {
  attributes: Map<string, Tally>;
}

/**
 * Counts what units as they were found hold beyond what is written of them from the model: elements by their names,
 * attributes by the element they stand in. The tallies are made once for all units, and only those that a unit has
 * touched are looked at after it.
 */
export function countBeyond(): { add: (found: Found, written: XmlElement) => void; counts: () => Counts } {
  const elements = new Map<string, ElementTally>();
  let touched: Tally[] = [];
  let laidOut = 0;

  const step = (tally: Tally, by: number): Tally => {
    touched.push(tally);
    tally.more += by;
    return tally;
  };
  const attributesOf = (element: XmlElement, { attributes }: ElementTally, by: number): void => {
    for (const key in element.attributes) {
      if (element.attributes[key] === undefined) continue;
      const tally = attributes.get(key);
      if (tally === undefined) attributes.set(key, step({ more: 0, beyond: 0 }, by));
      else step(tally, by);
    }
  };
  const tallyOf = (name: string): ElementTally => {
    const known = elements.get(name);
    if (known !== undefined) return known;
    const tally = { more: 0, beyond: 0, attributes: new Map() };
    elements.set(name, tally);
    return tally;
  };
  const count = (element: XmlElement, by: number): void => {
    attributesOf(element, tallyOf(element.name), by);
    for (const child of element.children) {
      if (typeof child === 'string') continue;
      step(tallyOf(child.name), by);
      count(child, by);
    }
  };
  return {
    add: (found, written) => {
      count(found, 1);
      count(written, -1);
      let any = false;
      for (const tally of touched) {
        // One that was touched twice is back at nothing the second time.
        if (tally.more > 0) any = true;
        tally.beyond += Math.max(tally.more, 0);
        tally.more = 0;
      }
      if (!any) laidOut += 1;
      touched = [];
    },
    counts: () => {
      const counts: Counts = new Map();
      for (const [name, { beyond, attributes }] of elements) {
        if (beyond > 0) counts.set(name, beyond);
        for (const [key, tally] of attributes)
          if (tally.beyond > 0) counts.set(`${name}/@${key}`, tally.beyond);
      }
      if (laidOut > 0) counts.set(AS_LAID_OUT, laidOut);
      return counts;
    },
  };
}
