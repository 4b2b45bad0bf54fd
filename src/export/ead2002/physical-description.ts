import type { Extent } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { decimal } from '../ead/decimal.ts';
import { optional } from '../ead/text.ts';

/** `physdesc` with its `extent` for a counted extent: ISAD(G) 3.1.5, DACS 2.5. */
export function counted({
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
