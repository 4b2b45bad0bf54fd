import { type Component, type Level, level } from '../../catalogue/component.ts';
import type { People } from './agents.ts';
import { identified } from './did.ts';
import { at, elementsOf, type Found } from './found.ts';
import { isId } from './ids.ts';
import { described } from './notes.ts';
import { isSeen, lineOf } from './text.ts';

/** `c`, `c01` to `c12`: a unit of description below the whole. */
export const isComponent = ({ name }: Found): boolean => /^c(?:0[1-9]|1[0-2])?$/.test(name);

/** What stands in a unit's element without being part of the unit itself. */
const APART = new Set(['did', 'dsc', 'thead', 'head']);

/** A unit as read, before it has the units below it, and an id where the file gives it none. */
export type Unit = Omit<Component, 'id' | 'children'> & { id?: string };

/**
 * Reads a unit of description from its element; the units below it, if they are still in it, are passed over.
 * @param hasParts whether there are units below it
 */
export function readUnit(element: Found, people: People, hasParts: boolean): Unit {
  const did = at(element, 'did') ?? { name: 'did', attributes: {}, children: [] };
  const { notes, title, ...of } = identified(did, people);
  const beside = elementsOf(element).filter((child) => !APART.has(child.name) && !isComponent(child));
  const { generalNotes, ...others } = described(beside, people);
  const own = element.attributes.id;
  return {
    ...(isId(own) && { id: own }),
    ...levelOf(element, hasParts),
    ...of,
    title: title ?? standIn(of, element, did),
    ...others,
    generalNotes: [...notes, ...generalNotes],
  };
}

/** Without a title a unit is called by what else it has: its date, its number, its box. */
function standIn(
  { dates, referenceCode, containers }: Pick<Unit, 'dates' | 'referenceCode' | 'containers'>,
  element: Found,
  did: Found,
): string {
  const [container] = containers;
  return (
    dates[0]?.expression ??
    referenceCode ??
    (container && `${container.type} ${container.number}`) ??
    lineOf(at(element, 'head')) ??
    lineOf(at(did, 'head')) ??
    'Untitled'
  );
}

function levelOf({ name, attributes }: Found, hasParts: boolean): { level: Level; otherLevel?: string } {
  const said = attributes.level?.trim();
  const known = level.options.find((one) => one === said);
  const other = isSeen(attributes.otherlevel) ? attributes.otherlevel : undefined;
  if (known !== undefined)
    return { level: known, ...(other !== undefined && known === 'otherlevel' && { otherLevel: other }) };
  if (isSeen(said)) return { level: 'otherlevel', otherLevel: said };
  if (name === 'archdesc') return { level: 'collection' };
  return { level: hasParts ? 'series' : 'file' };
}
