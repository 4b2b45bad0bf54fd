import type { Component, Extent } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { decimal } from '../ead/decimal.ts';
import { optional } from '../ead/text.ts';

/** `physdesc` with its `extent` for each counted extent, with text for what is only said: ISAD(G) 3.1.5, DACS 2.5. */
export function physicalDescription({ extents, physicalDescription: said }: Component): XmlElement[] {
  return [...extents.map(counted), ...optional('physdesc', said)];
}

function counted({
  type,
  coverage,
  quantity,
  unit,
  approximate,
  dimensions,
  facets = [],
}: Extent): XmlElement {
  const words = `${approximate ? 'approximately ' : ''}${decimal(quantity)} ${unit}`;
  return element('physdesc', { label: coverage === 'part' ? 'part' : undefined }, [
    element('extent', { type }, words),
    ...facets.map((facet) => element('physfacet', {}, facet)),
    ...optional('dimensions', dimensions),
  ]);
}
