import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { ShelfUnit } from '../housing/placed.ts';
import { filledBoxes } from '../housing/shelve.ts';
import { reviewUnboxed } from './housing-no-box.ts';
import { reviewNumbers } from './numbers.ts';
import { maskNumbers } from './private-numbers.ts';

const PRACTICE = 'common practice';

/** Boxes that are slack or tight, what fits into none, and settled numbers that no longer agree with the list. */
export function reviewHousing(catalogue: Catalogue, arranged: Arrangement): Finding[] {
  const { boxes } = arranged;
  const filled = filledBoxes(boxes);
  return [
    ...reviewUnboxed(catalogue, arranged),
    ...tight(filled),
    ...slack(filled),
    ...reviewNumbers(catalogue, arranged),
  ];
}

type Boxes = ReturnType<typeof filledBoxes>;

const tight = (filled: Boxes): Finding[] =>
  filled
    .filter((box) => box.slack < 0)
    .map((box) => {
      const grown = grownFolders(box.units);
      const split = grown.map((each) => each.advice);
      return {
        rule: 'housing.tight',
        weight: 'should',
        place: { component: `box ${box.number}` },
        found: [
          `What lies in this box is ${Math.ceil(-box.slack)} mm thicker than the box is deep.`,
          ...grown.map((each) => each.found),
        ].join(' '),
        advice: [
          'Do not force it.',
          ...(split.length > 0
            ? split
            : ['Take the last folders out and let them begin a box of their own.']),
        ].join(' '),
        source: PRACTICE,
      };
    });

/** Settled folders that hold more by now than folders of their kind take, and how to split them. */
function grownFolders(units: readonly ShelfUnit[]): { found: string; advice: string }[] {
  const folders = new Set(units.flatMap(({ folder, things }) => (things.some(isInside) ? [folder] : [])));
  return [...folders].flatMap(({ held, things }) => {
    const inside = things.filter(isInside).toSorted((a, b) => b.piece.thickness - a.piece.thickness);
    const [thickest] = inside;
    if (held === undefined || thickest === undefined) return [];
    const { first, last, holder } = held;
    const thickness = inside.reduce((sum, { piece }) => sum + piece.thickness, 0);
    const takes = holder.limit * (last - first + 1);
    if (thickness <= takes) return [];
    const { title, row } = thickest.thing;
    const named = first === last ? `folder ${first}` : `folders ${first} to ${last}`;
    return [
      {
        found: `For ${named} there are ${Math.ceil(thickness)} mm now, and not more than ${Math.floor(takes)} mm should lie there.`,
        advice: `Split ${named}: leave in row ${row} of the list (“${maskNumbers(title)}”) as many as may lie there, and enter the rest in a row of its own without a number, which gets a folder of its own.`,
      },
    ];
  });
}

const isInside = ({ apart, units }: ShelfUnit['things'][number]) => apart === undefined && units.length > 0;

/** What to do about boxes that are neither full nor meant to be. */
const SLACK = {
  spacer: {
    found: 'not full, so that what stands in it would slump',
    advice: 'Fill the rest with a spacer of acid-free board, or take a narrower box.',
  },
  'lay flat': {
    found: 'so empty that what stands in it would fall over',
    advice: 'Lay it flat, or take a smaller box.',
  },
} as const;

const slack = (filled: Boxes): Finding[] =>
  Object.entries(SLACK).flatMap(([kind, { found, advice }]): Finding[] => {
    const numbers = filled.filter((box) => box.advice === kind).map(({ number }) => number);
    if (numbers.length === 0) return [];
    const [only, ...others] = numbers;
    const which = others.length === 0 ? 'It is' : `Each of the boxes ${numbers.join(', ')} is`;
    const place = others.length === 0 ? { component: `box ${only}` } : {};
    return [
      {
        rule: 'housing.slack',
        weight: 'consider',
        place,
        found: `${which} ${found}.`,
        advice,
        source: PRACTICE,
      },
    ];
  });
