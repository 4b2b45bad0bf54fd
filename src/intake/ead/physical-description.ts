import type { Extent } from '../../catalogue/component.ts';
import { elementsOf, type Found } from './found.ts';
import { lineOf, words } from './text.ts';

/** Elements that tell how much there is of a unit and what it is like. */
export const PHYSICAL: ReadonlySet<string> = new Set([
  ...['physdesc', 'physdescset', 'physdescstructured', 'materialspec'],
  // As children of the did itself, in EAD 2002 before there was physdesc.
  ...['extent', 'dimensions', 'physfacet'],
]);

type Described = { extents: Extent[]; physicalDescription?: string };

/** Counted extents, and in words whatever cannot be counted. */
export function physicalDescription(elements: readonly Found[]): Described {
  const extents: Extent[] = [];
  const inWords: string[] = [];
  for (const element of elements) {
    const counted =
      element.name === 'physdescset'
        ? elementsOf(element, 'physdescstructured').map(structured)
        : [element.name === 'physdescstructured' ? structured(element) : physdesc(element)];
    for (const [index, extent] of counted.entries()) {
      if (extent !== undefined) extents.push(extent);
      else {
        const text = words(elementsOf(element, 'physdescstructured')[index] ?? element);
        if (text !== '') inWords.push(text);
      }
    }
  }
  return { extents, ...(inWords.length > 0 && { physicalDescription: inWords.join('; ') }) };
}

const TYPES = ['materialtype', 'carrier', 'spaceoccupied'] as const;

/** `physdescstructured` of EAD3; a note in it has no place in a counted extent. */
function structured(element: Found): Extent | undefined {
  const [quantity] = elementsOf(element, 'quantity');
  const unit = lineOf(elementsOf(element, 'unittype')[0]);
  const number = Number(quantity === undefined ? '' : words(quantity));
  if (quantity === undefined || unit === undefined || !(number > 0) || !Number.isFinite(number))
    return undefined;
  if (elementsOf(element, 'descriptivenote').length > 0) return undefined;
  const { coverage, physdescstructuredtype } = element.attributes;
  return {
    type: TYPES.find((type) => type === physdescstructuredtype) ?? countedBy(unit),
    coverage: coverage === 'part' ? 'part' : 'whole',
    quantity: number,
    unit,
    ...(quantity.attributes.approximate === 'true' && { approximate: true }),
    ...partsOf(element),
  };
}

/** `physdesc` of EAD 2002 that holds one extent beginning with a number. */
function physdesc(element: Found): Extent | undefined {
  const [first, ...more] = elementsOf(element, 'extent');
  const others = elementsOf(element).filter(
    ({ name }) => !['extent', 'physfacet', 'dimensions'].includes(name),
  );
  const text = element.children.some((child) => typeof child === 'string' && child.trim() !== '');
  if (element.name !== 'physdesc' || first === undefined || more.length > 0 || others.length > 0 || text)
    return undefined;
  if (elementsOf(element, 'dimensions').length > 1) return undefined;
  const [, approximate, quantity, unit] =
    /^(approximately )?(\d{1,15}(?:\.\d+)?|\.\d+) (\D.*)$/.exec(words(first)) ?? [];
  if (quantity === undefined || unit === undefined || Number(quantity) === 0) return undefined;
  const { type } = first.attributes;
  return {
    type: TYPES.find((known) => known === type) ?? countedBy(unit),
    coverage: element.attributes.label === 'part' ? 'part' : 'whole',
    quantity: Number(quantity),
    unit,
    ...(approximate !== undefined && { approximate: true }),
    ...partsOf(element),
  };
}

function partsOf(element: Found): Pick<Extent, 'facets' | 'dimensions'> {
  const facets = elementsOf(element, 'physfacet').map(words);
  const dimensions = elementsOf(element, 'dimensions').map(words);
  return {
    ...(facets.length > 0 && { facets: facets.filter((facet) => facet !== '') }),
    ...(dimensions[0] !== undefined && dimensions[0] !== '' && { dimensions: dimensions.join('; ') }),
  };
}

/** What is counted, by the word for the unit: common practice. */
function countedBy(unit: string): Extent['type'] {
  if (
    /\b(?:linear|cubic|lin\.|cu\.|(?:centi|milli)?met(?:re|er)s?|feet|foot|inch(?:es)?|shelves)\b/i.test(unit)
  )
    return 'spaceoccupied';
  return /\b(?:box|carton|folder|container|case|drawer|album|volume|reel|tube|envelope)/i.test(unit)
    ? 'carrier'
    : 'materialtype';
}
