import { expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { reviewUncounted } from '../../src/review/uncounted.ts';
import { someCatalogue, someThing } from '../support/catalogue.ts';

function found(...things: Partial<Thing>[]) {
  const catalogue = someCatalogue(
    {},
    things.map((thing, at) => someThing({ row: at + 2, title: `Thing ${at + 2}`, ...thing })),
  );
  return reviewUncounted(catalogue, arrange(catalogue, '2026-01-01'));
}

// DACS 2.5 wants a number with each kind of material.
test('words for several without a number are told together, in one finding', () => {
  const [finding, ...others] = found({ kind: 'letters' }, { kind: 'letter' }, { kind: 'photos' });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ rule: 'words.uncounted', weight: 'consider', place: { row: 2 } });
  expect(finding?.found).toContain('“Thing 2” (row 2) and “Thing 4” (row 4)');
});

test('nothing is said of one thing, of a number, nor of a number that was told to be unreadable', () => {
  expect(
    found(
      { kind: 'letter' },
      { kind: 'letters', quantity: 4 },
      { kind: 'letters', quantityUnread: true },
      {},
    ),
  ).toEqual([]);
});
