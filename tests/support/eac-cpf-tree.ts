import { arrange } from '../../src/arrange/index.ts';
import type { Agent } from '../../src/catalogue/agent.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { eacCpf } from '../../src/export/eac-cpf/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { someSettings, someThing } from './catalogue.ts';
import { everyElement, parseTree, type Tree, textOf } from './xml-tree.ts';

/** Somebody of whom only a name is known. */
export const ADA = { id: 'ada', type: 'person', name: 'Ada Quill' } as const satisfies Agent;

/** A small finding aid with those people; `over` changes its collection. */
export function aidWith(people: readonly Agent[], over: Partial<FindingAid['collection']> = {}): FindingAid {
  const things = [someThing({ row: 2, title: 'Letter', kind: 'letter' })];
  const aid = arrange({ settings: someSettings({ described: '2026' }), things }, '2026-01-01');
  return findingAid.parse({ ...aid, people, collection: { ...aid.collection, ...over } });
}

/** The record of an agent, read back. */
export const treeOf = (agent: Agent, aid = aidWith([agent])) =>
  parseTree([...writeXml(eacCpf(agent, aid))].join(''));
/** Every element of that name. */
export const all = (tree: Tree, name: string) =>
  everyElement(tree).flatMap(({ element }) => (element.name === name ? [element] : []));
/** The texts of them. */
export const texts = (tree: Tree, name: string) => all(tree, name).map(textOf);
