import { type ByteWriter, byteWriter, writeCheck, writeNumber } from './bytes.ts';
import { type GrowingPostings, writeNumbers } from './postings.ts';

const PER_BLOCK = 32;

/** What `writeTerms` writes: where each block starts, and the last ends; the blocks; the postings. */
interface WrittenTerms {
  starts: Uint32Array;
  blocks: ByteWriter;
  postings: ByteWriter;
}

/**
 * Writes the words in the order of their UTF-16 units, in blocks: of each word only what differs from the one before.
 * The postings follow one another as the words do.
 */
export function writeTerms(growing: ReadonlyMap<string, GrowingPostings>): WrittenTerms {
  const words = [...growing.keys()].sort();
  const starts = new Uint32Array(Math.ceil(words.length / PER_BLOCK) + 1);
  const [blocks, postings] = [byteWriter(), byteWriter()];
  const write = (numbers: readonly number[] = []): number => {
    const start = postings.length;
    writeNumbers(postings, numbers);
    const { length } = postings;
    writeCheck(postings, start);
    return length - start;
  };
  for (let first = 0; first < words.length; first += PER_BLOCK) {
    const start = blocks.length;
    starts[first / PER_BLOCK] = start;
    writeNumber(blocks, postings.length);
    let before = '';
    for (const word of words.slice(first, first + PER_BLOCK)) {
      let shared = 0;
      while (shared < before.length && word[shared] === before[shared]) shared += 1;
      writeNumber(blocks, shared);
      writeNumber(blocks, word.length - shared);
      for (let at = shared; at < word.length; at++) writeNumber(blocks, word.charCodeAt(at));
      const of = growing.get(word);
      writeNumber(blocks, write(of?.things));
      writeNumber(blocks, write(of?.positions));
      before = word;
    }
    writeCheck(blocks, start);
  }
  starts[starts.length - 1] = blocks.length;
  return { starts, blocks, postings };
}
