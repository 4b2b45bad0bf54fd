import type { Agent, AgentLink } from '../../catalogue/agent.ts';
import type {
  AccessPoint,
  Component,
  DateStatement,
  Extent,
  LanguageUse,
} from '../../catalogue/component.ts';
import type { FindingAid, Recipient } from '../../catalogue/finding-aid.ts';
import { once } from '../../catalogue/once.ts';
import { shared, type XmlElement } from '../../xml/element.ts';
import { names } from './names.ts';

/** What every part of a writer of EAD may need beside the component at hand. */
export interface Context {
  /** From which list the codes of languages are to be. */
  languageCodes: Recipient['languageCodes'];
  agents: readonly Agent[];
  /** The name of an agent in a role (or in none), made once however often it occurs; undefined for no known agent. */
  nameOf: (role: string | undefined) => (agentId: string) => XmlElement | undefined;
  datesOf: (unit: Component) => readonly XmlElement[];
  extentsOf: (unit: Component) => readonly XmlElement[];
  peopleOf: (links: readonly AgentLink[]) => readonly XmlElement[];
  pointsOf: (points: readonly AccessPoint[]) => readonly XmlElement[];
  originationOf: (creators: readonly AgentLink[]) => readonly XmlElement[];
  /** The languages of a unit, where there is no more to say of them. */
  languagesOf: (languages: readonly LanguageUse[]) => XmlElement;
}

/** How a version of EAD writes what occurs again and again. */
interface Parts {
  /** One name in a role. */
  name: (agent: Agent, role: string | undefined) => XmlElement;
  /** One statement of date. */
  date: (statement: DateStatement) => XmlElement | readonly XmlElement[];
  /** One counted extent. */
  extent: (extent: Extent) => XmlElement;
  /** One access point other than an agent. */
  accessPoint: (point: AccessPoint) => XmlElement;
  /** The makers of a unit, by their names. */
  origination: (names: readonly XmlElement[]) => readonly XmlElement[];
  /** Languages of a unit, in codes of that list. */
  languages: (languages: readonly LanguageUse[], codes: Context['languageCodes']) => XmlElement;
}

/**
 * What units have in common (a name, the dates of one year, a place) is made once for all of them. Dates and extents of
 * a unit with parts are its own, and kept they would only take room.
 */
export function contextOf(
  { people, recipient }: Pick<FindingAid, 'people' | 'recipient'>,
  { name, date, extent, accessPoint, origination, languages }: Parts,
): Context {
  const agents = new Map(people.map((agent) => [agent.id, agent]));
  const languageCodes = recipient?.languageCodes ?? 'iso639-2b';
  const nameOf = once((role: string | undefined) =>
    once((id: string) => {
      const agent = agents.get(id);
      return agent && shared(name(agent, role));
    }),
  );
  const pointOf = once((point: AccessPoint) => shared(accessPoint(point)));
  const datesOfItem = once((statements: readonly DateStatement[]) => statements.flatMap(date).map(shared));
  const extentsOfItem = once((extents: readonly Extent[]) => extents.map((one) => shared(extent(one))));
  return {
    languageCodes,
    agents: people,
    nameOf,
    datesOf: ({ dates, children }) => (children.length === 0 ? datesOfItem(dates) : dates.flatMap(date)),
    extentsOf: ({ extents, children }) =>
      children.length === 0 ? extentsOfItem(extents) : extents.map(extent),
    peopleOf: once((links: readonly AgentLink[]) => names(links, { nameOf })),
    pointsOf: once((points: readonly AccessPoint[]) => points.map(pointOf)),
    originationOf: once((creators: readonly AgentLink[]) =>
      origination(names(creators, { nameOf }, 'creator')).map(shared),
    ),
    languagesOf: once((uses: readonly LanguageUse[]) => shared(languages(uses, languageCodes))),
  };
}
