import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { foreignEad2002 } from '../support/foreign-ead.ts';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';
import { describeWithSchemas } from '../support/outside.ts';

/** With a title page, which the schema of EAD 2002 has (frontmatter) and that of EAD3 1.1.1 has not. */
function takenIn(): string {
  const at = freshFolder();
  const dsc =
    '<dsc type="combined"><c level="file"><did><unittitle>Tolls of <emph>Millrace</emph></unittitle></did></c></dsc>';
  const page = '<frontmatter><titlepage><p>Printed for ferrymen</p></titlepage></frontmatter>';
  const xml = foreignEad2002({ dsc }).replace('</eadheader>', `</eadheader>${page}`);
  writeFileSync(join(at, 'their.xml'), xml);
  const folder = join(at, 'taken');
  expect(kinfonds(['take-in', join(at, 'their.xml'), '--into', folder]).code).toBe(0);
  return folder;
}

describeWithSchemas('export of a finding aid that was taken in', (schemas) => {
  const run = (...args: string[]) => kinfonds(['export', ...args, '--schemas', schemas]);

  test('what the other version does not hold is said, and told to machines', () => {
    const folder = takenIn();
    const own = run(folder, '--to', 'ead2002');
    expect([own.code, own.err]).toEqual([0, expect.not.stringContaining('is written without')]);
    const other = run(folder, '--to', 'ead3,ead2002');
    expect(other.code).toBe(0);
    expect(other.err).toMatch(/^EAD3 is written without .*All of it stays in the catalogue\.$/m);
    expect(other.err).not.toMatch(/EAD 2002 is written without/);
    const { written, notHeld } = JSON.parse(run(folder, '--to', 'ead3,ead2002', '--json').out);
    expect(written).toHaveLength(2);
    expect(notHeld).toMatchObject([
      { format: 'ead3', says: expect.stringContaining('EAD3 is written without') },
    ]);
    const words = notHeld[0].words.map(({ word }: { word: string }) => word);
    for (const word of ['Printed', 'ferrymen']) expect(words).toContain(word);
  });

  test('after editing, what somebody changed or took out is not missed', () => {
    const folder = takenIn();
    const before = JSON.parse(run(folder, '--to', 'ead3', '--json').out).notHeld;
    const path = join(folder, 'finding-aid.json');
    const aid = readFileSync(path, 'utf8');
    expect(aid).toContain('"title": "Tolls of Millrace"');
    writeFileSync(path, aid.replace('"title": "Tolls of Millrace"', '"title": "Fares taken at Nordvik"'));
    const after = JSON.parse(run(folder, '--to', 'ead3', '--json').out).notHeld;
    const words = (said: { words: { word: string }[] }[]) =>
      said.flatMap((one) => one.words.map(({ word }) => word));
    expect(words(after)).not.toContain('Tolls');
    expect(words(after)).toEqual(words(before));
    expect(readFileSync(join(folder, 'finding-aid/ead3.xml'), 'utf8')).toContain('Fares taken at Nordvik');
  });

  // EAD3 1.1.1, content model of c: head, then did, then everything else.
  test('a note of the did, with no other note beside it, stands behind the did in the other version', () => {
    const at = freshFolder();
    const did = '<unittitle>Tolls</unittitle><note><p>Date: worked out from the flood.</p></note>';
    const beside = '<controlaccess><genreform>receipts</genreform></controlaccess>';
    const dsc = `<dsc type="combined"><c level="file"><did>${did}</did>${beside}</c></dsc>`;
    writeFileSync(join(at, 'their.xml'), foreignEad2002({ dsc }));
    const folder = join(at, 'taken');
    expect(kinfonds(['take-in', join(at, 'their.xml'), '--into', folder]).code).toBe(0);
    expect(run(folder, '--to', 'ead3')).toMatchObject({ code: 0 });
    expect(readFileSync(join(folder, 'finding-aid/ead3.xml'), 'utf8')).toMatch(
      /<\/did>\s*<odd>\s*<p>Date: worked out from the flood\.<\/p>\s*<\/odd>\s*<controlaccess>/,
    );
  });

  test('a catalogue made from a list has nothing of the kind', () => {
    const out = freshFolder();
    const { out: printed } = run('examples/quill-ferry', '--to', 'ead3', '--out', out, '--json');
    expect(JSON.parse(printed)).not.toHaveProperty('notHeld');
  });
});
