import { type Component, type Level, level } from '../../catalogue/component.ts';
import { nothing } from '../../catalogue/nothing.ts';
import type { People } from './agents.ts';
import { identify } from './did.ts';
import { at, type Found } from './found.ts';
import { describe } from './notes.ts';
import { isSeen, lineOf } from './text.ts';

const NUMBERED = Array.from({ length: 12 }, (_, index) => `c${String(index + 1).padStart(2, '0')}`);
const COMPONENTS: ReadonlySet<string> = new Set(['c', ...NUMBERED]);

/** `c`, `c01` to `c12`: a unit of description below the whole. */
export const isComponent = ({ name }: Found): boolean => COMPONENTS.has(name);

/** What stands in a unit's element without being a note or the like. */
const APART: ReadonlySet<string> = new Set(['did', 'dsc', 'thead', 'head', ...COMPONENTS]);

const NO_DID: Found = { name: 'did', attributes: {}, children: [] };

/**
 * Reads a unit of description from its element; the units below it, if they are still in it, are passed over. The
 * fields are put into one object as they are found: putting several objects together took a third of the time.
 * @param id the unit has in the model
 * @param hasParts whether there are units below it
 */
export function readUnit(element: Found, people: People, id: string, hasParts: boolean): Component {
  const unit: Component = {
    id,
    level: 'file',
    title: '',
    ...nothing(),
    children: [],
  };
  setLevel(unit, element, hasParts);
  const did = at(element, 'did') ?? NO_DID;
  identify(unit, did, people);
  if (unit.title === '') unit.title = standIn(unit, element, did);
  for (const child of element.children)
    if (typeof child !== 'string' && !APART.has(child.name)) describe(unit, child, people);
  return unit;
}

/** Without a title a unit is called by what else it has: its date, its number, its box. */
function standIn({ dates, referenceCode, containers }: Component, element: Found, did: Found): string {
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

const LEVELS: ReadonlySet<string> = new Set(level.options);
const isLevel = (said: string | undefined): said is Level => said !== undefined && LEVELS.has(said);

function setLevel(unit: Component, { name, attributes }: Found, hasParts: boolean): void {
  const said = attributes.level?.trim();
  const other = isSeen(attributes.otherlevel) ? attributes.otherlevel : undefined;
  if (isLevel(said)) {
    unit.level = said;
    if (other !== undefined && said === 'otherlevel') unit.otherLevel = other;
  } else if (isSeen(said)) {
    unit.level = 'otherlevel';
    unit.otherLevel = said;
  } else if (name === 'archdesc') unit.level = 'collection';
  else unit.level = hasParts ? 'series' : 'file';
}
