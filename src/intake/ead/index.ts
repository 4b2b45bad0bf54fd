import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { people } from './agents.ts';
import { type Missing, readControl } from './control.ts';
import { at, type EadVersion, type Found } from './found.ts';
import { readHeader } from './header.ts';
import { eadTree } from './tree.ts';
import { collectionOf, type FoundUnit, type Reading } from './units.ts';

/** A finding aid that was read, and what had to be mended on the way. */
export interface ReadEad {
  version: EadVersion;
  aid: FindingAid;
  /** As sentences. */
  repaired: string[];
  /** The finding aid as it was found, without its description of the material. */
  shell: Found;
  found: ReadonlyMap<Component, FoundUnit>;
}

/**
 * Reads a finding aid in EAD3 or EAD 2002. What was found comes with it, for keeping what the model does not hold.
 * @param file its name, for messages
 * @param today YYYY-MM-DD, for events of which the file tells no date
 * @throws CatalogueError where it cannot be read; see eadTree
 */
export async function readEad(bytes: Uint8Array, file: string, today: string): Promise<ReadEad> {
  const { version, root, ids, repaired } = await eadTree(bytes, file);
  const archdesc = at(root, 'archdesc') ?? { name: 'archdesc', attributes: {}, children: [] };
  const agents = people();
  const reading: Reading = { agents, ids, repaired: new Map(), found: new Map() };
  const collection = collectionOf(archdesc, reading);
  const { repository } = collection;
  const control = controlOf(root, version, {
    title: collection.title,
    date: today,
    ...(repository !== undefined && { keeper: repository }),
  });
  const shell = { ...root, children: root.children.filter((child) => child !== archdesc) };
  const aid: FindingAid = {
    ...({ format: 'kinfonds finding aid', version: 1 } as const),
    control,
    people: agents.list(),
    collection,
  };
  const counted = [...reading.repaired].map(([says, count]) =>
    count === 1 ? says : `${says} (${count} times)`,
  );
  return { version, aid, repaired: [...repaired, ...counted], shell, found: reading.found };
}

/** The record of the description in the shell of a finding aid, in either version. */
export function controlOf(root: Found, version: EadVersion, missing: Missing): FindingAid['control'] {
  const name = version === 'ead3' ? 'control' : 'eadheader';
  const element = at(root, name) ?? { name, attributes: {}, children: [] };
  return version === 'ead3' ? readControl(element, missing) : readHeader(element, missing);
}
