import { describe, expect, test } from 'vitest';
import { boxesIn, lastFolderIn } from '../../src/arrange/shelf-before.ts';
import { type Component, type Container, component } from '../../src/catalogue/component.ts';

/** A unit with its containers, written `box 1` or `b1: box 1` with an id, and `folder 2 in b1` with a parent. */
function unit(written: readonly string[], ...children: Component[]): Component {
  ids += 1;
  const containers = written.map((text) => {
    const [, id, type, number, parent] = /^(?:(\w+): )?(.*?) (\d.*?)(?: in (\w+))?$/.exec(text) ?? [];
    return { ...(id && { id }), type, number, ...(parent && { parent }) } as Container;
  });
  return component.parse({ id: `u${ids}`, level: 'file', title: 'Tolls', containers, children });
}
let ids = 0;

const last = (...units: Component[]) => lastFolderIn(unit([], ...units));

// Worked out by hand: a number that stands in two boxes is counted anew in each.
describe('the last folder of a finding aid', () => {
  test('that counts through all boxes is its highest number', () => {
    expect(last(unit(['box 1', 'folder 1']), unit(['box 2', 'folder 12']), unit(['box 2', 'folder 3']))).toBe(
      12,
    );
    expect(last(unit(['Box 1', 'Folder 1']), unit(['Box 2', 'Folder 3a']))).toBe(3);
    expect(last(unit(['box 1', 'folders 001']), unit(['box 2', 'folders 002']))).toBe(2);
  });

  test('is none where each box begins anew, and where no folder is named', () => {
    expect(last(unit(['box 1', 'folder 1']), unit(['box 1', 'folder 2']), unit(['box 2', 'folder 1']))).toBe(
      0,
    );
    expect(last(unit(['box 1', 'folder 3a']), unit(['box 2', 'folder 3A']))).toBe(0);
    expect(last(unit(['box 1']), unit([]))).toBe(0);
  });

  test.each(['2-9', '2–9', '2 - 9', '2 – 9', '2 to 9', '2, 5-9'])('counts the folders %s', (number) => {
    expect(last(unit(['box 1', 'folder 1']), unit(['box 2', `folder ${number}`]))).toBe(9);
    // The ninth stands in box 3 too.
    expect(last(unit(['box 2', `folder ${number}`]), unit(['box 3', 'folder 9']))).toBe(0);
  });

  test('in a range counts those between its ends', () => {
    expect(last(unit(['box 1', 'folder 1-30']), unit(['box 2', 'folder 15']))).toBe(0);
  });

  test('counts on where an item names only the folder, in the box of the file above it', () => {
    const file = unit(['box 1', 'folder 2'], unit(['folder 2']), unit(['folder 3']));
    expect(last(file, unit(['box 2', 'folder 4']))).toBe(4);
    expect(last(file, unit(['box 2', 'folder 3']))).toBe(0);
  });

  test('counts on where the boxes are named at the series, and anew where they tell that', () => {
    const [one, two, three] = [unit(['folder 1']), unit(['folder 2']), unit([], unit(['folder 3']))];
    expect(last(unit(['box 1'], one, two), unit(['box 2'], three))).toBe(3);
    expect(last(unit(['box 1'], one, two), unit(['box 2'], unit(['folder 1'])))).toBe(0);
  });

  test('stands in one of several boxes of a series, which may be that of another unit', () => {
    const named = unit(['box 2', 'folder 5']);
    expect(last(unit(['box 1', 'box 2'], unit(['folder 5'])), named)).toBe(5);
    expect(last(unit(['box 1–3'], unit(['folder 5'])), named)).toBe(5);
    expect(last(unit(['box 3', 'box 4'], unit(['folder 5'])), named)).toBe(0);
    expect(last(unit(['box 3–4'], unit(['folder 5'])), named)).toBe(0);
  });

  test('several boxes and folders of one unit: the box before it, whichever is first in the finding aid', () => {
    const spread = unit(['box 1', 'folder 5', 'box 2', 'folder 6']);
    expect(last(spread, unit(['box 2', 'folder 6']))).toBe(6);
    expect(last(spread, unit(['box 1', 'folder 6']))).toBe(0);
    expect(last(unit(['folder 7', 'box 3']), unit(['box 3', 'folder 7']))).toBe(7);
  });

  test('several boxes and folders of one unit: the parent, where one is named', () => {
    const spread = unit(['a: box 1', 'b: box 2', 'folder 5 in a', 'folder 6 in b']);
    expect(last(spread, unit(['box 1', 'folder 5']))).toBe(6);
    expect(last(spread, unit(['box 2', 'folder 6']))).toBe(6);
    expect(last(spread, unit(['box 2', 'folder 5']))).toBe(0);
    // A parent above, and one that is not there: then the box before it.
    expect(last(unit(['a: box 1', 'b: box 2'], unit(['folder 5 in a'])), unit(['box 2', 'folder 5']))).toBe(
      0,
    );
    expect(last(unit(['box 1', 'folder 5 in z']), unit(['box 2', 'folder 5']))).toBe(0);
  });

  test('that names no box anywhere says nothing against counting on', () => {
    expect(last(unit(['folder 1']), unit(['folder 2']))).toBe(2);
    expect(last(unit(['folder 2']), unit(['box 1', 'folder 2']))).toBe(2);
  });

  test('flat folders may be counted apart, envelopes are no folders', () => {
    const plain = [unit(['box 1', 'folder 1']), unit(['box 2', 'folder 2'])];
    expect(last(...plain, unit(['drawer 1', 'flat folder 1']))).toBe(2);
    expect(last(...plain, unit(['drawer 1', 'flat folder 3']))).toBe(3);
    expect(last(...plain, unit(['a flat 1', 'flatfolder 9']), unit(['a flat 2', 'flatfolder 9']))).toBe(2);
    expect(last(...plain, unit(['box 2', 'envelope 40']))).toBe(2);
    expect(last(unit(['box 1', 'folder 1']), unit(['box 2', 'folder 1']), unit(['flat folder 7']))).toBe(0);
  });

  test('does not take long to find among more boxes than there can be', () => {
    const many = ['box 1-9999', 'folder 1-9999'];
    expect(last(unit(many), unit(many), unit(['box 2-9999', 'folder 2-9999']))).toBe(9999);
  });
});

test('boxes that are taken: those of a range too, and neither folders nor envelopes', () => {
  const all = unit(['Box 1–3'], unit(['Oversize folder 8', 'envelope 9']), unit(['reel 4', 'Folder 10']));
  expect(boxesIn(all)).toEqual(['3', '4']);
});
