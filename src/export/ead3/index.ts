import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { type Context, contextOf } from '../ead/context.ts';
import { otherLevelOf } from '../ead/level.ts';
import { type NoteStyle, notes } from '../ead/notes.ts';
import { accessPoint, accessPoints } from './access-points.ts';
import { control } from './control.ts';
import { did } from './did.ts';
import { nameElement } from './names.ts';
import { structured } from './physical-description.ts';
import { unitDate } from './unit-date.ts';

const EAD3_NAMESPACE = 'http://ead3.archivists.org/schema/';

const NOTE_STYLE: NoteStyle = { kind: 'localtype', legalStatus: 'own note' };

/** A finding aid in EAD3 1.1.1. The components are made one by one, as the writer of the XML asks for them. */
export function ead3(aid: FindingAid): XmlElement {
  const context = contextOf(aid, { name: nameElement, date: unitDate, extent: structured, accessPoint });
  return element('ead', { xmlns: EAD3_NAMESPACE }, [
    control(aid.control, context),
    collection(aid.collection, context),
  ]);
}

function collection(top: Component, context: Context): XmlElement {
  const { level, children } = top;
  return element('archdesc', { id: top.id, level, otherlevel: otherLevelOf(top) }, [
    did(top, context),
    ...notes(top, NOTE_STYLE, context.agents),
    ...accessPoints(top, context),
    ...(children.length === 0
      ? []
      : [element('dsc', { dsctype: 'combined' }, components(children, context))]),
  ]);
}

function* components(units: readonly Component[], context: Context): Generator<XmlElement> {
  for (const unit of units) {
    yield element(
      'c',
      { id: unit.id, level: unit.level, otherlevel: otherLevelOf(unit) },
      parts(unit, context),
    );
  }
}

function* parts(unit: Component, context: Context): Generator<XmlElement> {
  yield did(unit, context);
  yield* notes(unit, NOTE_STYLE);
  yield* accessPoints(unit, context);
  yield* components(unit.children, context);
}
