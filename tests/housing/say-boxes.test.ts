import { expect, test } from 'vitest';
import { sayBoxes, sayFoldersAndBoxes } from '../../src/housing/say-boxes.ts';

test.each([
  [43, 3, '43 boxes and 3 packages'],
  [1, 1, '1 box and 1 package'],
  [2, 0, '2 boxes'],
  [0, 1, '1 package'],
  [0, 0, ''],
])('%i boxes and %i packages', (boxes, packages, said) => {
  expect(sayBoxes(boxes, packages)).toBe(said);
});

test.each([
  [99, 43, 3, '99 folders, 43 boxes and 3 packages'],
  [5, 4, 0, '5 folders and 4 boxes'],
  [1, 0, 2, '1 folder and 2 packages'],
  [0, 1, 1, '1 box and 1 package'],
  [2, 0, 0, '2 folders'],
])('%i folders, %i boxes and %i packages', (folders, boxes, packages, said) => {
  expect(sayFoldersAndBoxes(folders, boxes, packages)).toBe(said);
});
