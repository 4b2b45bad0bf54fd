import type { Agent } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { addressOf } from './address.ts';
import { nameEntries } from './names.ts';

/** `identity`: type, names and identifiers. ISAAR(CPF) 5.1. */
export function identity(agent: Agent): XmlElement {
  return element('identity', {}, [
    element('entityType', { value: agent.type }),
    ...nameEntries(agent),
    ...identityId(agent),
  ]);
}

/** The identifier of the heading in an authority file; what ISAAR(CPF) 5.1.6 has for corporate bodies. */
function identityId({ identifier, source }: Agent): XmlElement[] {
  if (identifier === undefined) return [];
  return [element('identityId', { valueURI: addressOf(identifier), vocabularySource: source }, identifier)];
}
