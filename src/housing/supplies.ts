import { csvRecord } from '../catalogue/csv-cell.ts';
import { textTable } from '../catalogue/text-table.ts';
import { FINGER } from './fill-boxes.ts';
import { INCH } from './measures.ts';
import type { Box, Filled, Holder } from './model.ts';

/** What to get before things can be put away. */
export interface Supply {
  what: string;
  number: number;
  /** Outside measures, the longer side first; of a spacer the side that it fills. */
  millimetres: string;
  /** The same to the nearest eighth of an inch. */
  inches: string;
  material: string;
  use: string;
}

/** How many holders of one kind are needed. */
interface HoldersNeeded {
  holder: Holder;
  number: number;
}

const HEADINGS = ['number', 'what', 'millimetres', 'inches', 'material', 'use'];
const HOLDER_TYPES: readonly Holder['type'][] = ['folder', 'envelope', 'sleeve'];

/** What to get: boxes first, then spacers, folders, envelopes and sleeves, of each the most needed first. */
export function supplies({
  holders,
  filled,
}: {
  holders: readonly HoldersNeeded[];
  filled: readonly Filled[];
}): Supply[] {
  return [
    ...mostFirst([...boxesById(filled).values()].map(boxesToGet)),
    ...mostFirst([...boxesById(filled.filter(({ advice }) => advice === 'spacer')).values()].map(spacers)),
    ...HOLDER_TYPES.flatMap((type) => mostFirst(holdersOf(type, holders).map(holdersToGet))),
  ];
}

/** Supplies as CSV (RFC 4180, UTF-8 with a byte order mark for spreadsheets). */
export const suppliesCsv = (rows: readonly Supply[]): string =>
  `\uFEFF${[HEADINGS, ...rows.map(cellsOf)].map(csvRecord).join('')}`;

/** Supplies as a table of plain text, a line each. */
export const suppliesTable = (rows: readonly Supply[]): string[] =>
  textTable([HEADINGS, ...rows.map(cellsOf)]);

/** Why there are more folders to get than the outline numbers; blank where there are not. */
export const sayFoldersApart = (number: number): string =>
  number === 0 ? '' : `Folders: ${number} more than in the outline, for what lies apart.`;

const cellsOf = ({ what, number, millimetres, inches, material, use }: Supply) => [
  String(number),
  what,
  millimetres,
  inches,
  material,
  use,
];

function boxesToGet({ box, those }: { box: Box; those: readonly Filled[] }): Supply {
  const { width, height, depth } = box.outside;
  return {
    ...named(box, those.length),
    ...measured(width, height, depth),
    material: box.material,
    use: box.use,
  };
}

/** Spacers for one kind of box. How thick each has to be depends on what is left in it; room for a finger stays. */
function spacers({ box, those }: { box: Box; those: readonly Filled[] }): Supply {
  const left = those.map(({ slack }) => slack - FINGER);
  const [least, most] = [Math.floor(Math.min(...left)), Math.floor(Math.max(...left))];
  return {
    ...named(
      {
        one: `spacer for ${/^[aeiou]/i.test(box.one) ? 'an' : 'a'} ${box.one}`,
        many: `spacers for ${box.many}`,
      },
      those.length,
    ),
    ...measured(box.face.long, box.face.short),
    material: 'acid-free board',
    use: `folded ${least === most ? least : `${least} to ${most}`} mm thick, so that nothing leans`,
  };
}

const holdersToGet = ({ holder, number }: HoldersNeeded): Supply => ({
  ...named(holder, number),
  ...measured(holder.outside.long, holder.outside.short),
  material: holder.material,
  use: holder.use,
});

function boxesById(filled: readonly Filled[]): Map<string, { box: Box; those: Filled[] }> {
  const found = new Map<string, { box: Box; those: Filled[] }>();
  for (const one of filled) {
    const same = found.get(one.box.id);
    if (same === undefined) found.set(one.box.id, { box: one.box, those: [one] });
    else same.those.push(one);
  }
  return found;
}

function holdersOf(type: Holder['type'], holders: readonly HoldersNeeded[]): HoldersNeeded[] {
  const found = new Map<string, HoldersNeeded>();
  for (const { holder, number } of holders) {
    if (holder.type !== type || number === 0) continue;
    found.set(holder.id, { holder, number: number + (found.get(holder.id)?.number ?? 0) });
  }
  return [...found.values()];
}

const named = ({ one, many }: { one: string; many: string }, number: number) => ({
  what: number === 1 ? one : many,
  number,
});

const measured = (...millimetres: number[]) => ({
  millimetres: millimetres.map(Math.round).join(' × '),
  inches: millimetres.map(inEighths).join(' × '),
});

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

function inEighths(millimetres: number): string {
  const eighths = Math.round((millimetres / INCH) * 8);
  const whole = Math.floor(eighths / 8);
  return `${whole === 0 ? '' : whole}${EIGHTHS[eighths % 8]}` || '0';
}

const mostFirst = (rows: readonly Supply[]): Supply[] => rows.toSorted((a, b) => b.number - a.number);
