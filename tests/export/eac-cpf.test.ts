import { describe, expect, test } from 'vitest';
import { type Agent, agent as agentSchema } from '../../src/catalogue/agent.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { keysAt } from '../../src/catalogue/schema-at.ts';
import { eacCpfRecords } from '../../src/export/eac-cpf/records.ts';
import { ADA, aidWith, all, texts, treeOf } from '../support/eac-cpf-tree.ts';
import { everyElement, textOf } from '../support/xml-tree.ts';

const files = (aid: FindingAid) => [...eacCpfRecords(aid)].map(({ path }) => path);

/** An agent of which everything is known, each text a marker of its own. */
const FULL: Agent = {
  id: 'marker-id',
  type: 'corporateBody',
  name: 'marker name',
  authorizedForm: 'marker heading',
  nameParts: [
    { type: 'surname', text: 'marker surname' },
    { type: 'forename', text: 'marker forename' },
    { type: 'other', text: 'marker suffix' },
  ],
  variants: ['marker variant 1', 'marker variant 2'],
  birth: '1902-05-14',
  death: '1988~',
  places: [
    { name: 'marker birthplace', role: 'birth' },
    { name: 'marker home', role: 'residence' },
    { name: 'marker deathplace', role: 'death' },
  ],
  occupations: ['marker occupation 1', 'marker occupation 2'],
  relations: [{ agent: 'ada', as: 'marker relation' }],
  history: 'marker history 1\n\nmarker history 2',
  source: 'marker source',
  identifier: 'https://example.org/marker?a=1&b=2',
};

describe('a record of which everything is known', () => {
  const tree = treeOf(FULL, aidWith([FULL, ADA]));

  test('loses nothing: every field of the model is in it', () => {
    expect(Object.keys(FULL).sort()).toEqual(keysAt(agentSchema, []).sort());
    const said = new Set(
      everyElement(tree).flatMap(({ element }) => [textOf(element), ...Object.values(element.attributes)]),
    );
    const markers = JSON.stringify(FULL).match(/marker [a-z]+(?: \d)?/g) ?? [];
    expect(markers.length).toBe(16);
    for (const marker of [...markers, FULL.identifier, FULL.type, '1902-05-14', '1988']) {
      expect([marker, said.has(marker ?? '')]).toEqual([marker, true]);
    }
    expect(texts(tree, 'recordId')).toEqual(['QF-marker-id']);
    expect(texts(tree, 'targetEntity')).toEqual([expect.stringContaining('Ada Quill')]);
  });

  test('says what each thing is', () => {
    expect(all(tree, 'nameEntry').map(({ attributes: { status } }) => status)).toEqual([
      'authorized',
      ...Array(4).fill('alternative'),
    ]);
    expect(texts(tree, 'placeRole')).toEqual(['birth', 'residence', 'death']);
    expect(texts(tree, 'targetRole')).toEqual(['marker relation']);
    expect(all(tree, 'biogHist')[0]?.children.filter((child) => typeof child !== 'string')).toHaveLength(2);
    expect(all(tree, 'identityId')[0]?.attributes).toEqual({
      valueURI: 'https://example.org/marker?a=1&b=2',
      vocabularySource: 'marker source',
    });
  });
});

describe('who is written', () => {
  const extras: Omit<Agent, 'id' | 'type' | 'name'>[] = [
    { birth: '1902' },
    { death: '1988' },
    { variants: ['Aunt Ada'] },
    { places: [{ name: 'Quill Landing', role: 'birth' }] },
    { occupations: ['teacher'] },
    { relations: [{ agent: 'ada', as: 'herself' }] },
    { history: 'She taught.' },
    { identifier: '42' },
  ];

  test.each(extras)('who has more than a name: %j', (extra) => {
    expect(files(aidWith([{ ...ADA, ...extra }]))).toEqual(['eac-cpf/ada.xml']);
  });

  test('nobody else: a heading, a name taken apart and empty lists are no more than a name', () => {
    const bare: Agent = {
      ...ADA,
      authorizedForm: 'Quill, Ada',
      nameParts: [{ type: 'surname', text: 'Quill' }],
      source: 'local',
      ...{ variants: [], places: [], occupations: [], relations: [] },
    };
    expect(files(aidWith([ADA, bare]))).toEqual([]);
  });
});

describe('relations', () => {
  const NILS: Agent = { id: 'nils', type: 'person', name: 'Nils Quill', birth: '1870' };
  const COOK: Agent = { id: 'cook', type: 'person', name: 'The cook' };
  const ada: Agent = {
    ...ADA,
    relations: [
      { agent: 'nils', as: 'father' },
      { agent: 'cook', as: 'friend' },
      { agent: 'nobody', as: 'ghost' },
    ],
  };
  const related = (agent: Agent, aid: FindingAid) =>
    all(treeOf(agent, aid), 'relation').map((relation) => [
      ...texts(relation, 'targetRole'),
      ...texts(relation, 'relationType'),
      all(relation, 'targetEntity')[0]?.attributes.targetType,
      all(relation, 'targetEntity')[0]?.attributes.valueURI,
      ...texts(relation, 'part'),
    ]);

  test('point to the record of the other, where it has one', () => {
    expect(related(ada, aidWith([ada, NILS, COOK]))).toEqual([
      ['father', 'person', 'QF-nils', 'Nils Quill'],
      ['friend', 'person', undefined, 'The cook'],
    ]);
  });

  test('go one way where one is stated, and both ways only where both are', () => {
    expect(related(NILS, aidWith([ada, NILS]))).toEqual([]);
    const nils: Agent = { ...NILS, relations: [{ agent: 'ada', as: 'daughter' }] };
    expect(related(nils, aidWith([ada, nils]))).toEqual([['daughter', 'person', 'QF-ada', 'Ada Quill']]);
  });

  // ISAAR(CPF) 6, from memory: creator of the resource, or its subject.
  test('to the collection: its creator, maker of something in it, its subject, or none (DACS 2.6)', () => {
    const people = [ada, NILS, COOK, { ...COOK, id: 'maid' }];
    const [series] = aidWith(people).collection.children;
    const aid = aidWith(people, {
      creators: [{ agent: 'ada' }],
      people: [{ agent: 'ada' }, { agent: 'cook', role: 'correspondent' }],
      children: series ? [{ ...series, creators: [{ agent: 'nils', role: 'photographer' }] }] : [],
    });
    const [, , , maid] = people;
    const resource = ['resource', 'QF', 'Quill family papers', 'QF'];
    expect(related(ada, aid).at(-1)).toEqual(['creatorOf', ...resource]);
    expect(related(NILS, aid)).toEqual([['associatedWith', ...resource]]);
    expect(related(COOK, aid)).toEqual([['subjectOf', ...resource]]);
    expect(maid && related(maid, aid)).toEqual([]);
    expect(texts(treeOf(NILS, aid), 'descriptiveNote')).toContainEqual(
      expect.stringContaining('In the finding aid as photographer.'),
    );
  });

  test('ids that no address can hold are encoded', () => {
    const aid = aidWith([ada, NILS]);
    const odd = { ...aid, control: { ...aid.control, recordId: 'Q F/1 é' } };
    expect(related(ada, odd)[0]).toContain('Q%20F%2F1%20%C3%A9-nils');
    expect(texts(treeOf(NILS, odd), 'recordId')).toEqual(['Q F/1 é-nils']);
  });
});
