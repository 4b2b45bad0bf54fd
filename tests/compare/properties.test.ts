import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Component, component } from '../../src/catalogue/component.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { fieldsOf } from '../../src/catalogue/schema-at.ts';
import { compareFindingAids, isEmpty } from '../../src/compare/index.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { times } from '../support/times.ts';

const runs = { numRuns: times(150) };

const unitsBelow = (unit: Component): Component[] => [unit, ...unit.children.flatMap(unitsBelow)];

test('a finding aid does not differ from itself, whether its ids stay or not', () => {
  fc.assert(
    fc.property(arbitraryFindingAid({ complete: false }), fc.boolean(), (aid, idsStay) => {
      expect(isEmpty(compareFindingAids(aid, structuredClone(aid), { idsStay }))).toBe(true);
    }),
    runs,
  );
});

/** Titles that occur once each, so that there is one right answer to the question which unit is which. */
function distinct(aid: FindingAid): FindingAid {
  const copy = structuredClone(aid);
  unitsBelow(copy.collection).forEach((unit, at) => {
    unit.title = `${unit.title} ${at}x`;
  });
  return copy;
}

type Edit =
  | 'title'
  | 'scopeAndContent'
  | 'accessPoints'
  | 'otherIdentifiers'
  | 'dates'
  | 'remove'
  | 'move'
  | 'add';
const EDITS: readonly Edit[] = [
  ...(['title', 'scopeAndContent', 'accessPoints', 'otherIdentifiers', 'dates'] as const),
  ...(['remove', 'move', 'add'] as const),
];

/** What is to be reported, by the ids of the units. */
interface Report {
  added: string[];
  removed: string[];
  moved: string[];
  changed: Record<string, string[]>;
}

/** Edits units of a finding aid, each at most once, and notes what was done. */
function edited(
  aid: FindingAid,
  edits: readonly { at: number; edit: Edit }[],
): { aid: FindingAid; done: Report } {
  const copy = structuredClone(aid);
  const units = unitsBelow(copy.collection);
  const parentOf = new Map(units.flatMap((unit) => unit.children.map((child) => [child, unit] as const)));
  const done: Report = { added: [], removed: [], moved: [], changed: {} };
  const touched = new Set<Component>();
  edits.forEach(({ at, edit }, mark) => {
    const unit = units[at % units.length];
    if (unit === undefined || touched.has(unit)) return;
    touched.add(unit);
    const parent = parentOf.get(unit);
    const leave = () => parent?.children.splice(parent.children.indexOf(unit), 1);
    // Only what had nothing below it from the start, and nothing was put below since.
    const isLeaf = parent !== undefined && unit.children.length === 0;
    if (edit === 'add') {
      unit.children.push(component.parse({ id: `new-${mark}`, level: 'item', title: `New ${mark}y` }));
      done.added.push(`new-${mark}`);
    } else if (edit === 'remove') {
      if (!isLeaf) return;
      leave();
      done.removed.push(unit.id);
    } else if (edit === 'move') {
      if (!isLeaf || parent === copy.collection) return;
      leave();
      copy.collection.children.push(unit);
      done.moved.push(unit.id);
    } else {
      if (edit === 'accessPoints') unit.accessPoints.push({ type: 'place', term: `Mark ${mark}z` });
      else if (edit === 'otherIdentifiers') unit.otherIdentifiers.push({ type: 'mark', value: `${mark}z` });
      else if (edit === 'dates') unit.dates = [{ type: 'inclusive', expression: `mark ${mark}z` }];
      else unit[edit] = `Mark ${mark}z`;
      done.changed[unit.id] = [edit];
    }
  });
  return { aid: copy, done };
}

const someEdits = fc.array(fc.record({ at: fc.nat({ max: 60 }), edit: fc.constantFrom(...EDITS) }), {
  maxLength: 8,
});

