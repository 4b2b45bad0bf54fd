import { type Arrangement, referenceCodes, type Settling } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { sayCommand } from '../catalogue/say-command.ts';
import { changedPlaces } from './numbers-changed-places.ts';
import { lostRows, unknownNumbers } from './numbers-lost.ts';
import { outgrown } from './numbers-outgrown.ts';
import { usedAgain } from './numbers-used-again.ts';
import { maskNumbers } from './private-numbers.ts';

/** Settled numbers that no longer agree with the list, and things that would now be sorted elsewhere. */
export function reviewNumbers(catalogue: Catalogue, arranged: Arrangement): Finding[] {
  return [
    ...changedPlaces(catalogue),
    ...usedAgain(catalogue, arranged),
    // Without a thing whose number is not known, what is missing may have been left out on purpose, as it is of a
    // catalogue that is handed over in part.
    ...(unknownNumbers(catalogue).length === 0 ? [] : lostRows(catalogue)),
    ...perhapsSettled(catalogue, arranged),
    ...otherBoxes(catalogue),
    ...outgrown(catalogue, arranged),
    ...gaps(catalogue, arranged),
    ...elsewhere(catalogue, arranged),
  ];
}

/**
 * Why numbers are not to be settled as things stand: what is settled now is pencilled on folders for good. A size or a
 * quantity that cannot be read does not stop it: such a thing gets its place as one does of which the list says nothing,
 * and where it takes more room than was thought, `housing.tight` or `numbers.outgrown` says so once the list is mended.
 * @param catalogue as loaded from its folder
 */
export function stopsSettling(catalogue: Catalogue, settling: Settling): Finding[] {
  const all = [
    ...changedPlaces(catalogue),
    ...usedAgain(catalogue, settling),
    ...lostRows(catalogue),
    ...perhapsSettled(catalogue, settling),
  ];
  return all.map((finding) => ({ ...finding, weight: 'must' }));
}

/** With more look-alikes than this, the column of numbers itself was lost. */
const ONE_BY_ONE = 10;

function perhapsSettled({ settings }: Catalogue, { lookAlikes }: Arrangement): Finding[] {
  const codeOf = referenceCodes(settings);
  const rule = 'numbers.perhaps-settled';
  if (lookAlikes.length > ONE_BY_ONE) {
    const [first] = lookAlikes;
    return [
      {
        rule,
        weight: 'should',
        place: { file: 'list.csv', ...(first && { row: first.thing.row }), column: 'number' },
        found: `${lookAlikes.length} things have no settled number and look like as many whose numbers are missing from the list${first && `, such as “${maskNumbers(first.thing.title)}” like number ${first.row.number} (${codeOf(first.row.place)})`}.`,
        advice:
          'Put the column “number” back as it was; numbers.csv has the number of each title, and the list from before the last settling may be kept beside it as list.before-numbers.csv.',
      },
    ];
  }
  return lookAlikes.map(({ thing, row }) => ({
    rule,
    weight: 'should',
    place: { file: 'list.csv', row: thing.row, column: 'number' },
    found: `“${maskNumbers(thing.title)}” has no settled number, and looks like number ${row.number} (${codeOf(row.place)}), which is missing from the list.`,
    advice: `If it is the same, write ${row.number} into its cell of the column “number”. If it is another thing, write “removed” under “gone” in the row of number ${row.number} in numbers.csv; then it gets a number of its own.`,
  }));
}

function otherBoxes({ things, settled }: Catalogue): Finding[] {
  const rows = new Map(
    settled.flatMap((row) => (row.gone === undefined ? [[row.number, row] as const] : [])),
  );
  return things.flatMap((thing): Finding[] => {
    const row = thing.number === undefined ? undefined : rows.get(thing.number);
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
}

function gaps({ things, settled }: Catalogue, { lookAlikes }: Arrangement): Finding[] {
  const present = new Set(things.map(({ number }) => number));
  const named = new Set(lookAlikes.map(({ row }) => row));
  const gone = settled.filter(
    (row) => row.gone === undefined && !present.has(row.number) && !named.has(row),
  ).length;
  if (gone === 0) return [];
  return [
    {
      rule: 'numbers.gap',
      weight: 'consider',
      place: { file: 'numbers.csv' },
      found: `${gone === 1 ? 'One settled number belongs' : `${gone} settled numbers belong`} to nothing in the list any more.`,
      advice:
        'If that was meant, settle once more, and the gap is explained in numbers.csv. If not, put the row back under its number.',
    },
  ];
}

function elsewhere({ settings, folder }: Catalogue, { moves }: Arrangement): Finding[] {
  const codeOf = referenceCodes(settings);
  return moves.map(({ thing, from, to }) => ({
    rule: 'numbers.would-move',
    weight: 'consider',
    place: { file: 'list.csv', row: thing.row },
    found: `“${maskNumbers(thing.title)}” is settled as ${codeOf(from.place)}, under ${say(from)}, and would now be sorted under ${say(to)}.`,
    advice: `It may stay. To give it a new place and explain the old number: ${sayCommand('arrange', folder, '--settle', '--move')}`,
    source: 'common practice',
  }));
}

function say({ groups, filedUnder }: { groups: readonly string[]; filedUnder?: string | undefined }): string {
  return [...groups, ...(filedUnder === undefined ? [] : [filedUnder])].join(' > ');
}
