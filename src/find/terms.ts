import { type ByteReader, CHECK, checked, IndexBroken, readNumber, type Source } from './bytes.ts';

/** A word of the index, and where its postings lie. */
export interface Term {
  word: string;
  /** In bytes, in the section of postings. */
  at: number;
  thingsLength: number;
  positionsLength: number;
}

/** The words of an index. */
export interface Terms {
  /** The word itself, if it is there. */
  find(word: string): Term | undefined;
  /** The words that begin so, in order. */
  beginning(start: string): Term[];
  /** Steps over the words from the first block on that may hold `from`; see `TermCursor`. */
  from(from: string): TermCursor;
}

/** Goes from word to word. The units of the word are in `units`, as many as `length` says. */
interface TermCursor {
  units: Uint16Array;
  length: number;
  /** How many units this word has in common with the one before it. */
  shared: number;
  next(): boolean;
  term(): Term;
}

/** @param starts where the blocks start in `source`, and after the last one, its end */
export function openTerms(starts: Uint32Array, source: Source): Terms {
  const count = starts.length - 1;
  const blockAt = (block: number): Buffer => {
    const [at = 0, end = 0] = [starts[block], starts[block + 1]];
    return checked(source.read(at, end - at));
  };
  const firstOf = (block: number): string => {
    const at = cursor(block, block + 1, blockAt);
    return at.next() ? wordAt(at) : '';
  };
  /** The last block whose first word is not after this one. */
  const blockFor = (word: string): number => {
    let [low, high] = [0, count - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (firstOf(middle) <= word) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const from = (word: string): TermCursor => cursor(blockFor(word), count, blockAt);
  return {
    from,
    find(word) {
      const at = from(word);
      while (at.next()) {
        const here = wordAt(at);
        if (here >= word) return here === word ? at.term() : undefined;
      }
      return undefined;
    },
    beginning(start) {
      const found: Term[] = [];
      const at = from(start);
      while (at.next()) {
        const here = wordAt(at);
        if (here.startsWith(start)) found.push(at.term());
        else if (here > start) break;
      }
      return found;
    },
  };
}

/** In UTF-16 units. Words are shorter; the number of a thing in the list may be as long as a cell. */
export const LONGEST_TERM = 200;

const wordAt = ({ units, length }: TermCursor): string => String.fromCharCode(...units.subarray(0, length));

function cursor(first: number, count: number, blockAt: (block: number) => Buffer): TermCursor {
  let block = first;
  const reader: ByteReader = { bytes: Buffer.alloc(0), at: 0 };
  let [postings, thingsLength, positionsLength] = [0, 0, 0];
  return {
    units: new Uint16Array(LONGEST_TERM),
    length: 0,
    shared: 0,
    next() {
      if (reader.at < reader.bytes.length) postings += thingsLength + positionsLength + 2 * CHECK;
      else {
        if (block >= count) return false;
        reader.bytes = blockAt(block++);
        reader.at = 0;
        postings = readNumber(reader);
      }
      this.shared = readNumber(reader);
      this.length = this.shared + readNumber(reader);
      if (this.length > this.units.length) throw new IndexBroken();
      for (let at = this.shared; at < this.length; at++) this.units[at] = readNumber(reader);
      thingsLength = readNumber(reader);
      positionsLength = readNumber(reader);
      return true;
    },
    term() {
      return { word: wordAt(this), at: postings, thingsLength, positionsLength };
    },
  };
}
