import { describe, expect, test } from 'vitest';
import { gatherAgents } from '../../src/arrange/agents.ts';
import { someSettings } from '../support/catalogue.ts';

const agentOf = (person: Record<string, unknown>) =>
  gatherAgents(someSettings({ people: [{ name: 'Ada Quill', ...person }] })).all()[0];

// EAC-CPF gives each place a role; where somebody was born and died is told apart from where they lived.
describe('the places of a person in collection.yaml', () => {
  test('are that of birth, those of living, that of death', () => {
    const places = ['Millrace', 'Nordvik'];
    expect(agentOf({ birthplace: 'Tollbridge', places, deathplace: 'Applegarth' })?.places).toEqual([
      { name: 'Tollbridge', role: 'birth' },
      { name: 'Millrace', role: 'residence' },
      { name: 'Nordvik', role: 'residence' },
      { name: 'Applegarth', role: 'death' },
    ]);
  });

  test('of which those that are not known are left out', () => {
    expect(agentOf({ deathplace: 'Applegarth' })?.places).toEqual([{ name: 'Applegarth', role: 'death' }]);
    expect(agentOf({ birthplace: 'Tollbridge' })?.places).toEqual([{ name: 'Tollbridge', role: 'birth' }]);
    expect(agentOf({})).not.toHaveProperty('places');
  });

  test('nobody lives in an organisation’s places: it is there', () => {
    const company = { type: 'corporateBody', places: ['Quill Landing'] };
    expect(agentOf(company)?.places).toEqual([{ name: 'Quill Landing', role: 'location' }]);
    expect(agentOf({ ...company, type: 'family' })?.places).toEqual([
      { name: 'Quill Landing', role: 'residence' },
    ]);
  });
});

describe('the relations of a person in collection.yaml', () => {
  const people = [
    {
      name: 'Ada Quill',
      relations: [
        { to: 'nils rook', as: 'aunt' },
        { to: 'Nobody Known', as: 'friend' },
      ],
    },
    { name: 'Nils Rook', also: ['N. Rook'] },
    { name: 'Edmund Heron', relations: [{ to: 'N. Rook', as: 'neighbour' }] },
    { name: 'Bruno Heron', relations: [{ to: 'the ferryman', as: 'guest' }] },
  ];
  const gathered = () => gatherAgents(someSettings({ people }));

  test('lead to whoever is named, also further down and under another name', () => {
    const agents = gathered();
    const [ada, nils, edmund] = agents.all();
    expect(nils?.id).toBe(agents.idOf('Nils Rook'));
    expect(ada?.relations).toEqual([{ agent: nils?.id, as: 'aunt' }]);
    expect(edmund?.relations).toEqual([{ agent: nils?.id, as: 'neighbour' }]);
  });

  test('are left out where nobody of the file is named so', () => {
    const [, nils, , bruno, ...others] = gathered().all();
    for (const one of [nils, bruno]) expect(one).not.toHaveProperty('relations');
    expect(others).toEqual([]);
  });
});

// XML 1.0, 2.3 and Namespaces in XML, 3: an id begins with a letter or an underscore and is that of one element.
test('the ids of people are ids in XML, each of one person', () => {
  const names = ['Ada Quill', 'Ada-Quill', 'ADA QUILL!', '2nd ferry company', '三', '四', '-', 'agent'];
  const agents = gatherAgents(someSettings({ people: names.map((name) => ({ name })) }));
  const ids = agents.all().map(({ id }) => id);
  expect(new Set(ids).size).toBe(names.length);
  for (const id of ids) expect(id).toMatch(/^[A-Za-z_][A-Za-z0-9._-]*$/);
  for (const [at, id] of ids.entries()) expect(agents.get(id)).toMatchObject({ name: names[at], rank: at });
  expect(agents.get('nobody-of-that-id')).toBeUndefined();
});

// Common practice: such words are names of organisations, save where they are plainly somebody's surname.
test.each([
  ['Millrace Silver Band', 'corporateBody'],
  ['Millrace Choir', 'corporateBody'],
  ['Tollbridge Orchestra', 'corporateBody'],
  ['Ferry Football Team', 'corporateBody'],
  ['Hask & Sons', 'corporateBody'],
  ['Applegarth Church School', 'corporateBody'],
  ['Quill family', 'family'],
  ['Hattie Bandmann', 'person'],
  ['Mrs Church', 'person'],
  ['Miss Ada Band', 'person'],
  ['Church, Ada', 'person'],
  ['Teamer, Nils', 'person'],
])('%s names a %s', (name, type) => {
  const agents = gatherAgents(someSettings({}));
  agents.idOf(name);
  expect(agents.all()).toMatchObject([{ name, type }]);
});
