import type { Agent } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { existDates } from './exist-dates.ts';
import { listOf, ps } from './text.ts';

/** `description`: ISAAR(CPF) 5.2, in the order that the schema asks for. */
export function description(agent: Agent): XmlElement[] {
  return listOf('description', [
    ...occupations(agent),
    ...places(agent),
    ...existDates(agent),
    ...listOf('biogHist', ps(agent.history ?? '')),
  ]);
}

/** ISAAR(CPF) 5.2.5. */
const occupations = ({ occupations: terms = [] }: Agent) =>
  listOf(
    'occupations',
    terms.map((term) => element('occupation', {}, [element('term', {}, term)])),
  );

/** ISAAR(CPF) 5.2.3. */
const places = ({ places: list = [] }: Agent) =>
  listOf(
    'places',
    list.map(({ name, role }) =>
      element('place', {}, [element('placeName', {}, name), element('placeRole', {}, role)]),
    ),
  );
