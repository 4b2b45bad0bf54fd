import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { foldersOf } from '../housing/placed.ts';
import { filledBoxes } from '../housing/shelve.ts';

const PRACTICE = 'common practice';

/** Boxes that are slack or tight, what fits into none, and settled numbers that no longer agree with the list. */
export function reviewHousing(
  { things, settled }: Catalogue,
  { boxes, moves, groups }: Arrangement,
): Finding[] {
  const filled = filledBoxes(boxes).map((box): Finding | undefined => {
    const place = { component: `box ${box.number}` };
    if (box.slack < 0) {
      return {
        rule: 'housing.tight',
        weight: 'should',
        place,
        found: `What lies in this box is ${Math.ceil(-box.slack)} mm thicker than the box is deep.`,
        advice: 'Do not force it: take the last folders out and let them begin a box of their own.',
        source: PRACTICE,
      };
    }
    if (box.advice === undefined) return undefined;
    const full = Math.round(((box.box.deep - box.slack) / box.box.deep) * 100);
    return {
      rule: 'housing.slack',
      weight: 'consider',
      place,
      found: `This box is ${full} % full, and what stands in it would ${box.advice === 'spacer' ? 'slump' : 'fall over'}.`,
      advice:
        box.advice === 'spacer'
          ? 'Fill the rest with a spacer of acid-free board, or take a narrower box.'
          : 'Lay it flat, or take a smaller box.',
      source: PRACTICE,
    };
  });
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
  const gone = foldersOf(groups).flatMap(({ gaps }) => gaps.filter(({ why }) => why === 'removed')).length;
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
              'If that was meant, nothing is to do: the gap is explained in numbers.csv. If not, put the row back under its number.',
          },
        ];
  return [
    ...packages,
    ...filled.filter((one) => one !== undefined),
    ...contradictions,
    ...gaps,
    ...elsewhere,
  ];
}

function say({ groups, filedUnder }: { groups: readonly string[]; filedUnder?: string | undefined }): string {
  return [...groups, ...(filedUnder === undefined ? [] : [filedUnder])].join(' > ');
}
