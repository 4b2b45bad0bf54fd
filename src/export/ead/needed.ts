import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import type { Kept } from '../../catalogue/kept.ts';
import { compact } from '../../intake/ead/compact.ts';
import type { Found } from '../../intake/ead/found.ts';
import type { ReadEad } from '../../intake/ead/index.ts';
import type { FoundUnit } from '../../intake/ead/units.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { EAD3_WRITER } from '../ead3/index.ts';
import { EAD2002_WRITER } from '../ead2002/index.ts';
import type { Writer } from './as-found.ts';
import type { Context } from './context.ts';
import { isSame } from './same.ts';

export const WRITERS: Readonly<Record<Writer['version'], Writer>> = {
  ead3: EAD3_WRITER,
  ead2002: EAD2002_WRITER,
};

/**
 * The finding aid that was read, in which the control and each unit that the model does not hold whole are kept as they
 * were found; the others are written as they were found anyway. The units are those that were read: they are new, and
 * tens of thousands of them are not made twice.
 * @param differs called for each unit that is kept, with what the writer makes of it
 */
export function keptWhereNeeded(
  { version, aid, shell, found }: Pick<ReadEad, 'version' | 'aid' | 'shell' | 'found'>,
  differs: (found: Found, written: XmlElement) => void = () => {},
): FindingAid {
  const writer = WRITERS[version];
  const context = writer.contextOf(aid);
  keepUnits(aid.collection, 'archdesc', { writer, context, found, differs });
  const whole = element('ead', {}, [writer.control(aid.control, context)]);
  if (isSame(shell, whole)) return aid;
  return { ...aid, control: { ...aid.control, kept: { format: version, xml: compact(shell) } } };
}

interface Keeping {
  writer: Writer;
  context: Context;
  found: ReadonlyMap<Component, FoundUnit>;
  differs: (found: Found, written: XmlElement) => void;
}

function keepUnits(unit: Component, name: string, keeping: Keeping): void {
  for (const child of unit.children) keepUnits(child, 'c', keeping);
  const { writer, context, differs } = keeping;
  const found = keeping.found.get(unit);
  if (found === undefined) return;
  const written = writer.unit(unit, context, name);
  const { before } = found;
  if (before === undefined && isSame(found.element, withPlace(written, unit, writer))) return;
  const kept: Kept = { format: writer.version, xml: compact(found.element) };
  if (before !== undefined) kept.before = before;
  unit.kept = kept;
  differs(found.element, written);
}

/** The whole holds the element of its units as the writers make it, with an empty `c` for them. */
function withPlace(written: ReturnType<Writer['unit']>, { children }: Component, { version }: Writer) {
  if (written.name !== 'archdesc' || children.length === 0) return written;
  return { ...written, children: [...written.children, DSC[version]] };
}

const UNITS = { name: 'c', attributes: {}, children: [] };
const DSC = {
  ead3: { name: 'dsc', attributes: { dsctype: 'combined' }, children: [UNITS] },
  ead2002: { name: 'dsc', attributes: { type: 'combined' }, children: [UNITS] },
};
