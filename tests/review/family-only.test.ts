import { describe, expect, test } from 'vitest';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewFamilyOnly } from '../../src/review/family-only.ts';
import { someCatalogue, someThing } from '../support/catalogue.ts';

const found = (thing: Partial<Thing>, settings: Record<string, unknown> = {}) =>
  reviewFamilyOnly(someCatalogue(settings, [someThing({ row: 2, title: 'Lois to Peter', ...thing })]));

describe('access for the family only', () => {
  test.each(['family only', 'Family only, until 2035', 'only for us'])(
    '%s keeps a thing at home',
    (access) => {
      const [one, ...more] = found({ access });
      expect(more).toEqual([]);
      expect(one).toMatchObject({
        rule: 'access.family-only',
        weight: 'consider',
        place: { row: 2, column: 'access' },
      });
      expect(one?.found).toContain(`“${access}” is taken to mean that it stays with you`);
      expect(one?.found).toContain('“Lois to Peter” (row 2)');
      expect(one?.advice).toContain('write “closed”');
    },
  );

  test.each([
    ['what is said under “stays”', { access: 'family only', stays: 'yes' }],
    ['what says itself that it stays', { access: 'stays with us, family only' }],
    ['what is closed', { access: 'closed' }],
    ['what the family may see as well as others', { access: 'family and historians' }],
    ['what says nothing', {}],
  ])('not of %s', (_, thing) => {
    expect(found(thing)).toEqual([]);
  });

  test('nor of what collection.yaml keeps by title or number', () => {
    const keep = (name: string) => ({ handOver: { keep: [name] } });
    expect(found({ access: 'family only' }, keep('lois to peter'))).toEqual([]);
    expect(found({ access: 'family only', number: '7' }, keep('7'))).toEqual([]);
    expect(found({ access: 'family only', number: '8' }, keep('7'))).toHaveLength(1);
  });

  test('a group, and the whole collection', () => {
    const says = (settings: Record<string, unknown>) => found({}, settings).map(({ found: words }) => words);
    expect(says({ groups: { Correspondence: { access: 'Family only.' } } })).toEqual([
      expect.stringMatching(/“Family only\.” is taken .*the group “Correspondence”/),
    ]);
    expect(says({ access: 'Only for the family.' })).toEqual([
      expect.stringMatching(/“Only for the family\.” .*whole collection/),
    ]);
    expect(says({ access: 'Open to everybody.' })).toEqual([]);
  });

  test('several ways of writing it in one finding', () => {
    const list = ['family only', 'only us'].map((access, at) => someThing({ row: at + 2, access }));
    const [one, ...more] = reviewFamilyOnly(someCatalogue({}, list));
    expect(more).toEqual([]);
    expect(one?.found).toMatch(/^“family only”, “only us” are taken/);
  });
});
