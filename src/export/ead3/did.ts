import type { Component, Container, DigitalCopy, Repository } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import type { Context } from '../ead/context.ts';
import { dateNoteOf } from '../ead/date-note.ts';
import { address } from '../ead/text.ts';
import { hrefOf } from '../href.ts';
import { languageOfMaterial } from './languages.ts';
import { descriptiveNote } from './text.ts';

/** `did`: what identifies a unit, at any level. Most units have few of these parts, and there may be many units. */
export function did(component: Component, context: Context): XmlElement {
  const { dates, extents, creators, digitalCopies: copies } = component;
  const parts = unitIds(component);
  parts.push(element('unittitle', {}, component.title));
  if (dates.length > 0) parts.push(...context.datesOf(dates));
  if (extents.length > 0) parts.push(...context.extentsOf(extents));
  add(parts, 'physdesc', component.physicalDescription);
  if (creators.length > 0) parts.push(...context.originationOf(creators));
  if (component.repository !== undefined) parts.push(repository(component.repository));
  add(parts, 'abstract', component.abstract);
  parts.push(...languageOfMaterial(component, context));
  for (const one of component.containers) parts.push(container(one));
  add(parts, 'physloc', component.physicalLocation);
  if (copies.length > 0) parts.push(...digitalCopies(copies));
  for (const date of dates) for (const note of dateNoteOf(date)) add(parts, 'didnote', note);
  return element('did', {}, parts);
}

function add(parts: XmlElement[], name: string, text: string | undefined): void {
  if (text !== undefined) parts.push(element(name, {}, text));
}

function unitIds({ referenceCode, otherIdentifiers, repository: keeper }: Component): XmlElement[] {
  const ids: XmlElement[] = [];
  if (referenceCode !== undefined) {
    const codes = { countrycode: keeper?.country, repositorycode: keeper?.isil };
    ids.push(element('unitid', codes, referenceCode));
  }
  for (const { type, value } of otherIdentifiers) ids.push(element('unitid', { localtype: type }, value));
  return ids;
}

function repository(keeper: Repository): XmlElement {
  const name = element('corpname', {}, [element('part', {}, keeper.name)]);
  return element('repository', {}, [name, ...address(keeper.address)]);
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
