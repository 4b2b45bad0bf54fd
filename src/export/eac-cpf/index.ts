import type { Agent } from '../../catalogue/agent.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { type Context, contextOf } from './context.ts';
import { control } from './control.ts';
import { description } from './description.ts';
import { identity } from './identity.ts';
import { relations } from './relations.ts';

const EAC_CPF_NAMESPACE = 'https://archivists.org/ns/eac/v2';

/**
 * One person, family or corporate body in EAC-CPF 2.0, in the order of ISAAR(CPF): who it is (5.1), what is known of
 * it (5.2), what it is to others (5.3) and to the collection (6); the control of the record (5.4) stands before them.
 * @param context made once for all agents of a finding aid, where there are many
 */
export function eacCpf(agent: Agent, aid: FindingAid, context: Context = contextOf(aid)): XmlElement {
  return element('eac', { xmlns: EAC_CPF_NAMESPACE }, [
    control(aid.control, context.recordIdOf(agent)),
    element('cpfDescription', {}, [
      identity(agent),
      ...description(agent),
      ...relations(agent, aid, context),
    ]),
  ]);
}
