import type { Level } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { DCMI_TERMS, type DcmiTerm } from '../crosswalk/row.ts';
import { CROSSWALK } from '../crosswalk.ts';
import { type Statement, statementsBy } from './statements.ts';
import { describedUnits } from './units.ts';

const RECORDS_NAMESPACE = 'urn:kinfonds:dcterms';
const DCTERMS_NAMESPACE = 'http://purl.org/dc/terms/';
const XSI_NAMESPACE = 'http://www.w3.org/2001/XMLSchema-instance';

/** Tells a unit in DCMI terms. */
const qualifiedStatements = statementsBy(CROSSWALK, DCMI_TERMS, ({ dcterms }) => dcterms);

/**
 * Records in DCMI terms. The published dcterms.xsd declares elements and encoding schemes, but no root that could hold
 * a record; DCMI leaves the container to each application (its guidelines for XML, from memory). So `records`
 * and `record` are our own, in a namespace of our own, and all that is in a record is DCMI's. They stand in one file:
 * a container of our own makes a single record no easier to load, and a hundred thousand files no easier to carry.
 * @param downTo as for `describedUnits`
 */
export function dctermsRecords(aid: FindingAid, downTo?: Level): XmlElement {
  const namespaces = {
    xmlns: RECORDS_NAMESPACE,
    'xmlns:dcterms': DCTERMS_NAMESPACE,
    'xmlns:xsi': XSI_NAMESPACE,
  };
  return element('records', namespaces, records(aid, downTo));
}

function* records(aid: FindingAid, downTo: Level | undefined): Generator<XmlElement> {
  const statementsOf = qualifiedStatements(aid);
  for (const described of describedUnits(aid.collection, downTo)) {
    yield element('record', {}, statementsOf(described).map(term));
  }
}

const term = ({ element: name, text, scheme }: Statement<DcmiTerm>) =>
  element(`dcterms:${name}`, { 'xsi:type': scheme === undefined ? undefined : `dcterms:${scheme}` }, text);
