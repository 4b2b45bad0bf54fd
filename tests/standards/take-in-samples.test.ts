import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson, findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { notHeld } from '../../src/export/ead/not-held.ts';
import { takeIn } from '../../src/export/ead/take-in.ts';
import { ead3 } from '../../src/export/ead3/index.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { writeXml } from '../../src/xml/write.ts';
import * as in3 from '../support/ead3-schemas.ts';
import * as in2002 from '../support/ead2002-schemas.ts';
import { describeWithSamples } from '../support/outside.ts';
import { elementsOf, parseTree, type Tree } from '../support/xml-tree.ts';

const WRITE = { ead3, ead2002 };
type Version = keyof typeof WRITE;
const VERSIONS = ['ead3', 'ead2002'] as const;
const otherThan = (version: Version): Version => (version === 'ead3' ? 'ead2002' : 'ead3');

/**
 * What is in a sample and not in its export in the same version, or the other way round, each with the reason why it
 * is no loss. There is nothing: not a word and not an attribute. (Names of elements are not compared: numbered
 * components come back as `c`. Comments and processing instructions, which are not the finding aid's own words, and
 * declarations of namespaces are left out on both sides.)
 */
const EXPLAINED: readonly { sample: string; what: string; why: string }[] = [];

const counted = (entries: readonly string[]) => {
  const counts = new Map<string, number>();
  for (const entry of entries) counts.set(entry, (counts.get(entry) ?? 0) + 1);
  return counts;
};

/** Every word, parted by the white space of XML; and every attribute with its value, by the element it stands in. */
function contentOf(xml: string | Uint8Array): { words: string[]; attributes: string[] } {
  const words: string[] = [];
  const attributes: string[] = [];
  const walk = (tree: Tree): void => {
    const name = tree.name.replace(/^c\d\d$/, 'c');
    for (const [key, value] of Object.entries(tree.attributes))
      if (!/^xmlns(?::|$)/.test(key)) attributes.push(`${name}/@${key}=${value}`);
    for (const child of tree.children)
      if (typeof child === 'string') words.push(...(child.match(/[^ \t\r\n]+/g) ?? []));
    for (const child of elementsOf(tree)) walk(child);
  };
  walk(parseTree(xml));
  return { words, attributes };
}

/** What is in one multiset and not in the other. */
function beyond(one: readonly string[], other: readonly string[]): string[] {
  const rest = counted(other);
  return one.filter((entry) => {
    const left = rest.get(entry) ?? 0;
    if (left > 0) rest.set(entry, left - 1);
    return left === 0;
  });
}

const unexplained = (sample: string, entries: readonly string[]) =>
  entries.filter((entry) => !EXPLAINED.some((row) => row.sample === sample && row.what === entry));

describeWithSamples('every sample', (samples, schemas) => {
  const validators = {
    ead3: in3.validatorBy(in3.publishedXsd(schemas)),
    ead2002: in2002.validatorBy(in2002.publishedXsd(schemas)),
  };
  // The body of a suite that is left out is run all the same.
  const files = (samples === '' ? [] : VERSIONS).flatMap((version) =>
    readdirSync(join(samples, version))
      .filter((name) => name.endsWith('.xml'))
      .map((name): [string, Version] => [name, version]),
  );

  /** As it comes out of the catalogue folder. */
  const taken = new Map<string, Promise<FindingAid>>();
  const takenIn = (name: string, version: Version): Promise<FindingAid> => {
    const known = taken.get(name);
    if (known !== undefined) return known;
    const bytes = readFileSync(join(samples, version, name));
    const made = takeIn(bytes, name, '2026-05-14').then(({ aid }) =>
      findingAidFromJson([...findingAidToJson(aid)].join('')),
    );
    taken.set(name, made);
    return made;
  };
  const xmlOf = (aid: FindingAid, version: Version) => [...writeXml(WRITE[version](aid))].join('');

  it('is there: 16 in EAD3 and 10 in EAD 2002', () => {
    expect(files.filter(([, version]) => version === 'ead3')).toHaveLength(16);
    expect(files.filter(([, version]) => version === 'ead2002')).toHaveLength(10);
  });

  it.each(files)('%s becomes a finding aid of the model', async (name, version) => {
    expect(findingAid.safeParse(await takenIn(name, version)).error).toBeUndefined();
  });

  it.each(files)('%s comes out again in %s word for word and valid', async (name, version) => {
    const xml = xmlOf(await takenIn(name, version), version);
    const before = contentOf(readFileSync(join(samples, version, name)));
    const after = contentOf(xml);
    expect(before.words.length).toBeGreaterThan(100);
    for (const kind of ['words', 'attributes'] as const) {
      expect(unexplained(name, beyond(before[kind], after[kind]))).toEqual([]);
      expect(unexplained(name, beyond(after[kind], before[kind]))).toEqual([]);
    }
    expect(validators[version](xml)).toEqual([]);
  });

  it.each(files)('%s keeps the order of its words in %s', async (name, version) => {
    const xml = xmlOf(await takenIn(name, version), version);
    const before = contentOf(readFileSync(join(samples, version, name)));
    expect(contentOf(xml).words.join(' ')).toBe(before.words.join(' '));
  });

  it.each(files)(
    '%s, of %s, is valid in the other version, and what that does not hold is said',
    async (name, version) => {
      const aid = await takenIn(name, version);
      const other = otherThan(version);
      const xml = xmlOf(aid, other);
      expect(validators[other](xml)).toEqual([]);
      // Punctuation that parted two things in one version need not part them in the other.
      const plain = (words: readonly string[]) =>
        words.flatMap((word) => word.match(/[\p{L}\p{N}]+/gu) ?? []);
      const after = contentOf(xml);
      const values = after.attributes.flatMap((entry) => [entry.slice(entry.indexOf('=') + 1)]);
      const missing = beyond(plain(contentOf(readFileSync(join(samples, version, name))).words), [
        ...plain(after.words),
        ...values,
        ...plain(values),
      ]);
      const said = notHeld(aid, other).words.flatMap(({ word, count }) => Array<string>(count).fill(word));
      expect(beyond(missing, said)).toEqual([]);
    },
  );
});
