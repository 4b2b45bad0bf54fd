import { describe, expect, test } from 'vitest';
import { answer } from '../../src/find/answer.ts';
import { sourceOf } from '../../src/find/bytes.ts';
import type { Above, Entry } from '../../src/find/entry.ts';
import { makeIndex } from '../../src/find/make-index.ts';
import { openIndex } from '../../src/find/open-index.ts';
import { questionOf } from '../../src/find/question.ts';
import { sayHits } from '../../src/find/say.ts';

const GROUP: Above = { referenceCode: 'RK/9', title: 'Regatta', lies: 'In folders 5-6, box 1' };
const FOLDER: Above = {
  referenceCode: 'RK/9/3',
  title: 'Letters',
  dates: '1913',
  lies: 'In folder 5, box 1',
};
const OTHER: Above = { referenceCode: 'RK/9/30', title: 'Ferry', lies: 'In folder 6, box 1' };

function thing(referenceCode: string, title: string, over: Partial<Entry> = {}) {
  const bare = { boxes: [{ type: 'box', number: '1' }], creators: [], people: [], mentioned: [], texts: {} };
  const entry: Entry = { referenceCode, title, above: [GROUP, FOLDER], ...bare, ...over };
  return { entry, codes: [referenceCode], kindWords: [] };
}

const THINGS = [
  thing('RK/9/3/1', 'Trophy list', { texts: { condition: ['rubber band'] } }),
  thing('RK/9/3/2', 'Photographs', { texts: { condition: ['an old rubber band'] } }),
  thing('RK/9/30/1', 'Ferry'),
].map((one, at) => (at < 2 ? one : { ...one, entry: { ...one.entry, above: [GROUP, OTHER] } }));

const index = openIndex(sourceOf(makeIndex({ things: THINGS, people: [] })));
const ask = (...typed: string[]) => answer(index, questionOf(typed), 10);
const lines = async (...typed: string[]) => [...sayHits(await ask(...typed))].map((line) => line.trim());

describe('what is said of what was found', () => {
  test('two words of one text are shown in it once', async () => {
    const said = await lines('rubber', 'band');
    expect(said).toContain('condition: “rubber band”');
    expect(said).toContain('condition: rubber, band, in “an old rubber band”');
  });

  test('a folder asked for by its code comes first, then all that is in it, and nothing else', async () => {
    expect(await lines('rk/9/3')).toEqual([
      ...['RK/9/3  Letters, 1913', 'In folder 5, box 1'],
      ...['RK/9/3/1  Trophy list', 'In box 1', 'in folder rk/9/3'],
      ...['RK/9/3/2  Photographs', 'In box 1', 'in folder rk/9/3'],
    ]);
  });

  test('so does a group', async () => {
    const said = await lines('RK/9');
    expect(said.slice(0, 2)).toEqual(['RK/9  Regatta', 'In folders 5-6, box 1']);
    expect(said.filter((line) => line === 'in group RK/9')).toHaveLength(3);
  });

  test('the code of a thing finds the thing, as a single number finds no group', async () => {
    expect((await ask('RK/9/3/1')).unit).toBeUndefined();
    expect((await lines('RK/9/3/1'))[0]).toBe('RK/9/3/1  Trophy list');
    expect((await ask('9')).found).toBe(0);
  });

  test.each([
    ['trofy', 'Trophy list'],
    ['fotograf', 'Photographs'],
    ['pherry', 'Ferry'],
  ])('%s is a spelling of %s', async (typed, title) => {
    expect((await ask(typed)).hits.map((hit) => hit.title)).toEqual([title]);
  });

  test('a box is meant by its number where there is one', async () => {
    expect([(await ask('box', '1')).box, (await ask('box', '7')).box]).toEqual(['1', undefined]);
  });
});
