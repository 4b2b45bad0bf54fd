import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { compact } from '../../intake/ead/compact.ts';
import type { EadVersion } from '../../intake/ead/found.ts';
import type { XmlElement } from '../../xml/element.ts';
import { controlAsFound, unitAsFound } from './as-found.ts';
import { WRITERS } from './needed.ts';
import { type NotHeld, notHeld } from './not-held.ts';

/**
 * What a version of EAD does not hold of a finding aid as it is now: what was changed or taken out since it was taken
 * in is not missed, for nobody would write it in the other version either.
 */
export function notHeldNow(aid: FindingAid, version: EadVersion): NotHeld {
  return notHeld(asWrittenNow(aid, version), version);
}

/** A finding aid of which that is kept which an export in the version it was found in would write. */
function asWrittenNow(aid: FindingAid, other: EadVersion): FindingAid {
  const renewed = (unit: Component, name: string): Component => {
    const children = unit.children.map((child) => renewed(child, 'c'));
    const { kept } = unit;
    if (kept === undefined || kept.format === other) return { ...unit, children };
    const writer = WRITERS[kept.format];
    const now = unitAsFound({ ...unit, kept }, writer.unit(unit, contexts[kept.format], name), writer);
    return { ...unit, kept: { ...kept, xml: compact(now) }, children };
  };
  const contexts = { ead3: WRITERS.ead3.contextOf(aid), ead2002: WRITERS.ead2002.contextOf(aid) };
  return {
    ...aid,
    control: controlNow(aid, other, contexts[other === 'ead3' ? 'ead2002' : 'ead3']),
    collection: renewed(aid.collection, 'archdesc'),
  };
}

function controlNow(
  { control }: FindingAid,
  other: EadVersion,
  context: Parameters<typeof controlAsFound>[2],
): FindingAid['control'] {
  const { kept } = control;
  if (kept === undefined || kept.format === other) return control;
  const writer = WRITERS[kept.format];
  const now: XmlElement = controlAsFound(
    { ...control, kept },
    writer.control(control, context),
    context,
    writer,
  );
  return { ...control, kept: { ...kept, xml: compact(now) } };
}
