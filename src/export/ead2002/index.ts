import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { type Context, contextOf } from '../ead/context.ts';
import { otherLevelOf } from '../ead/level.ts';
import { type NoteStyle, notes } from '../ead/notes.ts';
import { accessPoint, accessPoints } from './access-points.ts';
import { did } from './did.ts';
import { header } from './header.ts';
import { nameElement } from './names.ts';
import { counted } from './physical-description.ts';
import { token } from './token.ts';
import { unitDate } from './unit-date.ts';

export const EAD2002_NAMESPACE = 'urn:isbn:1-931666-22-9';
const XLINK_NAMESPACE = 'http://www.w3.org/1999/xlink';

const NOTE_STYLE: NoteStyle = { kind: 'type', legalStatus: 'in accessrestrict' };

/** A finding aid in EAD 2002, schema of 2021. The components are made one by one, as the writer of the XML asks for them. */
export function ead2002(aid: FindingAid): XmlElement {
  const context = contextOf(aid, { name: nameElement, date: unitDate, extent: counted, accessPoint });
  return element('ead', { xmlns: EAD2002_NAMESPACE, 'xmlns:xlink': XLINK_NAMESPACE }, [
    header(aid.control),
    collection(aid.collection, context),
  ]);
}

function collection(top: Component, context: Context): XmlElement {
  return element('archdesc', attributes(top), [
    did(top, context),
    ...notes(top, NOTE_STYLE, context.agents),
    ...accessPoints(top, context),
    ...(top.children.length === 0
      ? []
      : [element('dsc', { type: 'combined' }, components(top.children, context))]),
  ]);
}

function* components(units: readonly Component[], context: Context): Generator<XmlElement> {
  for (const unit of units) yield element('c', attributes(unit), parts(unit, context));
}

function* parts(unit: Component, context: Context): Generator<XmlElement> {
  yield did(unit, context);
  yield* notes(unit, NOTE_STYLE);
  yield* accessPoints(unit, context);
  yield* components(unit.children, context);
}

/** The name of a level that EAD does not know has to be one token here. */
function attributes(unit: Component) {
  const named = otherLevelOf(unit);
  const otherlevel = named === undefined ? undefined : (token(named) ?? 'unnamed-level');
  return { id: unit.id, level: unit.level, otherlevel };
}
