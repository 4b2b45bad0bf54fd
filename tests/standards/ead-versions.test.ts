import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { paragraphs } from '../../src/catalogue/text.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import type { XmlElement } from '../../src/xml/element.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import type { Story, StoryDate } from '../support/ead-story.ts';
import { ead3Story } from '../support/ead3-story.ts';
import { ead2002Story } from '../support/ead2002-story.ts';
import { times } from '../support/times.ts';
import { parseTree } from '../support/xml-tree.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

/** The reader of these tests drops a byte order mark where a text begins with one; so they all go beforehand. */
const read = (tree: XmlElement) => parseTree([...writeXml(tree)].join('').replaceAll('\uFEFF', ''));

/** Both stories of one finding aid, component by component; what the two forms cannot but tell differently is evened. */
function bothStories(aid: FindingAid): [Story, Story][] {
  const pairs: [Story, Story][] = [];
  const walk = (one: Story, other: Story) => {
    expect(other.children.map(({ id }) => id)).toEqual(one.children.map(({ id }) => id));
    pairs.push([one, other]);
    for (const [index, below] of one.children.entries()) {
      const same = other.children[index];
      if (same !== undefined) walk(below, same);
    }
  };
  walk(ead3Story(read(ead3(aid))), ead2002Story(read(ead2002(aid))));
  return pairs;
}

const years = (normal: string | undefined) => normal?.split('/').map((end) => end.slice(0, 4));
/** One year twice is that year. */
const outer = (normal: string | undefined) => [...new Set(years(normal))];

function expectSameDate(one: StoryDate, other: StoryDate): void {
  expect(other.type).toBe(one.type);
  if (one.words !== undefined) expect(other.words).toBe(one.words);
  if (one.several) {
    if (one.normal !== undefined) expect(outer(other.normal)).toEqual(outer(one.normal));
  } else expect(other.normal).toBe(one.normal);
  expect(other.certainty).toBe(one.certainty);
}

/** A text as it is after a note took it apart into paragraphs. */
const inParagraphs = (text: string) => paragraphs(text).join('\n\n');
/** EAD 2002 has room for one word only where EAD3 has room for several. */
const asOneWord = (text: string | undefined) => text?.normalize('NFC').replaceAll(/[^A-Za-z0-9]+/g, '');
/** An address beyond ASCII is percent-encoded in XLink (RFC 3986), and a path that is none of either is encoded whole. */
const asAddress = (href = '') => decodeURIComponent(href.replaceAll(/%(?![0-9A-Fa-f]{2})/g, '%25'));

function expectSameStory([one, other]: [Story, Story]): void {
  const { children: _, dates, level, copies, didNotes, languageNote, ...rest } = one;
  const {
    children: __,
    dates: otherDates,
    level: otherLevel,
    copies: otherCopies,
    didNotes: otherNotes,
    languageNote: otherLanguageNote,
    ...same
  } = other;
  expect(same).toEqual(rest);
  expect(otherDates).toHaveLength(dates.length);
  for (const [index, date] of dates.entries()) {
    const otherDate = otherDates[index];
    if (otherDate !== undefined) expectSameDate(date, otherDate);
  }
  // A level whose name holds nothing that may stand in a word gets a name for want of one.
  if (otherLevel !== 'unnamed-level') expect(asOneWord(otherLevel)).toBe(asOneWord(level));
  const even = (list: Story['copies']) => list.map((copy) => ({ ...copy, href: asAddress(copy.href) }));
  expect(even(otherCopies)).toEqual(even(copies));
  // Where a byte order mark stands alone on a line, the parser of the tests leaves an empty line: a paragraph more.
  expect(otherNotes.map(inParagraphs)).toEqual(didNotes.map(inParagraphs));
  expect(inParagraphs(otherLanguageNote)).toBe(languageNote);
}

// EAD3 1.1.1 and EAD 2002 of one catalogue: titles, dates, containers, notes and all the rest, component by component.
describe('EAD3 and EAD 2002 of the same catalogue tell the same story', () => {
  it('of the example', async () => {
    const aid = arrange(await loadCatalogue(EXAMPLE), '2026-05-14');
    const pairs = bothStories(aid);
    expect(pairs.length).toBeGreaterThan(200);
    for (const pair of pairs) expectSameStory(pair);
    // So that empty stories are noticed.
    const all = pairs.map(([story]) => story);
    expect(
      all.flatMap(({ dates }) => dates).filter(({ normal }) => normal !== undefined).length,
    ).toBeGreaterThan(150);
    expect(all.flatMap(({ containers }) => containers).length).toBeGreaterThan(50);
    expect(new Set(all.flatMap(({ notes }) => Object.keys(notes))).size).toBeGreaterThan(10);
    expect(all.flatMap(({ accessPoints }) => accessPoints).length).toBeGreaterThan(100);
    expect(all.flatMap(({ copies }) => copies).length).toBeGreaterThan(3);
  });

  it('of finding aids of every shape', () => {
    fc.assert(
      // Without a recipient, who may want the codes of EAD3 from another list.
      fc.property(arbitraryFindingAid({ complete: false, largest: 8 }), ({ recipient: _, ...aid }) => {
        for (const pair of bothStories(aid)) expectSameStory(pair);
      }),
      { numRuns: times(200) },
    );
  });

  it('are compared by a measure that finds a difference', async () => {
    const aid = arrange(await loadCatalogue(EXAMPLE), '2026-05-14');
    const [pair] = bothStories(aid);
    if (pair === undefined) throw new Error('no story');
    const [one, other] = pair;
    const changes: Partial<Story>[] = [
      { titles: ['x'] },
      { notes: { ...other.notes, scopecontent: ['p: x'] } },
      { containers: [{ id: undefined, type: 'box', number: '1', parent: undefined }] },
      { dates: other.dates.map((date) => ({ ...date, normal: '1066' })) },
      { creators: [] },
      { extents: [] },
    ];
    for (const change of changes) expect(() => expectSameStory([one, { ...other, ...change }])).toThrow();
  });
});
