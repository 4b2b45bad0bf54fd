import { readFile as readBytes, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { CatalogueError } from '../catalogue/finding.ts';
import { whyUnreadable } from '../catalogue/why-unreadable.ts';
import type { ReadFindingAid } from '../compare/index.ts';
import { isBag } from './in-bag.ts';

/** One of the two to be compared, as it was read: a catalogue still to be arranged, or a finding aid. */
export type Side = { path: string } & ({ catalogue: Catalogue } | ReadFindingAid);

const FILE = /\.(?:xml|ead|json)$/i;

/** @throws CatalogueError where it cannot be read, with everything that is wrong with it */
export async function readSide(path: string): Promise<Side> {
  const there = await stat(path).catch(() => undefined);
  // What is named like a file is not meant for a folder.
  if (there?.isFile() === true || (there === undefined && FILE.test(path))) {
    return { path, ...(await readAid(path)) };
  }
  if (there?.isDirectory() === true && (await isBag(path)))
    return { path, ...(await readAid(await aidInBag(path))) };
  const { loadCatalogue } = await import('../catalogue/load.ts');
  return { path, catalogue: await loadCatalogue(path) };
}

async function readAid(path: string): Promise<ReadFindingAid> {
  const { readFindingAid } = await import('../compare/index.ts');
  const bytes = await readBytes(path).catch(whyUnreadable);
  if (typeof bytes === 'string')
    throw new CatalogueError([
      { rule: 'compare.unreadable', weight: 'must', place: { file: path }, found: bytes },
    ]);
  return readFindingAid(bytes, path);
}

/** Where a package for handing over has its finding aid, the form that holds most first. */
const AIDS_IN_BAG = ['finding-aid.json', 'ead3.xml', 'ead2002.xml'].map((name) => `data/finding-aid/${name}`);

/** @throws CatalogueError where a bag has none, as one that another program made */
async function aidInBag(bag: string): Promise<string> {
  for (const name of AIDS_IN_BAG) {
    const path = join(bag, name);
    if ((await stat(path).catch(() => undefined))?.isFile() === true) return path;
  }
  throw new CatalogueError([
    {
      rule: 'compare.bag',
      weight: 'must',
      place: { file: bag },
      found: `This folder is a package (a bag: there is a bagit.txt in it), and has no finding aid where one is looked for: ${AIDS_IN_BAG.join(', ')}.`,
      advice: 'Name the finding aid itself, in EAD3 or EAD 2002, if there is one elsewhere in the package.',
    },
  ]);
}

/**
 * The day on which a catalogue that names none is taken to be described: that of the finding aid it is compared with, so
 * that to compare it on another day makes no difference.
 */
export async function dayOf(sides: readonly Side[]): Promise<string> {
  const { NO_DAY } = await import('../compare/index.ts');
  const days = sides.flatMap((side) => ('aid' in side ? [side.aid.control.history[0]?.date] : []));
  const { localDay } = await import('../catalogue/local-day.ts');
  return days.find((day) => day !== undefined && day !== NO_DAY) ?? localDay();
}

export async function arranged(side: Side, day: string): Promise<ReadFindingAid> {
  if ('aid' in side) return side;
  const { arrangement } = await import('../arrange/index.ts');
  return { aid: arrangement(side.catalogue, day).aid };
}
