import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { filledBoxes } from '../housing/shelve.ts';

const PRACTICE = 'common practice';

/** Boxes that are slack or tight, what fits into none, and settled numbers that no longer agree with the list. */
export function reviewHousing({ things, settled }: Catalogue, { boxes, moves }: Arrangement): Finding[] {
  const filled = filledBoxes(boxes);
  const packages = boxes.flatMap(({ type, number, units }): Finding[] =>
    type === 'box'
      ? []
      : [
          {
            rule: 'housing.no-box',
            weight: 'should',
            place: { file: 'list.csv', ...(units[0]?.things[0] && { row: units[0].things[0].thing.row }) },
            found: `This fits into none of the boxes at hand and becomes package ${number}.`,
            advice:
              'Name a box for it under "housing" in collection.yaml, or wrap it in acid-free paper and lay it flat.',
            source: PRACTICE,
          },
        ],
  );
  const elsewhere = moves.map(
    ({ thing, from, to }): Finding => ({
      rule: 'numbers.would-move',
      weight: 'consider',
      place: { file: 'list.csv', row: thing.row },
      found: `“${thing.title}” is settled as ${from.place.join('/')}, under ${say(from)}, and would now be sorted under ${say(to)}.`,
      advice:
        'It may stay. To give it a new place and explain the old number: kinfonds arrange --settle --move',
      source: PRACTICE,
    }),
  );
  const boxOf = new Map(
    settled.flatMap((row) => (row.gone === undefined ? [[row.number, row] as const] : [])),
  );
  const contradictions = things.flatMap((thing): Finding[] => {
    const row = thing.number === undefined ? undefined : boxOf.get(thing.number);
    if (row === undefined || thing.box === undefined || row.box === undefined || row.box === thing.box)
      return [];
    return [
      {
        rule: 'numbers.other-box',
        weight: 'should',
        place: { file: 'list.csv', row: thing.row, column: 'box' },
        found: `The list says box ${thing.box}, the settled numbers say box ${row.box}.`,
        advice: 'Look where it lies, and clear the cell in the list or put the thing back.',
      },
    ];
  });
  const present = new Set(things.map(({ number }) => number));
  const gone = settled.filter((row) => row.gone === undefined && !present.has(row.number)).length;
  const gaps: Finding[] =
    gone === 0
      ? []
      : [
          {
            rule: 'numbers.gap',
            weight: 'consider',
            place: { file: 'numbers.csv' },
            found: `${gone === 1 ? 'One settled number belongs' : `${gone} settled numbers belong`} to nothing in the list any more.`,
            advice:
              'If that was meant, settle once more, and the gap is explained in numbers.csv. If not, put the row back under its number.',
          },
        ];
  return [...packages, ...tight(filled), ...slack(filled), ...contradictions, ...gaps, ...elsewhere];
}

type Boxes = ReturnType<typeof filledBoxes>;

const tight = (filled: Boxes): Finding[] =>
  filled
    .filter((box) => box.slack < 0)
    .map((box) => ({
      rule: 'housing.tight',
      weight: 'should',
      place: { component: `box ${box.number}` },
      found: `What lies in this box is ${Math.ceil(-box.slack)} mm thicker than the box is deep.`,
      advice: 'Do not force it: take the last folders out and let them begin a box of their own.',
      source: PRACTICE,
    }));

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
    const which = `${numbers.length === 1 ? 'Box' : 'Each of the boxes'} ${numbers.join(', ')} is`;
    const place = numbers.length === 1 ? { component: `box ${numbers[0]}` } : {};
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

function say({ groups, filedUnder }: { groups: readonly string[]; filedUnder?: string | undefined }): string {
  return [...groups, ...(filedUnder === undefined ? [] : [filedUnder])].join(' > ');
}
