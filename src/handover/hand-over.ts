import { lstatSync, realpathSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { CatalogueError, type Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { sayCommand } from '../catalogue/say-command.ts';
import type { Thing } from '../catalogue/thing.ts';
import { unitsFrom } from '../catalogue/units.ts';
import { gatherCopies } from '../copies/index.ts';
import { privateAndOpen, review } from '../review/index.ts';
import type { SchemaPlaces } from '../xml/schema-folders.ts';
import { aboutBag } from './about-bag.ts';
import type { ByteStep } from './bag/index.ts';
import { type CopyToGive, copiesToGive } from './copies-to-give.ts';
import { type Given, thingsToGive } from './given.ts';
import type { GiveOptions, HeldBack } from './held-back.ts';
import { mentions } from './mentions.ts';
import { pack, placeOf } from './pack.ts';
import { packageFiles, validated } from './package-files.ts';
import { sharedCopies } from './shared-copies.ts';
import { copiesOfUnits } from './taken-in/copies.ts';
import { elsewhere } from './taken-in/elsewhere.ts';
import type { HeldUnit } from './taken-in/held-units.ts';

export interface HandOverOptions extends GiveOptions {
  /** One ZIP file instead of a folder. */
  zip?: boolean;
  /** Why the package is to be made although something must be mended. */
  despite?: string;
  schemas?: SchemaPlaces;
  /** Told of bytes read and written while the package is packed. */
  step?: ByteStep;
}

/** What came of a hand-over. Findings are said of the family's own list, and are not for the package. */
export interface HandedOver {
  /** Left out where the findings of weight `must` stopped it. */
  written?: {
    path: string;
    things: number;
    /** Of a finding aid that was taken in. */
    units?: number;
    /** Units of what is handed over that are restricted. */
    restricted: number;
    copies: number;
    files: number;
    bytes: number;
  };
  held: readonly HeldBack[];
  /** Units of a finding aid that was taken in, which stay with everything in them. */
  units: readonly HeldUnit[];
  findings: readonly Finding[];
  /** What goes, is private by what `check` finds, and is not held back. */
  open: readonly Thing[];
}

/**
 * Makes the transfer package of a catalogue at `target`. Whatever must be mended stops it, unless a reason is given;
 * nothing is written then. The catalogue is not touched.
 * @param today YYYY-MM-DD
 * @throws CatalogueError where the package cannot be made at all: a name to keep that means nothing, a copy that belongs
 * to what goes and to what stays, a file that cannot be read or written, something that stands at the target
 */
export async function handOver(
  catalogue: Catalogue,
  target: string,
  today: string,
  options: HandOverOptions = {},
): Promise<HandedOver> {
  const { folder } = catalogue;
  refusePlace(folder, placeOf(target, options.zip === true));
  const given = thingsToGive(catalogue, options, today);
  const { things } = given.catalogue;
  const { base } = given.catalogue;
  const shown = [...things, ...given.unitsAsThings.given];
  const paths = shown.flatMap(({ copies }) => copies);
  const facts = await gatherCopies(folder, paths, { afresh: true });
  const shared = await sharedCopies(
    folder,
    shown,
    [...given.held.map(({ thing }) => thing), ...given.unitsAsThings.staying],
    facts,
  );
  if (shared.length > 0) throw new CatalogueError(shared);

  const found = { facts, unlisted: [] };
  const own = arrangement(given.catalogue, today);
  const reviewed = review(given.catalogue, own, found, today).findings;
  const open = privateAndOpen(given.catalogue, own, today);
  const named = mentions(given, options.despite);
  const ofCopies = reviewed.filter(({ rule }) => rule === 'copies.location');
  const musts = [...named, ...reviewed].filter(({ weight }) => weight === 'must');
  const findings = [
    ...musts,
    ...unsettled(given),
    ...given.findings,
    ...elsewhere(given, facts),
    ...named.filter((one) => !musts.includes(one)),
    ...ofCopies,
  ];
  const { held, units } = given;
  if (musts.length > 0 && options.despite === undefined) return { held, units, findings, open };

  // As a list of its own, of which the first thing stands below the headings.
  const listed: Catalogue = {
    ...given.catalogue,
    things: things.map((thing, at) => ({ ...thing, row: at + 2 })),
    listFile: 'list.csv',
    sheets: [],
  };
  const arranged = arrangement(listed, today);
  const ofPackage = review(listed, arranged, found, today).findings;
  const copies =
    base === undefined ? copiesToGive(arranged, listed.settings, facts) : copiesOfUnits(arranged.aid, facts);
  const wrong = ofPackage.filter(({ weight }) => weight === 'must');
  // A mention overruled is no fault of what is given, and to speak of it would be one.
  const made =
    options.despite === undefined || wrong.length === 0
      ? undefined
      : { reason: options.despite, findings: wrong };
  const { files, summary } = packageFiles(listed, copies, ofPackage, today, made);
  const written = await pack(target, {
    files: await validated(files, options.schemas ?? {}),
    copies: copies.flatMap((copy) => (copy.name === undefined ? [] : [copied(folder, copy, copy.name)])),
    info: aboutBag(summary, listed.settings, today),
    folder,
    zip: options.zip === true,
    ...(options.step !== undefined && { step: options.step }),
  });
  const there = copies.filter(({ name }) => name !== undefined).length;
  const restricted = summary.restricted.length;
  const counts = {
    things: things.length,
    restricted,
    ...(base !== undefined && { units: countUnits(base) }),
  };
  return { written: { ...written, ...counts, copies: there }, held, units, findings, open };
}

const countUnits = ({ collection }: FindingAid): number => [...unitsFrom(collection)].length;

const copied = (folder: string, { path, facts }: CopyToGive, name: string) => ({
  path: `copies/${name}`,
  from: join(folder, path),
  sha256: facts.sha256 ?? '',
});

/** A package within the catalogue would change it, and could itself be taken for a part of it. */
function refusePlace(folder: string, target: string): void {
  const refuse = (rule: string, found: string, advice: string) =>
    new CatalogueError([{ rule, weight: 'must', place: { file: target }, found, advice }]);
  if (lstatSync(target, { throwIfNoEntry: false }) !== undefined) {
    const found = 'Something of this name is there already. A package is never written over another.';
    throw refuse('bag.target-there', found, 'Choose another name, or move what is there.');
  }
  let place = dirname(resolve(target));
  try {
    place = realpathSync(place);
  } catch {}
  const way = relative(realpathSync(folder), join(place, basename(target)));
  if (way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way)) return;
  const found = 'The package would lie within the catalogue itself, which is not to be changed by this.';
  throw refuse('hand-over.inside', found, 'Choose a place beside it, or on another disk.');
}

/** Codes that are not settled may be others tomorrow, and those on the folders are then wrong. */
function unsettled({ catalogue: { folder, settled, things } }: Given): Finding[] {
  const known = new Set(settled.map(({ number }) => number));
  const loose = things.filter(({ number }) => number === undefined || !known.has(number)).length;
  if (loose === 0) return [];
  const found =
    loose === things.length
      ? 'The numbers are not settled, so the reference codes in the package are not the ones on any folder.'
      : `${loose} things have no settled number yet, so their reference codes may change.`;
  const advice = `Settle them first, and make the package again: ${sayCommand('arrange', folder, '--settle')}`;
  return [{ rule: 'hand-over.unsettled', weight: 'should', place: {}, found, advice }];
}
