import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { foldersText, type NumberColumn } from '../catalogue/numbers-file.ts';
import { once } from '../catalogue/once.ts';
import { MOVED, type Settled } from '../catalogue/settled.ts';
import { disagree, type Said } from './numbers-findings.ts';
import { sharedFolders } from './numbers-folders.ts';
import { groupContradictions } from './numbers-groups.ts';

/** A settled number with its row in the file, as a spreadsheet counts. */
export interface SettledRow {
  row: number;
  settled: Settled;
}

/** A row with its place and that of its folder as texts, by which they are compared. */
export interface Keyed extends SettledRow {
  place: string;
  folder: string;
}

/** What all rows with the same key must say alike. */
interface Agreement {
  column: NumberColumn;
  /** What it is that they say, for a sentence. */
  about(key: string): string;
  among(row: Settled): boolean;
  key(row: Keyed): string;
  /** What is compared; what is shown instead, where that differs. */
  value(row: Keyed): string;
  shown?(row: Keyed): string;
}

const folded = once(fold);
const anyRow = () => true;
const isThere = ({ gone }: Settled) => gone === undefined;
const folderOf = ({ folder }: Keyed) => folder;
const rowOf = ({ row }: Keyed) => String(row);

const OF_THINGS: readonly Agreement[] = [
  {
    column: 'number',
    about: (number) => `The place of number “${number}”`,
    // What has been moved stands twice: where it lay, and where it lies.
    among: ({ number, gone }) => number !== '' && gone?.startsWith(MOVED) !== true,
    key: ({ settled }) => settled.number,
    value: rowOf,
    shown: ({ place }) => place,
  },
  {
    column: 'place',
    about: (place) => `The thing at ${place}`,
    among: anyRow,
    key: ({ place }) => place,
    value: rowOf,
    shown: ({ settled }) => settled.title,
  },
];

// A row for what is gone keeps its number and its place for good; where its folder stands now, it need not know.
const OF_FOLDERS: readonly Agreement[] = [
  {
    column: 'filed under',
    about: (folder) => `What the folder at ${folder} is filed under`,
    among: anyRow,
    key: folderOf,
    value: ({ settled }) => folded(settled.filedUnder ?? ''),
    shown: ({ settled }) => settled.filedUnder ?? '',
  },
  {
    column: 'folder',
    about: (folder) => `The number on the folder at ${folder}`,
    among: (row) => isThere(row) && row.folder !== undefined,
    key: folderOf,
    value: ({ settled }) => foldersText(settled),
  },
  {
    column: 'folder kind',
    about: (folder) => `The kind of the folder at ${folder}`,
    among: (row) => isThere(row) && row.folder !== undefined,
    key: folderOf,
    value: ({ settled }) => settled.folderKind ?? '',
  },
  {
    column: 'box',
    about: (folder) => `The box of the folder at ${folder}`,
    among: (row) => isThere(row) && row.folder !== undefined,
    key: folderOf,
    value: ({ settled }) => settled.box ?? '',
  },
  {
    column: 'box kind',
    about: (box) => `The kind of box ${box}`,
    among: (row) => isThere(row) && row.box !== undefined && row.boxKind !== undefined,
    key: ({ settled }) => settled.box ?? '',
    value: ({ settled }) => settled.boxKind ?? '',
  },
];

/** What the rows say against each other, each contradiction once: at the first row that is against an earlier one. */
export function contradictions(rows: readonly SettledRow[], file: string): Finding[] {
  const keyed = rows.map(({ row, settled }): Keyed => {
    const place = `/${settled.place.join('/')}`;
    return { row, settled, place, folder: place.slice(0, place.lastIndexOf('/')) };
  });
  const changes = keyed.filter((row, index) => !saysTheSame(row, keyed[index - 1]));
  return [
    ...OF_THINGS.flatMap((agreement) => broken(agreement, keyed, file)),
    ...OF_FOLDERS.flatMap((agreement) => broken(agreement, changes, file)),
    ...groupContradictions(changes, file),
    ...sharedFolders(changes, file),
  ];
}

/** Whether a row says of its folder what the row before it does, as most do; the rest need not be looked at twice. */
function saysTheSame(row: Keyed, before: Keyed | undefined): boolean {
  if (before === undefined || row.folder !== before.folder) return false;
  const [one, other] = [before.settled, row.settled];
  return (
    one.groups === other.groups &&
    one.filedUnder === other.filedUnder &&
    one.folder === other.folder &&
    one.lastFolder === other.lastFolder &&
    one.folderKind === other.folderKind &&
    one.box === other.box &&
    one.boxKind === other.boxKind &&
    one.gone === other.gone
  );
}

function broken({ column, about, among, key, value, shown = value }: Agreement, rows: Keyed[], file: string) {
  const first = new Map<string, Keyed>();
  const told = new Set<string>();
  const findings: Finding[] = [];
  const said = (row: Keyed): Said => ({ row: row.row, value: shown(row) });
  for (const row of rows) {
    if (!among(row.settled)) continue;
    const of = key(row);
    const one = first.get(of);
    if (one === undefined) {
      first.set(of, row);
      continue;
    }
    const says = value(row);
    if (value(one) === says || told.has(`${of}\n${says}`)) continue;
    told.add(`${of}\n${says}`);
    findings.push(disagree({ file, row: row.row, column }, about(of), said(row), said(one)));
  }
  return findings;
}
