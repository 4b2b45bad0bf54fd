import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { answer } from '../../src/find/answer.ts';
import { sourceOf } from '../../src/find/bytes.ts';
import { findablesOf } from '../../src/find/findables.ts';
import { makeIndex } from '../../src/find/make-index.ts';
import { openIndex } from '../../src/find/open-index.ts';
import { questionOf } from '../../src/find/question.ts';
import { QUESTIONS } from './questions.ts';

const TODAY = '2026-11-25';
const { things, ...catalogue } = await loadCatalogue('examples/quill-ferry', TODAY);
const index = openIndex(sourceOf(makeIndex(findablesOf(arrange({ ...catalogue, things }, TODAY)))));

describe('forty questions to the papers of the Quills', () => {
  test('there are forty, and all they want is in the list', () => {
    expect(QUESTIONS).toHaveLength(40);
    const titles = new Set(things.map(({ title }) => title));
    for (const { wanted } of QUESTIONS) for (const title of wanted) expect(titles).toContain(title);
  });

  test.each(QUESTIONS)('$typed ($why)', async ({ typed, wanted }) => {
    const first = (await answer(index, questionOf(typed), 3)).hits.map(({ title }) => title);
    expect(first).toEqual(expect.arrayContaining([...wanted]));
  });
});
