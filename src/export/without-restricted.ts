import type { AgentLink } from '../catalogue/agent.ts';
import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { isRestricted } from '../catalogue/restricted.ts';
import { restated } from './restate.ts';

/**
 * The finding aid without what is restricted, and without what only that carried:
 *
 * - A unit whose access conditions say `restricted` goes with everything below it, and so does a group of which
 *   nothing is left. The collection itself stays; if it is restricted, only its identity and its conditions do.
 * - People, places, subjects, kinds and languages go that nothing else carries, and ties to people who went. The
 *   creators of the collection stay: they are named for the whole.
 * - Units above something that went are stated anew from what is left: dates, counts, and the titles and summaries
 *   that were made by counting (see `restated`). What cannot be counted again (room on the shelf) is not stated.
 * - Running texts stay as somebody wrote them, and reference codes as they were settled, so that there may be gaps
 *   among the codes. Whoever publishes has to read the texts for what they give away.
 *
 * Where nothing is restricted the very same finding aid comes back.
 */
export function withoutRestricted(aid: FindingAid): FindingAid {
  const { collection } = aid;
  if (isRestricted(collection))
    return { ...aid, control: bare(aid), people: [], collection: identity(collection) };
  const parting: Parting = { gone: [], lessened: new Set() };
  const kept = withoutClosed(collection, parting);
  if (parting.gone.length === 0) return aid;
  const lost = carriedBy(parting.gone);
  for (const key of carriedBy([kept], parting.lessened)) lost.delete(key);
  const isLeft = (key: string) => !lost.has(key);
  const top = { ...without(kept, isLeft), creators: collection.creators };
  return { ...aid, control: bare(aid), people: peopleLeft(aid, isLeft), collection: top };
}

/** The control of the description, without what an earlier finding aid said there of the whole. */
const bare = ({ control }: FindingAid): FindingAid['control'] => ({ ...control, kept: undefined });

interface Parting {
  gone: Component[];
  /** Units of which something went, as they are now: what they say was said of the whole. */
  lessened: Set<Component>;
}

/** A unit with what is left below it; what went is noted. The very same unit where nothing went. */
function withoutClosed(unit: Component, parting: Parting): Component {
  const { gone, lessened } = parting;
  const before = gone.length;
  const children: Component[] = [];
  for (const child of unit.children) {
    if (isRestricted(child)) {
      gone.push(child);
      continue;
    }
    const left = withoutClosed(child, parting);
    if (left.children.length === 0 && child.children.length > 0) gone.push({ ...child, children: [] });
    else children.push(left);
  }
  if (gone.length === before) return unit;
  const left = restated({ ...unit, children }, unit);
  lessened.add(left);
  return left;
}

/** What units carry that others may carry too, as keys; what is said of `but` does not count. */
function carriedBy(
  units: readonly Component[],
  but: ReadonlySet<Component> = new Set(),
  keys: Set<string> = new Set(),
): Set<string> {
  for (const unit of units) {
    carriedBy(unit.children, but, keys);
    if (but.has(unit)) continue;
    for (const { agent } of [...unit.creators, ...unit.people]) keys.add(agentKey(agent));
    for (const point of unit.accessPoints) keys.add(pointKey(point));
    for (const use of unit.languages) keys.add(languageKey(use));
  }
  return keys;
}

const agentKey = (id: string) => `agent ${id}`;
const pointKey = ({ type, term }: Component['accessPoints'][number]) => `${type} ${term}`;
const languageKey = ({ code, name }: Component['languages'][number]) => `language ${code} ${name}`;

/** A unit and all below it without what only the lost ones carried. */
function without(unit: Component, isLeft: (key: string) => boolean): Component {
  const linked = (links: readonly AgentLink[]) => links.filter(({ agent }) => isLeft(agentKey(agent)));
  const languages = unit.languages.filter((use) => isLeft(languageKey(use)));
  return {
    ...unit,
    creators: linked(unit.creators),
    people: linked(unit.people),
    accessPoints: unit.accessPoints.filter((point) => isLeft(pointKey(point))),
    // DACS 4.5 asks for languages; where none is left, none is known.
    languages: languages.length > 0 || unit.languages.length === 0 ? languages : [UNDETERMINED],
    children: unit.children.map((child) => without(child, isLeft)),
  };
}

const UNDETERMINED = { code: 'und', name: 'Undetermined' };

function peopleLeft({ people, collection }: FindingAid, isLeft: (key: string) => boolean) {
  const creators = new Set(collection.creators.map(({ agent }) => agent));
  const stays = (id: string) => creators.has(id) || isLeft(agentKey(id));
  return people
    .filter(({ id }) => stays(id))
    .map(({ relations, ...agent }) => ({
      ...agent,
      ...(relations !== undefined && { relations: relations.filter((relation) => stays(relation.agent)) }),
    }));
}

/** Of a collection that is closed as a whole: that it is there, who keeps it, and that it is closed. */
const identity = ({
  id,
  level,
  referenceCode,
  title,
  repository,
  accessConditions,
}: Component): Component => ({
  id,
  level,
  referenceCode,
  otherIdentifiers: [],
  title,
  dates: [],
  extents: [],
  creators: [],
  repository,
  languages: [],
  containers: [],
  digitalCopies: [],
  accessConditions,
  generalNotes: [],
  people: [],
  accessPoints: [],
  children: [],
});
