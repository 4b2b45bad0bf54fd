import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { verifyBag } from '../../src/handover/bag/index.ts';
import { judgeByRfc } from '../handover/bag/rfc-validator.ts';
import { describeWithSamples } from '../support/outside.ts';

/**
 * The verdict that the folder of each sample stands for, and the rule that has to speak. Samples for one platform are to
 * be refused on all: what is a plain name here is a way out of the bag there.
 */
const SAMPLES: readonly [sample: string, verdict: 'valid' | 'warning' | 'invalid', ...rules: string[]][] = [
  ['invalid/baginfo-missing-encoding', 'invalid', 'bag.declaration', 'bag.changed'],
  ['invalid/bom-in-bagit.txt', 'invalid', 'bag.declaration'],
  ['invalid/corrupt-data-file', 'invalid', 'bag.changed'],
  ['invalid/corrupt-tag-file', 'invalid', 'bag.changed'],
  ['invalid/extra-file-in-bag', 'invalid', 'bag.extra'],
  ['invalid/invalid-version-number', 'invalid', 'bag.declaration', 'bag.changed'],
  ['invalid/missing-baginfo', 'invalid', 'bag.missing'],
  ['invalid/missing-bagit.txt', 'invalid', 'bag.declaration', 'bag.missing'],
  ['invalid/out-of-scope-file-paths-using-dot-notation', 'invalid', 'bag.path-out'],
  ['invalid/out-of-scope-file-paths-using-dot-notation-for-fetch', 'invalid', 'bag.path-out'],
  ['invalid/same-filename-listed-twice-with-different-hashes', 'invalid', 'bag.listed-twice'],
  ['linux-only/out-of-scope-file-paths-using-absolute-path', 'invalid', 'bag.path-out'],
  ['linux-only/out-of-scope-file-paths-using-absolute-path-for-fetch', 'invalid', 'bag.path-out'],
  ['linux-only/out-of-scope-file-paths-using-shortcut', 'invalid', 'bag.path-out'],
  ['linux-only/out-of-scope-file-paths-using-shortcut-for-fetch', 'invalid', 'bag.path-out'],
  ['linux-only/out-of-scope-file-paths-using-shortcut-username', 'invalid', 'bag.path-out'],
  ['linux-only/out-of-scope-file-paths-using-shortcut-username-for-fetch', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-absolute-path', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-absolute-path-for-fetch', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-shortcut', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-shortcut-for-fetch', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-unc', 'invalid', 'bag.path-out'],
  ['windows-only/out-of-scope-file-paths-using-unc-for-fetch', 'invalid', 'bag.path-out'],
  ['valid/ISO-8859-1-encoded-tag-files', 'valid'],
  ['valid/UTF-16-encoded-tag-files', 'valid'],
  ['valid/bag-in-a-bag', 'valid'],
  ['valid/bag-with-encoded-names', 'valid'],
  ['valid/bag-with-escapable-characters', 'valid'],
  // The same ./ that stands under "warning" in relative-path: valid, and said nevertheless.
  ['valid/bag-with-leading-dot-slash-in-manifest', 'valid', 'bag.dotted'],
  ['valid/bag-with-space', 'valid'],
  ['valid/basic-bag', 'valid'],
  ['valid/duplicate-metadata-entries', 'valid'],
  ['valid/holey-bag', 'valid'],
  ['valid/minimal-bag', 'valid'],
  ['valid/uncommon-metadata-separators', 'valid'],
  ['warning/duplicate-file-with-different-case', 'warning', 'bag.other-form'],
  ['warning/made-with-md5sum-tools', 'warning', 'bag.marked'],
  ['warning/relative-path', 'warning', 'bag.dotted'],
  ['warning/same-filename-listed-twice-with-different-normalization', 'warning', 'bag.other-form'],
  ['warning/same-filename-listed-twice-with-the-same-hash', 'warning', 'bag.listed-twice'],
  ['warning/special-system-files', 'warning', 'bag.system-file'],
];

/**
 * Where the samples mean a warning and the RFC, taken at its word on a system that tells names apart by case and by
 * normalisation, refuses: a listed file is not there. The last has lost its .DS_Store on the way to us.
 */
const REFUSED_TO_THE_LETTER = new Set([
  'warning/duplicate-file-with-different-case',
  'warning/same-filename-listed-twice-with-different-normalization',
  'warning/special-system-files',
]);

describeWithSamples('the sample bags', (samples) => {
  const folder = join(samples, 'bagit', 'v0.97');

  test('are all in the table', () => {
    const there = readdirSync(folder, { withFileTypes: true }).flatMap(({ name: kind }) =>
      readdirSync(join(folder, kind), { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map(({ name }) => `${kind}/${name}`),
    );
    expect(SAMPLES.map(([sample]) => sample).sort()).toEqual(there.sort());
  });

  test.each(SAMPLES)('%s: %s', async (sample, verdict, ...rules) => {
    const { valid, findings } = await verifyBag(join(folder, sample));
    expect(valid).toBe(verdict !== 'invalid');
    const spoke = new Set(findings.filter(({ weight }) => weight !== 'consider').map(({ rule }) => rule));
    expect([...spoke].sort()).toEqual([...rules].sort());
    // Written from the RFC alone.
    expect(judgeByRfc(join(folder, sample)).length === 0).toBe(valid && !REFUSED_TO_THE_LETTER.has(sample));
  });
});
