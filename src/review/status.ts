import { type Arrangement, freeNumbers } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { type Finding, WEIGHTS, type Weight } from '../catalogue/finding.ts';
import { SETTINGS_FILE } from '../catalogue/load-findings.ts';
import type { Traces } from '../catalogue/traces.ts';
import { isPath } from '../copies/index.ts';
import { labelsOf } from '../export/labels/labels-of.ts';
import { newLabels } from '../export/labels/printed.ts';
import { folderCount, foldersOf } from '../housing/placed.ts';
import { canTakeNumbers } from '../intake/numbers-not-written.ts';
import { HAZARDS } from './danger-hazards.ts';

/** Where a catalogue stands, in figures. Days are written YYYY-MM-DD. */
export interface Status {
  title: string;
  list: { file: string; things: number; withoutKind: number; withoutDate: number };
  shelf: { folders: number; boxes: number; packages: number };
  numbers: {
    settled: number;
    notSettled: number;
    /** Settled things that the list does not have any more; settling again says of each that it is gone. */
    notListed: number;
    /** Numbers to be filled into the list by hand before settling, since the program cannot write into its file. */
    toFillIn?: readonly string[];
  };
  /** How many digital copies the list names. */
  copies: number;
  /** Digital copies are not looked at, since that takes long. */
  findings: Record<Weight, number>;
  /** What keeps something from being boxed before somebody has looked at it: mould, ammunition. */
  notBoxed: readonly string[];
  /** Of those that must or should be mended, how many are on single things or boxes, not on the collection as a whole. */
  onThings: number;
  labels: { fresh: number; changed: number; printed: number };
  /** The last export into the usual folder. */
  exported?: { folder: string; day: string; before: boolean };
  /** The last package found beside the catalogue folder. */
  handedOver?: { path: string; day: string; before: boolean };
  /** Whether collection.yaml says who is to receive it all. */
  isPromised: boolean;
}

/**
 * Works out where a catalogue stands. `before` says of an export or a package that the catalogue was changed after it.
 * @param findings of the review
 */
export function statusOf(
  { settings, things, listFile, settled }: Catalogue,
  { aid, groups, boxes }: Arrangement,
  findings: readonly Finding[],
  { printed, exported, changed, packages }: Traces,
): Status {
  const live = new Set(settled.flatMap(({ number, gone }) => (gone === undefined ? [number] : [])));
  const numbers = new Set(things.map(({ number }) => number));
  const notSettled = things.filter(({ number }) => number === undefined || !live.has(number)).length;
  const toFillIn = canTakeNumbers(listFile) ? [] : freeNumbers({ things, settled });
  const labels = newLabels(labelsOf(aid), printed);
  const last = packages.toSorted((one, other) => (one.day < other.day ? 1 : -1))[0];
  return {
    title: settings.title,
    list: {
      file: listFile,
      things: things.length,
      withoutKind: things.filter(({ kind }) => kind === undefined).length,
      withoutDate: things.filter(({ date }) => date === undefined).length,
    },
    shelf: {
      folders: foldersOf(groups).reduce((sum, folder) => sum + folderCount(folder), 0),
      boxes: boxes.filter(({ type }) => type === 'box').length,
      packages: boxes.filter(({ type }) => type === 'package').length,
    },
    numbers: {
      settled: things.length - notSettled,
      notSettled,
      notListed: [...live].filter((number) => !numbers.has(number)).length,
      ...(toFillIn.length > 0 && { toFillIn }),
    },
    copies: new Set(things.flatMap(({ copies }) => copies.filter(isPath))).size,
    findings: byWeight(findings),
    notBoxed: HAZARDS.flatMap(({ name, notBoxed }) =>
      notBoxed !== undefined && findings.some(({ rule }) => rule === `danger.${name}`) ? [notBoxed] : [],
    ),
    onThings: findings.filter(
      ({ weight, place }) => (weight === 'must' || weight === 'should') && place.file !== SETTINGS_FILE,
    ).length,
    labels: {
      fresh: labels.fresh.length,
      changed: labels.changed.length,
      printed: labels.before.length,
    },
    ...(exported !== undefined && {
      exported: { folder: exported.folder, day: exported.day, before: exported.at < changed.at },
    }),
    // Of a package only the day is known.
    ...(last !== undefined && { handedOver: { ...last, before: last.day < changed.day } }),
    isPromised: settings.recipient !== undefined,
  };
}

function byWeight(findings: readonly Finding[]): Record<Weight, number> {
  const counts = Object.fromEntries(WEIGHTS.map((weight) => [weight, 0])) as Record<Weight, number>;
  for (const { weight } of findings) counts[weight] += 1;
  return counts;
}
