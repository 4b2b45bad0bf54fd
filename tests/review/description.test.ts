import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewDescription } from '../../src/review/description.ts';
import { FUNCTION_WORDS } from '../../src/review/function-words.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

function descriptionOf(settings: Record<string, unknown>, things: readonly Partial<Thing>[]) {
  const catalogue = someCatalogue(
    settings,
    things.map((thing, index) => someThing({ row: index + 2, ...thing })),
  );
  return reviewDescription(catalogue, arrange(catalogue, '2026-01-01'));
}

/** The findings of one rule. */
const of = (rule: string, settings: Record<string, unknown>, things: readonly Partial<Thing>[]) =>
  descriptionOf(settings, things).filter((finding) => finding.rule === `description.${rule}`);

const letter = { kind: 'letter', date: dated('1923'), people: ['Ada Quill'] };

describe('at the top', () => {
  test('a date is required (DACS 2.4); one that can be read is enough', () => {
    expect(of('dates', {}, [{ date: dated('when it rained') }])).toMatchObject([{ weight: 'must' }]);
    expect(of('dates', {}, [{}, letter])).toEqual([]);
    expect(of('dates', { dates: '1889-1957' }, [{}])).toEqual([]);
    expect(of('dates', {}, [])).toEqual([]);
  });

  test.each(['film', 'tape', 'computer file'])('a %s needs a machine (DACS 4.3)', (kind) => {
    expect(of('technical', {}, [{ kind }])).toMatchObject([{ weight: 'consider' }]);
    expect(of('technical', { technical: 'A projector for 16 mm.' }, [{ kind }])).toEqual([]);
    expect(of('technical', {}, [letter])).toEqual([]);
  });

  test('somebody or something by which to find it (DACS chapter 1, optimum)', () => {
    expect(of('access-points', {}, [{ kind: 'letter' }])).toHaveLength(1);
    expect(of('access-points', {}, [letter])).toEqual([]);
    expect(of('access-points', { subjects: ['Ferries'] }, [{ kind: 'letter' }])).toEqual([]);
  });

  test('a creator who stands nowhere under people (DACS 2.6, 2.7)', () => {
    const people = [{ name: 'Ada Quill', also: ['Miss Quill'] }];
    expect(of('creator-unknown', { creators: ['Ferry Company'], people }, [])).toMatchObject([
      { weight: 'consider', found: expect.stringContaining('“Ferry Company”') },
    ]);
    expect(of('creator-unknown', { creators: ['Quill, Ada', 'miss quill'], people }, [])).toEqual([]);
    expect(of('creator-unknown', { creators: ['Quill family'] }, [])).toHaveLength(1);
    expect(
      of('creator-unknown', { creators: ['Quill family'], history: 'They kept the ferry.' }, []),
    ).toEqual([]);
  });
});

describe('below the top', () => {
  test('a series of ten things without a scope (DACS 3.1), and one of nine', () => {
    const letters = Array.from({ length: 10 }, () => letter);
    expect(of('series-scope', {}, letters)).toMatchObject([
      { place: { component: 'QF/1' }, found: expect.stringContaining('“Correspondence” (10 things)') },
    ]);
    expect(of('series-scope', { groups: { Correspondence: { scope: 'From Norway.' } } }, letters)).toEqual(
      [],
    );
    expect(of('series-scope', {}, letters.slice(1))).toEqual([]);
  });

  test('a blank date, and one that is said to be unknown (DACS 2.4.16)', () => {
    const blank = { title: 'Stone from the ferry rock' };
    expect(of('no-date', {}, [letter, blank])).toMatchObject([
      {
        place: { row: 3, column: 'date' },
        found: expect.stringContaining('“Stone from the ferry rock” (row 3)'),
      },
    ]);
    expect(of('no-date', {}, [letter, { ...blank, date: dated('undated') }])).toEqual([]);
    // That is the finding of the whole.
    expect(of('no-date', {}, [blank])).toEqual([]);
  });

  test('a blank kind, where the groups do not tell it already', () => {
    const sort = { groups: ['decade'] };
    expect(of('no-kind', { sort }, [letter, { title: 'Ferry bell' }])).toMatchObject([{ place: { row: 3 } }]);
    expect(of('no-kind', {}, [letter, { title: 'Ferry bell' }])).toEqual([]);
    expect(of('no-kind', { sort }, [letter])).toEqual([]);
  });
});

describe('the language of the description', () => {
  const german =
    'Briefe und Fotografien der Familie, die das Fährhaus bewohnte und auch den Obstgarten von 1891 an bewirtschaftete. ' +
    'Das Tagebuch ist nicht vollständig und wurde nach dem Tod der Mutter von den Kindern auf dem Dachboden gefunden. ' +
    'Es ist für die Zeit bis 1957 eine gute Quelle und mit den Briefen zusammen sind es 300 Stücke.';

  test('German that is not declared', () => {
    expect(of('undeclared-language', { scope: german }, [])).toMatchObject([
      {
        weight: 'should',
        found: expect.stringContaining('written in German, but its language is taken to be English'),
      },
    ]);
  });

  test('declared, in English with German words, or too short to tell', () => {
    expect(of('undeclared-language', { scope: german, language: 'German' }, [])).toEqual([]);
    const english =
      'Letters of the family that kept the ferry, and of the orchard which they planted. Among the titles are ' +
      '“Der Fluss und das Boot”, “Die Mutter” and “Von dem Garten”, which were printed in Berlin by an uncle.';
    expect(of('undeclared-language', { scope: english }, [])).toEqual([]);
    expect(of('undeclared-language', { scope: 'Briefe und Fotografien der Familie.' }, [])).toEqual([]);
  });

  test('every word of the table belongs to one language', () => {
    const words = FUNCTION_WORDS.flatMap((row) => row.words);
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
  });
});
