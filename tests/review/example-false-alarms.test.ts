import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { reviewDates } from '../../src/review/dates.ts';
import { reviewDescription } from '../../src/review/description.ts';
import { reviewDoubles } from '../../src/review/doubles.ts';
import { reviewRuns } from '../../src/review/runs.ts';
import { titleRules } from '../../src/review/titles.ts';
import { VAGUE_WORDS } from '../../src/review/vague-words.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

describe('the example: every finding of description, dates, runs and doubles, and what is to be thought of it', () => {
  test('none is false', async () => {
    const catalogue = await loadCatalogue(EXAMPLE, '2026-10-01');
    const aid = arrange(catalogue, '2026-10-01');
    const families = [reviewDescription, titleRules(VAGUE_WORDS), reviewDates, reviewRuns, reviewDoubles];
    const said = families
      .flatMap((rules) => rules(catalogue, aid))
      .map(({ rule, found }) => `${rule}: ${found}`);
    const judged = [
      // True: the date of the stone is blank, where others say "undated".
      /^description\.no-date: .*“Stone from the ferry rock”/,
      // True: whose medal it is stands in the people column alone.
      /^titles\.say-only-the-kind: .*“Medal in a box”/,
      // True: ten account books have their year in the title and in the date column.
      /^titles\.repeat-the-date: .*“Ferry account book, 1919” .* and 6 more/,
      // True, and planted: "There is no 1922. I looked everywhere." and "1927 twice!"
      /^runs\.incomplete: .*from 1919 to 1957\. Missing: 1922\. There more than once: 1927 \(rows \d+-\d+\)\.$/,
      // True, and planted: "Second print, not mounted", and "same again".
      /^doubles\.same-title: “Landing School, all the pupils and Ada on the steps”/,
      /^doubles\.same-title: “Photo, crowd on both banks, bridge behind”/,
      // True: row 200 writes "the landing" where all others write the name.
      /^doubles\.near-place: “the landing” .*“Quill's Landing”/,
    ];
    expect(said).toEqual(judged.map((pattern) => expect.stringMatching(pattern)));
  });
});
