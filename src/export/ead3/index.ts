import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { XmlElement } from '../../xml/element.ts';
import { accessPoints } from '../ead/access-points.ts';
import type { Writer } from '../ead/as-found.ts';
import { type Context, contextOf } from '../ead/context.ts';
import { otherLevelOf } from '../ead/level.ts';
import { type NoteStyle, notes } from '../ead/notes.ts';
import { tree } from '../ead/tree.ts';
import { accessPoint } from './access-point.ts';
import { control } from './control.ts';
import { did } from './did.ts';
import { languagesOf } from './languages.ts';
import { nameElement, origination } from './names.ts';
import { structured } from './physical-description.ts';
import { unitDate } from './unit-date.ts';

const EAD3_NAMESPACE = 'http://ead3.archivists.org/schema/';

const NOTE_STYLE: NoteStyle = { kind: 'localtype', legalStatus: 'own note' };

/** How EAD3 1.1.1 writes the parts of a finding aid. */
export const EAD3_WRITER: Writer = {
  version: 'ead3',
  contextOf: (aid) =>
    contextOf(aid, {
      name: nameElement,
      date: unitDate,
      extent: structured,
      accessPoint,
      origination,
      languages: languagesOf,
    }),
  unit,
  control,
};

/** A finding aid in EAD3 1.1.1. */
export function ead3(aid: FindingAid): XmlElement {
  return tree(aid, EAD3_WRITER, { xmlns: EAD3_NAMESPACE }, { dsctype: 'combined' });
}

/** A unit without the units below it. Histories of agents stand with that of the whole. */
function unit(one: Component, context: Context, name: string) {
  const histories = name === 'archdesc' ? context.agents : [];
  const children = [did(one, context), ...notes(one, NOTE_STYLE, histories), ...accessPoints(one, context)];
  return { name, attributes: { id: one.id, level: one.level, otherlevel: otherLevelOf(one) }, children };
}
