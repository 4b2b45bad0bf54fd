import { addWays } from './script/add-ways.ts';
import { behaviour } from './script/behaviour.ts';
import { fillIndex } from './script/fill-index.ts';
import { makeFinder } from './script/find.ts';
import { mistakes } from './script/mistakes.ts';
import { questionOf } from './script/question.ts';
import { readUnits } from './script/read-units.ts';
import { showAnswers } from './script/show-answers.ts';
import { showFound } from './script/show-found.ts';
import { treeOf } from './script/tree.ts';
import { wordReader } from './script/words.ts';

/**
 * The script of the page. Each part is a function that leans on nothing outside itself, and goes into the page as it
 * is written; what one needs of the others it is given.
 */
export const SCRIPT = `'use strict';
(${behaviour})({
${Object.entries({
  addWays,
  fillIndex,
  makeFinder,
  mistakes,
  questionOf,
  readUnits,
  showAnswers,
  showFound,
  treeOf,
  wordReader,
})
  .map(([name, part]) => `${name}: ${part}`)
  .join(',\n')}
});
`;
