import type { Extent } from '../../catalogue/component.ts';
import { element, type XmlElement } from '../../xml/element.ts';
import { decimal } from '../ead/decimal.ts';
import { optional } from '../ead/text.ts';

/** `physdescstructured` for a counted extent: ISAD(G) 3.1.5, DACS 2.5. */
export function structured({
  type,
  coverage,
  quantity,
  unit,
  approximate,
  dimensions,
  facets = [],
}: Extent): XmlElement {
  return element('physdescstructured', { coverage, physdescstructuredtype: type }, [
    element('quantity', { approximate: approximate ? 'true' : undefined }, decimal(quantity)),
    element('unittype', {}, unit),
    ...facets.map((facet) => element('physfacet', {}, facet)),
    ...optional('dimensions', dimensions),
  ]);
}
