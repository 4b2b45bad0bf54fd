import type { Agent } from '../../catalogue/agent.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from './context.ts';
import { descriptiveNote, listOf } from './text.ts';

/**
 * `relations`: to other agents (ISAAR(CPF) 5.3), and to the collection (6). Only what this agent's own entry states is
 * written: "daughter" is not turned into the other's "mother".
 */
export function relations(agent: Agent, aid: FindingAid, context: Context): XmlElement[] {
  return listOf('relations', [...toAgents(agent, context), ...toCollection(agent, aid, context)]);
}

function toAgents(
  { relations: stated = [] }: Agent,
  { agentOf, hasRecord, recordIdOf }: Context,
): XmlElement[] {
  return stated.flatMap(({ agent: id, as }) => {
    const target = agentOf(id);
    if (target === undefined) return [];
    const valueURI = hasRecord(target) ? pointer(recordIdOf(target)) : undefined;
    return [
      element('relation', {}, [
        element('targetEntity', { targetType: target.type, valueURI }, [
          element('part', {}, target.authorizedForm ?? target.name),
        ]),
        element('targetRole', {}, as),
      ]),
    ];
  });
}

const RELATION = { creator: 'creatorOf', maker: 'associatedWith', subject: 'subjectOf' };

/** The collection as a resource: what the agent is to it, and the finding aid that describes it. */
function toCollection(agent: Agent, { control, collection }: FindingAid, context: Context): XmlElement[] {
  const occurrence = context.occurrenceOf(agent);
  if (occurrence === undefined) return [];
  const { as, roles } = occurrence;
  const { title, referenceCode } = collection;
  const notes = [
    ...(as === 'maker' ? ['Maker of something in the collection.'] : []),
    ...(roles.size === 0 ? [] : [`In the finding aid as ${[...roles].join(', ')}.`]),
  ];
  return [
    element('relation', {}, [
      element('targetEntity', { targetType: 'resource', valueURI: pointer(control.recordId) }, [
        element('part', { localType: 'title' }, title),
        ...(referenceCode === undefined
          ? []
          : [element('part', { localType: 'referenceCode' }, referenceCode)]),
      ]),
      element('relationType', {}, RELATION[as]),
      ...descriptiveNote(notes.length === 0 ? undefined : notes.join(' ')),
    ]),
  ];
}

/** The id of a record as a reference relative to where the records lie (RFC 3986, 4.2). */
const pointer = (recordId: string) => encodeURIComponent(recordId);
