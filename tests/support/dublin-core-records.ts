import { parse } from 'csv-parse/sync';
import type { Component, Level } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { dcterms, dublinCore } from '../../src/export/dublin-core/index.ts';
import { elementsOf, parseTree, type Tree, textOf } from './xml-tree.ts';

export type Part = Partial<Omit<Component, 'children'>> & { id: string; children?: Part[] };

/** A finding aid of the Quill family with these parts; what is not given has its usual value. */
export function aidWith(collection: Part, over: Record<string, unknown> = {}): FindingAid {
  const agency = { name: 'Heronsford Historical Society' };
  return findingAid.parse({
    format: 'kinfonds finding aid',
    version: 1,
    control: {
      ...{ recordId: 'QF', title: 'Finding aid', maintenanceAgency: agency },
      languages: [{ code: 'eng', name: 'English' }],
      conventions: [{ citation: 'DACS' }],
      history: [{ type: 'created', date: '2026', agent: 'Nora Quill', agentType: 'human' }],
    },
    people: [
      { id: 'ada', type: 'person', name: 'Ada Quill', authorizedForm: 'Quill, Ada "Addie", 1902-1988' },
      { id: 'firm', type: 'corporateBody', name: 'Quill & Sons' },
      { id: 'dvora', type: 'person', name: 'דבורה קוויל' },
    ],
    collection: titled({ level: 'collection', ...collection }),
    ...over,
  });
}

const titled = ({ children = [], ...part }: Part): object => ({
  ...{ level: 'item', title: `Title of ${part.id}` },
  ...part,
  children: children.map(titled),
});

export const textsOf = (files: Iterable<{ path: string; content: Iterable<string> }>) =>
  new Map([...files].map(({ path, content }) => [path, [...content].join('')]));

/** The values of each record, by its file name. */
export function recordsOf(aid: FindingAid, downTo?: Level): Map<string, Record<string, string[]>> {
  const files = [...textsOf(dublinCore(aid, downTo))].filter(([path]) => path.endsWith('.xml'));
  return new Map(files.map(([path, xml]) => [path.replace('dublin-core/', ''), valuesIn(parseTree(xml))]));
}

function valuesIn(record: Tree): Record<string, string[]> {
  const found: Record<string, string[]> = {};
  for (const one of elementsOf(record)) {
    const name = one.name.replace(/^\w+:/, '');
    const type = one.attributes['xsi:type']?.replace('dcterms:', '');
    found[name] = [...(found[name] ?? []), type === undefined ? textOf(one) : `${type}: ${textOf(one)}`];
  }
  return found;
}

/** The records in DCMI terms, by their first identifier. */
export function termsOf(aid: FindingAid, downTo: Level = 'item'): Record<string, string[]>[] {
  const [xml = ''] = [...textsOf(dcterms(aid, downTo)).values()];
  return elementsOf(parseTree(xml)).map(valuesIn);
}

export const tableOf = (aid: FindingAid, downTo?: Level): Record<string, string>[] =>
  parse(textsOf(dublinCore(aid, downTo)).get('dublin-core.csv') ?? '', { bom: true, columns: true });
