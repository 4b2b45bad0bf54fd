import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSame } from '../../src/export/ead/same.ts';
import { AS_LAID_OUT, countBeyond } from '../../src/export/ead/say-kept.ts';
import { compact } from '../../src/intake/ead/compact.ts';
import type { Found } from '../../src/intake/ead/found.ts';

const name = fc.constantFrom('c', 'did');
const attributes = fc.dictionary(fc.constantFrom('id', 'level'), fc.constantFrom('1', '2'), { maxKeys: 2 });
const { tree } = fc.letrec<{ tree: Found }>((tie) => ({
  tree: fc.record({
    name,
    attributes,
    children: fc.array(fc.oneof(fc.constantFrom('', 'a', 'b', 'ab'), tie('tree')), { maxLength: 3 }),
  }),
}));

/** The same, its texts in single letters. */
const inLetters = (element: Found): Found => ({
  ...element,
  children: element.children.flatMap((child): (Found | string)[] =>
    typeof child === 'string' ? child.split('') : [inLetters(child)],
  ),
});
const pair = fc.oneof(
  fc.tuple(tree, tree),
  tree.map((one): [Found, Found] => [one, inLetters(one)]),
);

/** Some children as one lazy list, as the writers may give them. */
const lazy = (element: Found) => ({ ...element, children: element.children.values() });

describe('whether two elements are the same when written', () => {
  it('is what comparing them as text says', () => {
    let same = 0;
    let different = 0;
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const expected = compact(one) === compact(other);
        if (expected) same += 1;
        else different += 1;
        expect(isSame(one, other)).toBe(expected);
        expect(isSame(one, lazy(one))).toBe(true);
      }),
      { numRuns: 2000 },
    );
    // Else nothing was held against anything.
    expect(same).toBeGreaterThan(400);
    expect(different).toBeGreaterThan(400);
  });

  it('leaves out attributes that are undefined', () => {
    const one = { name: 'c', attributes: { id: undefined, level: 'file' }, children: [] };
    const other = { name: 'c', attributes: { level: 'file', otherlevel: undefined }, children: [] };
    expect(isSame(one, other)).toBe(true);
    expect(isSame(one, { ...other, attributes: { level: 'file', id: '1' } })).toBe(false);
  });
});

describe('what is found beyond what is written', () => {
  const element = (name: string, attributes: Record<string, string>, ...children: Found[]): Found => ({
    ...{ name, attributes, children },
  });

  it('is counted a unit at a time: what another unit lacks does not make up for it', () => {
    const counting = countBeyond();
    const more = element('c', { id: '1' }, element('did', {}, element('emph', { render: 'bold' })));
    const less = element('c', { id: '1' }, element('did', {}));
    counting.add(more, less);
    counting.add(more, less);
    counting.add(less, more);
    expect(Object.fromEntries(counting.counts())).toEqual({ emph: 2, 'emph/@render': 2, [AS_LAID_OUT]: 1 });
  });
});
