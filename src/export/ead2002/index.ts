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
import { did } from './did.ts';
import { header } from './header.ts';
import { languagesOf } from './languages.ts';
import { nameElement, origination } from './names.ts';
import { counted } from './physical-description.ts';
import { token } from './token.ts';
import { unitDate } from './unit-date.ts';

const EAD2002_NAMESPACE = 'urn:isbn:1-931666-22-9';
const XLINK_NAMESPACE = 'http://www.w3.org/1999/xlink';

const NOTE_STYLE: NoteStyle = { kind: 'type', legalStatus: 'in accessrestrict' };

/** How EAD 2002, schema of 2021, writes the parts of a finding aid. */
export const EAD2002_WRITER: Writer = {
  version: 'ead2002',
  contextOf: (aid) =>
    contextOf(aid, {
      name: nameElement,
      date: unitDate,
      extent: counted,
      accessPoint,
      origination,
      languages: languagesOf,
    }),
  unit,
  control: header,
};

/** A finding aid in EAD 2002, schema of 2021. */
export function ead2002(aid: FindingAid): XmlElement {
  const root = { xmlns: EAD2002_NAMESPACE, 'xmlns:xlink': XLINK_NAMESPACE };
  return tree(aid, EAD2002_WRITER, root, { type: 'combined' });
}

/** A unit without the units below it. Histories of agents stand with that of the whole. */
function unit(one: Component, context: Context, name: string) {
  const histories = name === 'archdesc' ? context.agents : [];
  const children = [did(one, context), ...notes(one, NOTE_STYLE, histories), ...accessPoints(one, context)];
  return { name, attributes: attributes(one), children };
}

/** The name of a level that EAD does not know has to be one token here. */
function attributes(unit: Component) {
  const named = otherLevelOf(unit);
  const otherlevel = named === undefined ? undefined : (token(named) ?? 'unnamed-level');
  return { id: unit.id, level: unit.level, otherlevel };
}
