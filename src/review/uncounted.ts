import { isUncounted } from '../kinds/extents.ts';
import type { Rules } from './index.ts';
import { sayThings } from './said-together.ts';

/** Rows in the plural without a number. A number that cannot be read is told where it is read. */
export const reviewUncounted: Rules = ({ things, listFile }) => {
  const uncounted = things.filter((thing) => thing.quantityUnread !== true && isUncounted(thing));
  const [first] = uncounted;
  if (first === undefined) return [];
  return [
    {
      rule: 'words.uncounted',
      weight: 'consider',
      place: { file: listFile, row: first.row, column: 'kind' },
      found: `The kind is a word for several, and the list does not say how many, so the finding aid counts none of them: ${sayThings(uncounted)}.`,
      advice: 'Write a number under “quantity”, “about 40” if need be; for a single thing, 1.',
      source: 'DACS 2.5',
    },
  ];
};