test('edits are reported, each of them, and nothing else', () => {
  let seen = 0;
  fc.assert(
    fc.property(arbitraryFindingAid({ complete: false }).map(distinct), someEdits, (before, edits) => {
      const { aid, done } = edited(before, edits);
      seen += done.removed.length + done.moved.length;
      const { added, removed, moved, changed, people, description } = compareFindingAids(before, aid);
      expect({
        added: added.map(({ unit }) => unit.id).sort(),
        removed: removed.map(({ unit }) => unit.id).sort(),
        moved: moved.map(({ now }) => now.id).sort(),
        changed: Object.fromEntries(
          changed.map(({ was, fields }) => [was.id, fields.map(({ field }) => field)]),
        ),
      }).toEqual({
        added: done.added.sort(),
        removed: done.removed.sort(),
        moved: done.moved.sort(),
        changed: done.changed,
      });
      expect([people.added, people.removed, people.changed, description].flat()).toEqual([]);
    }),
    { numRuns: times(400) },
  );
  expect(seen).toBeGreaterThan(times(20));
});

test('somebody renamed, and another title of the finding aid, are reported alone', () => {
  fc.assert(
    fc.property(arbitraryFindingAid({ complete: false }), fc.nat(), (before, at) => {
      const after = structuredClone(before);
      const agent = after.people[at % Math.max(1, after.people.length)];
      if (agent !== undefined) agent.name = 'Somebody Else';
      after.control.title = 'Another title';
      const { changed, people, description, ...rest } = compareFindingAids(before, after);
      expect(changed).toEqual([]);
      expect([rest.added, rest.removed, rest.moved, people.added, people.removed].flat()).toEqual([]);
      expect(people.changed.map(({ was, fields }) => [was.id, fields.map(({ field }) => field)])).toEqual(
        agent === undefined ? [] : [[agent.id, ['name']]],
      );
      expect(description.map(({ field }) => field)).toEqual(['title']);
    }),
    runs,
  );
});

describe('any two finding aids', () => {
  // Links and containers are compared by what they mean; that is tested by hand.
  const LITERAL = fieldsOf(component)
    .map(([field]) => field as keyof Component)
    .filter((field) => !['id', 'children', 'creators', 'people', 'containers', 'kept'].includes(field));

  /** A value as text, what is empty left out; fields of objects in one order. */
  const text = (value: unknown): string => {
    if (Array.isArray(value)) return `[${value.map(text).join()}]`;
    if (typeof value !== 'object' || value === null) return String(JSON.stringify(value));
    const entries = Object.entries(value).filter(([, one]) => one !== undefined && text(one) !== '[]');
    return `{${entries
      .map(([key, one]) => `${key}:${text(one)}`)
      .sort()
      .join()}}`;
  };
  const said = (value: unknown) => (text(value) === '[]' ? text(undefined) : text(value));

  test('every unit is accounted for, and the fields reported are those that differ', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), arbitraryFindingAid(), fc.boolean(), (a, b, idsStay) => {
        const [as, bs] = [a, b].map(({ collection }) => unitsBelow(collection));
        const { added, removed, changed } = compareFindingAids(a, b, { idsStay });
        expect((as?.length ?? 0) - removed.length).toBe((bs?.length ?? 0) - added.length);
        expect(new Set(removed.map(({ unit }) => unit.id)).size).toBe(removed.length);
        for (const { was, now, fields } of changed) {
          const one = as?.find(({ id }) => id === was.id);
          const other = bs?.find(({ id }) => id === now.id);
          const differing = LITERAL.filter((field) => said(one?.[field]) !== said(other?.[field]));
          const reported = fields
            .map(({ field }) => field)
            .filter((field) => LITERAL.includes(field as keyof Component));
          expect(reported).toEqual(differing);
        }
      }),
      runs,
    );
  });

  test('the same two always give the same comparison', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), arbitraryFindingAid(), (a, b) => {
        expect(compareFindingAids(structuredClone(a), structuredClone(b))).toEqual(compareFindingAids(a, b));
      }),
      { numRuns: times(50) },
    );
  });
});
