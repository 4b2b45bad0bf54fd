import { element, type XmlElement } from '../../xml/element.ts';
import { DC_ELEMENTS, type DcElement } from '../crosswalk/row.ts';
import { CROSSWALK } from '../crosswalk.ts';
import { type Statement, statementsBy } from './statements.ts';

const OAI_DC_NAMESPACE = 'http://www.openarchives.org/OAI/2.0/oai_dc/';
const DC_NAMESPACE = 'http://purl.org/dc/elements/1.1/';

/** Tells a unit in the fifteen elements of simple Dublin Core. */
export const simpleStatements = statementsBy(CROSSWALK, DC_ELEMENTS, ({ dc }) => dc);

/** One record in simple Dublin Core, in the container that OAI-PMH 2.0 defines for it. */
export function oaiDc(statements: readonly Statement<DcElement>[]): XmlElement {
  return element(
    'oai_dc:dc',
    { 'xmlns:oai_dc': OAI_DC_NAMESPACE, 'xmlns:dc': DC_NAMESPACE },
    statements.map(({ element: name, text }) => element(`dc:${name}`, {}, text)),
  );
}
