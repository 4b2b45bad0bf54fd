import { atFirstUse } from '../catalogue/once.ts';

/** The library that reads and draws pictures. It is loaded with the first of them: most answers have to do with none. */
export const pictureLibrary = atFirstUse(async () => {
  const { default: sharp } = await import('sharp');
  // As many pictures are drawn at a time as there are processors, which is sooner done than one at a time by all of them.
  sharp.concurrency(1);
  // Files are read once each, and one that was changed must not be answered from memory.
  sharp.cache(false);
  return sharp;
});
