import { stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { CatalogueError } from '../catalogue/finding.ts';
import { typed } from '../catalogue/say-command.ts';

/** Whether a folder is a package for handing over, or another bag: RFC 8493, 2.1.1. */
export const isBag = async (folder: string): Promise<boolean> =>
  (await stat(join(folder, 'bagit.txt')).catch(() => undefined))?.isFile() === true;

/**
 * A bag may hold what its manifests list and nothing else (RFC 8493, 3): a catalogue begun in one would spoil it.
 * @throws CatalogueError where a folder is a bag, or lies in one
 */
export async function refuseInBag(folder: string): Promise<void> {
  const bag = await bagAround(resolve(folder));
  if (bag === undefined) return;
  const isItself = bag === resolve(folder);
  const said = isItself ? folder : bag;
  const example = typed(join(said, 'data', 'finding-aid', 'ead3.xml'));
  throw new CatalogueError([
    {
      rule: 'begin.bag',
      weight: 'must',
      place: { file: folder },
      found: `This folder ${isItself ? 'is a package' : `lies in a package, ${bag}`} (a bag: there is a bagit.txt in it). Files put into it would make it invalid, for it may hold only what its lists of checksums name.`,
      advice: `Begin in another folder. To work on what a package describes, take in its finding aid: kinfonds take-in ${example} --into NEW-FOLDER`,
    },
  ]);
}

/** The nearest folder, from this one upwards, that is a bag. */
async function bagAround(folder: string): Promise<string | undefined> {
  for (let here = folder; ; here = dirname(here)) {
    if (await isBag(here)) return here;
    if (dirname(here) === here) return undefined;
  }
}
