import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { compact } from '../../intake/ead/compact.ts';
import type { XmlElement } from '../../xml/element.ts';
import { EAD3_WRITER } from '../ead3/index.ts';
import { EAD2002_WRITER } from '../ead2002/index.ts';
import type { Writer } from './as-found.ts';
import type { Context } from './context.ts';

export const WRITERS: Readonly<Record<Writer['version'], Writer>> = {
  ead3: EAD3_WRITER,
  ead2002: EAD2002_WRITER,
};

/**
 * A finding aid without what was kept of units that the model holds whole: they are written as they were found anyway.
 * @param differs called for each of the others, with what the writer makes of it
 */
export function keptWhereNeeded(
  aid: FindingAid,
  differs: (unit: Component, written: XmlElement) => void = () => {},
): FindingAid {
  const { kept } = aid.control;
  if (kept === undefined) return aid;
  const writer = WRITERS[kept.format];
  const context = writer.contextOf(aid);
  const { kept: _, ...control } = aid.control;
  const whole = compact({ name: 'ead', attributes: {}, children: [writer.control(control, context)] });
  return {
    ...aid,
    control: whole === kept.xml ? control : aid.control,
    collection: slim(aid.collection, 'archdesc', { writer, context, differs }),
  };
}

interface Slimming {
  writer: Writer;
  context: Context;
  differs: (unit: Component, written: XmlElement) => void;
}

function slim(unit: Component, name: string, slimming: Slimming): Component {
  const { writer, context, differs } = slimming;
  const children = unit.children.map((child) => slim(child, 'c', slimming));
  const { kept, ...rest } = unit;
  if (kept === undefined) return { ...unit, children };
  const now = writer.unit(unit, context, name);
  const units = name === 'archdesc' && children.length > 0 ? [DSC[writer.version]] : [];
  if (kept.before === undefined && compact({ ...now, children: [...now.children, ...units] }) === kept.xml)
    return { ...rest, children };
  differs(unit, now);
  return { ...unit, children };
}

/** The element of the units as the writers make it, with an empty `c` for them. */
const UNITS = { name: 'c', attributes: {}, children: [] };
const DSC = {
  ead3: { name: 'dsc', attributes: { dsctype: 'combined' }, children: [UNITS] },
  ead2002: { name: 'dsc', attributes: { type: 'combined' }, children: [UNITS] },
};
