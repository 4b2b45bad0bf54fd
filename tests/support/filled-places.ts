import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import type { FormatName } from '../../src/catalogue/format-names.ts';
import { NO_PLACE, type Places, type Row, elementsOf as targetsOf } from '../../src/export/crosswalk/row.ts';
import { FORMATS } from '../../src/export/formats.ts';
import { elementsOf, parseTree, type Tree } from './xml-tree.ts';

/** A text in an XML document, and the path of the element or attribute that holds it, as the crosswalk writes paths. */
export interface Filled {
  path: string;
  text: string;
}

/** The formats of the crosswalk: which column of it they have, and how their paths are written there. */
export const CROSSWALK_FORMATS: readonly {
  format: FormatName;
  column: string;
  placesOf: (row: Row) => string[];
  pathIn: (steps: readonly string[]) => string;
}[] = [
  { format: 'ead3', column: 'EAD3', placesOf: ({ ead3 }) => pathsOf(ead3), pathIn: inEad },
  { format: 'ead2002', column: 'EAD 2002', placesOf: ({ ead2002 }) => pathsOf(ead2002), pathIn: inEad },
  {
    ...{ format: 'eac-cpf', column: 'EAC-CPF', placesOf: ({ eacCpf }) => pathsOf(eacCpf) },
    pathIn: ([, ...steps]) => steps.join('/'),
  },
  { format: 'dc', column: 'Dublin Core', placesOf: ({ dc }) => targetsOf(dc), pathIn: inDublinCore },
  {
    ...{ format: 'dcterms', column: 'DCMI terms', placesOf: ({ dcterms }) => targetsOf(dcterms) },
    pathIn: inDublinCore,
  },
];

/** The paths of a place, alternatives written out; none where there is no place. */
function pathsOf(places: Places): string[] {
  if (places === NO_PLACE) return [];
  return (typeof places === 'string' ? [places] : places).flatMap((path) =>
    path
      .split('/')
      .map((step) => step.split('|'))
      .reduce<string[]>(
        (paths, choices) =>
          paths.flatMap((before) => choices.map((step) => (before === '' ? step : `${before}/${step}`))),
        [''],
      ),
  );
}

/** A `c` stands for what `archdesc` is for the whole. */
function inEad([, ...steps]: readonly string[]): string {
  const at = steps.lastIndexOf('c');
  return (at < 0 ? steps : ['archdesc', ...steps.slice(at + 1)]).join('/');
}

/** The element; its encoding scheme belongs to its value. */
function inDublinCore(steps: readonly string[]): string {
  const name = steps.findLast((step) => /^(?:dc|dcterms):/.test(step));
  return name === undefined ? steps.join('/') : name.replace(/^\w+:/, '');
}

/** Every text and attribute of the XML that a format makes of a finding aid. */
export function filledIn(
  aid: FindingAid,
  { format, pathIn }: Pick<(typeof CROSSWALK_FORMATS)[number], 'format' | 'pathIn'>,
): Filled[] {
  return [...FORMATS[format](aid)]
    .filter(({ xml }) => xml)
    .flatMap(({ content }) => filledOf(parseTree([...content].join('')), [], pathIn));
}

function filledOf(
  tree: Tree,
  above: readonly string[],
  pathIn: (steps: readonly string[]) => string,
): Filled[] {
  const steps = [...above, tree.name];
  const text = tree.children.filter((child) => typeof child === 'string').join('');
  return [
    ...Object.entries(tree.attributes).map(([name, value]) => ({
      path: pathIn([...steps, `@${name}`]),
      text: value ?? '',
    })),
    ...(text.trim() === '' ? [] : [{ path: pathIn(steps), text }]),
    ...elementsOf(tree).flatMap((child) => filledOf(child, steps, pathIn)),
  ];
}
