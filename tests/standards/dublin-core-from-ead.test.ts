import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { dublinCore } from '../../src/export/dublin-core/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { times } from '../support/times.ts';
import { elementsOf, parseTree, type Tree, textOf } from '../support/xml-tree.ts';

// The crosswalk from EAD to Dublin Core of the EAD 2002 Tag Library, from memory. Every value of a record is looked up
// in the EAD 2002 of the same finding aid, which another writer made.

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));
const DCMI_TYPES = ['Collection', 'MovingImage', 'PhysicalObject', 'Sound', 'StillImage', 'Text'];

/** Blanks aside: EAD has paragraphs where a model has empty lines. */
const plain = (text: string) => text.replace(/\s+/g, '');

/** A unit of the EAD, with the one around it. */
interface Unit {
  tree: Tree;
  parent: Unit | undefined;
}

function unitsOf(tree: Tree, parent?: Unit): Unit[] {
  const unit = { tree, parent };
  const parts = [...elementsOf(tree, 'c'), ...elementsOf(tree, 'dsc').flatMap((dsc) => elementsOf(dsc, 'c'))];
  return [unit, ...parts.flatMap((part) => unitsOf(part, unit))];
}

/** The elements at the end of a path below a unit. */
const at = (tree: Tree, path: string): Tree[] =>
  path
    .split('/')
    .reduce<Tree[]>(
      (trees, step) => trees.flatMap((one) => step.split('|').flatMap((name) => elementsOf(one, name))),
      [tree],
    );
const texts = ({ tree }: Unit, path: string) => at(tree, path).map(textOf);
const values = ({ tree }: Unit, path: string, attribute: string) =>
  at(tree, path).flatMap(({ attributes }) => attributes[attribute] ?? []);

/** What holds for a unit because the nearest unit above says so. */
const inherited = (unit: Unit | undefined, path: string): string[] => {
  if (unit === undefined) return [];
  const own = texts(unit, path);
  return own.length > 0 ? own : inherited(unit.parent, path);
};

/** Whether a part of a unit, at any depth, has such an element. */
const partsHave = (tree: Tree, name: string): boolean =>
  [...elementsOf(tree, 'c'), ...elementsOf(tree, 'dsc')].some(
    (part) => elementsOf(part, name).length > 0 || partsHave(part, name),
  );

const NAMES = 'controlaccess/persname|corpname|famname';

/** What must be in a record, by the crosswalk: element, and values. */
function expectedOf(unit: Unit, eadid: string): Readonly<Record<string, string[]>> {
  const dates = at(unit.tree, 'did/unitdate').filter(({ attributes }) => attributes.type !== 'bulk');
  return {
    title: texts(unit, 'did/unittitle'),
    creator: texts(unit, 'did/origination/persname|corpname|famname'),
    'contributor subject rights': texts(unit, NAMES),
    subject: texts(unit, 'controlaccess/subject|occupation|function'),
    coverage: [
      ...texts(unit, 'controlaccess/geogname'),
      ...(unit.parent === undefined ? dates.map(textOf).filter((text) => text !== 'undated') : []),
    ],
    date: dates.flatMap(({ attributes }) => attributes.normal ?? []),
    description: [...texts(unit, 'did/abstract'), ...texts(unit, 'scopecontent')],
    format: [...texts(unit, 'did/physdesc/extent'), ...texts(unit, 'did/physdesc/physfacet')],
    identifier: [...texts(unit, 'did/unitid'), ...(unit.parent === undefined ? [eadid] : [])],
    language: values(unit, 'did/langmaterial/language', 'langcode').filter((code) => code !== 'und'),
    publisher: inherited(unit, 'did/repository/corpname'),
    relation: [
      ...texts(unit, 'relatedmaterial'),
      ...texts(unit, 'separatedmaterial'),
      ...(unit.parent === undefined ? [] : identifierOf(unit.parent)),
    ],
    rights: [
      // Where a part has conditions of its own, those of a unit above need not hold.
      ...(partsHave(unit.tree, 'accessrestrict') ? texts : inherited)(unit, 'accessrestrict/p'),
      ...['accessrestrict/legalstatus', 'userestrict/p'].flatMap((path) => inherited(unit, path)),
    ],
    source: texts(unit, 'originalsloc'),
    type: texts(unit, 'controlaccess/genreform'),
  };
}

/** The reference code, which is the unit's first number unless it is of another type; else its id. */
function identifierOf({ tree }: Unit): string[] {
  const [code] = at(tree, 'did/unitid').filter(({ attributes }) => attributes.type === undefined);
  return [code === undefined ? (tree.attributes.id ?? '') : textOf(code)];
}

function holdRecordsAgainstEad(aid: FindingAid): number {
  const ead = parseTree([...writeXml(ead2002(aid))].join(''));
  const [archdesc] = elementsOf(ead, 'archdesc');
  const [eadid] = at(ead, 'eadheader/eadid').map(textOf);
  const units = archdesc === undefined ? [] : unitsOf(archdesc);
  const records = [...dublinCore(aid, 'otherlevel')]
    .filter(({ xml }) => xml)
    .map(({ content }) => parseTree([...content].join('')));
  expect(records.length).toBe(units.length);
  for (const [index, unit] of units.entries()) {
    const record = records[index];
    const said = (name: string) =>
      record === undefined ? [] : elementsOf(record, `dc:${name}`).map((one) => plain(textOf(one)));
    for (const [names, wanted] of Object.entries(expectedOf(unit, eadid ?? ''))) {
      const found = names.split(' ').flatMap(said);
      const missing = wanted.map(plain).filter((value) => !found.some((text) => text.includes(value)));
      expect([unit.tree.attributes.id, names, missing]).toEqual([unit.tree.attributes.id, names, []]);
    }
    // One term of the DCMI Type Vocabulary, or none.
    const terms = said('type')
      .slice(0, 1)
      .filter((type) => DCMI_TYPES.includes(type));
    expect(terms.length).toBeLessThan(2);
  }
  return records.length;
}

describe('simple Dublin Core and the EAD of the same finding aid', () => {
  it('say the same of every unit of the example', async () => {
    const aid = arrange(await loadCatalogue(EXAMPLE), '2026-05-14');
    expect(holdRecordsAgainstEad(aid)).toBeGreaterThan(200);
  });

  it('say the same of finding aids of every shape', () => {
    fc.assert(
      fc.property(arbitraryFindingAid({ complete: false, largest: 4 }), (aid) => {
        holdRecordsAgainstEad(aid);
      }),
      { numRuns: times(150) },
    );
  });
});
