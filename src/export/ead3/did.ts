import type { Component, Container, DigitalCopy, Repository } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { dateNoteOf } from '../ead/date-note.ts';
import { address, optional } from '../ead/text.ts';
import { hrefOf } from '../href.ts';
import { languageOfMaterial } from './languages.ts';
import { descriptiveNote } from './text.ts';

/** `did`: what identifies a unit, at any level. */
export function did(component: Component, context: Context): XmlElement {
  return element('did', {}, [
    ...unitIds(component),
    element('unittitle', {}, component.title),
    ...context.datesOf(component),
    ...context.extentsOf(component),
    ...optional('physdesc', component.physicalDescription),
    ...context.originationOf(component.creators),
    ...repository(component.repository),
    ...optional('abstract', component.abstract),
    ...languageOfMaterial(component, context),
    ...component.containers.map(container),
    ...optional('physloc', component.physicalLocation),
    ...digitalCopies(component.digitalCopies),
    ...component.dates.flatMap(dateNoteOf).map((note) => element('didnote', {}, note)),
  ]);
}

function unitIds({ referenceCode, otherIdentifiers, repository: keeper }: Component): XmlElement[] {
  const codes = { countrycode: keeper?.country, repositorycode: keeper?.isil };
  return [
    ...(referenceCode === undefined ? [] : [element('unitid', codes, referenceCode)]),
    ...otherIdentifiers.map(({ type, value }) => element('unitid', { localtype: type }, value)),
  ];
}

function repository(keeper: Repository | undefined): XmlElement[] {
  if (keeper === undefined) return [];
  return [
    element('repository', {}, [
      element('corpname', {}, [element('part', {}, keeper.name)]),
      ...address(keeper.address),
    ]),
  ];
}

const container = ({ id, type, number, parent }: Container) =>
  element('container', { id, localtype: type, parent }, number);

/** Several copies of one unit stand together in a `daoset`. */
function digitalCopies(copies: readonly DigitalCopy[]): XmlElement[] {
  if (copies.length < 2) return copies.map(digitalCopy);
  return [element('daoset', { coverage: 'whole' }, copies.map(digitalCopy))];
}

function digitalCopy({ file, origin, title, note }: DigitalCopy): XmlElement {
  const attributes = { daotype: origin, href: hrefOf(file), linktitle: title };
  return element('dao', attributes, descriptiveNote(note));
}
