import type { Component, Container, Repository } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { dateNoteOf } from '../ead/date-note.ts';
import { address, optional, ps } from '../ead/text.ts';
import { digitalCopies } from './digital-copies.ts';
import { languageOfMaterial } from './languages.ts';
import { token, tokenOnly } from './token.ts';

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
    ...component.dates.flatMap(dateNoteOf).map((note) => element('note', {}, ps(note))),
  ]);
}

function unitIds({ referenceCode, otherIdentifiers, repository: keeper }: Component): XmlElement[] {
  const codes = { countrycode: keeper?.country, repositorycode: tokenOnly(keeper?.isil) };
  return [
    ...(referenceCode === undefined ? [] : [element('unitid', codes, referenceCode)]),
    ...otherIdentifiers.map(({ type, value }) => element('unitid', { type }, value)),
  ];
}

function repository(keeper: Repository | undefined): XmlElement[] {
  if (keeper === undefined) return [];
  // ISO 15511 lets a code hold a slash, which no token can; such a code stands beside the name instead.
  const authfilenumber = tokenOnly(keeper.isil) === undefined ? keeper.isil : undefined;
  return [
    element('repository', {}, [
      element('corpname', { authfilenumber }, keeper.name),
      ...address(keeper.address),
    ]),
  ];
}

/** Where the type had to be changed to fit, the label has it in its own words. */
function container({ id, type, number, parent }: Container): XmlElement {
  const fitting = token(type);
  return element(
    'container',
    { id, label: fitting === type ? undefined : type, parent, type: fitting },
    number,
  );
}
