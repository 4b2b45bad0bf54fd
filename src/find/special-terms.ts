import { LONGEST_TERM } from './terms.ts';

// What the index holds beside words; no word begins with such a sign.
const [CODE, PERSON, BOX, KIND, WITHIN] = ['\u0001', '\u0002', '\u0003', '\u0004', '\u0005'];

const term = (sign: string, text: string): string =>
  (sign + text.normalize('NFKC').toLowerCase().replace(/\s+/g, ' ').trim()).slice(0, LONGEST_TERM);

/** A reference code, or the number of a thing in the list. */
export const codeTerm = (code: string): string => term(CODE, code);

/** The reference code of a folder or group, which stands at everything in it. */
export const withinTerm = (code: string): string => term(WITHIN, code);

/** @param person the place in the list of people */
export const personTerm = (person: number): string => term(PERSON, String(person));

/** The number of a box or package. */
export const boxTerm = (number: string): string => term(BOX, number);

/** With what the numbers of all boxes begin. */
export const boxesStart: string = BOX;

/** Another word for a kind ("snapshot" for a photograph), or several. @param words in the form in which they are compared */
export const kindTerm = (words: readonly string[]): string => term(KIND, words.join(' '));
