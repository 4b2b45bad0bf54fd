import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { extendWith } from '../../src/arrange/extend.ts';
import { arrange } from '../../src/arrange/index.ts';
import { catalogueOf } from '../../src/catalogue/catalogue-of.ts';
import type { Component } from '../../src/catalogue/component.ts';
import { findingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson } from '../../src/catalogue/finding-aid-file.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { sayReport } from '../../src/export/ead/say-report.ts';
import { takeIn } from '../../src/export/ead/take-in.ts';
import { ead2002 } from '../../src/export/ead2002/index.ts';
import { readSettings } from '../../src/intake/collection-yaml.ts';
import { writeXml } from '../../src/xml/write.ts';
import { foreignEad2002 } from '../support/foreign-ead.ts';
import { contentsOf, freshFolder } from '../support/kinfonds.ts';

const SOURCE = foreignEad2002({
  beside: '<controlaccess><persname>Quill, Ada, 1902-1988</persname></controlaccess>',
  dsc: `<dsc><c level="series" id="s1"><did><unittitle>Letters</unittitle><unitid>MS 7/1</unitid></did>
    <c level="file" id="QF-1"><did><unittitle>Ada to Edmund</unittitle><unitdate datechar="creation">1911</unitdate></did></c></c>
    <c level="series" id="s2"><did><unittitle>Maps.</unittitle></did></c></dsc>`,
});
const taken = () => takeIn(Buffer.from(SOURCE), 'heron.xml', '2026-05-14');

describe('the folder of a finding aid that was taken in', () => {
  it('holds the finding aid, the settings, and a list to go on with', async () => {
    const folder = join(freshFolder(), 'heron');
    const { aid } = await taken();
    await catalogueOf(aid, folder);
    expect(readdirSync(folder).sort()).toEqual(['collection.yaml', 'finding-aid.json', 'list.csv']);
    expect(findingAidFromJson(readFileSync(join(folder, 'finding-aid.json'), 'utf8'))).toEqual(
      findingAid.parse(aid),
    );
    const { settings } = readSettings(readFileSync(join(folder, 'collection.yaml')), 'collection.yaml');
    expect(settings).toMatchObject({
      title: 'Heron papers',
      prefix: 'MS 7',
      repository: { name: 'Applegarth Historical Society' },
    });
    expect(readFileSync(join(folder, 'list.csv'), 'utf8').trim().split('\n')).toHaveLength(1);
  });

  it('is refused, with nothing changed, where there is a catalogue', async () => {
    const { aid } = await taken();
    for (const name of ['collection.yaml', 'finding-aid.json']) {
      const folder = freshFolder();
      writeFileSync(join(folder, name), 'title: Quill\n');
      const before = contentsOf(folder);
      await expect(catalogueOf(aid, folder)).rejects.toThrow(/There is a catalogue here already/);
      expect(contentsOf(folder)).toEqual(before);
    }
  });

  it('comes with a report', async () => {
    const { report } = await taken();
    expect(report).toMatchObject({
      version: 'ead2002',
      understood: { collection: 1, series: 2, file: 1, 'access points': 1, 'people, families and bodies': 1 },
      keptAsFound: { 'unitdate/@datechar': 1, 'unittitle/@label': 1 },
      repaired: [],
    });
    expect(sayReport(report, 'heron').join('\n')).toMatch(/Kept as found.*unitdate\/@datechar/);
  });
});

/** A catalogue of its own whose list names series of the finding aid. */
async function additions(list: string) {
  const folder = freshFolder();
  writeFileSync(
    join(folder, 'collection.yaml'),
    'title: Heron papers\nprefix: MS 7\nrepository:\n  name: Applegarth Historical Society\nsort:\n  groups: [series]\n  folders: group\npeople:\n  - name: Ada Quill\n    born: 1902\n    died: 1988\n',
  );
  writeFileSync(join(folder, 'list.csv'), list);
  return arrange(await loadCatalogue(folder, '2026-05-14'), '2026-05-14');
}

const titles = ({ title, children }: Component): unknown => [title, ...children.map(titles)];
const find = (unit: Component, title: string): Component | undefined =>
  unit.title === title
    ? unit
    : unit.children.map((child) => find(child, title)).find((one) => one !== undefined);
const ids = (unit: Component): string[] => [unit.id, ...unit.children.flatMap(ids)];

describe('a finding aid extended by a list', () => {
  it('has the new things in the series of that title or code, and other series at the end', async () => {
    const { aid } = await taken();
    const more = await additions(
      'title,date,kind,people,series\nLetter home,1913,letter,Ada Quill,letters\nRiver bend,1898,map,,Maps\nA quilt,1920,quilt,,Textiles\nTo the ferryman,1914,letter,,MS 7/1\n',
    );
    const all = extendWith(aid, more);
    expect(findingAid.safeParse(all).error).toBeUndefined();
    const [letters, maps, ...rest] = all.collection.children;
    expect(letters?.children[0]).toBe(aid.collection.children[0]?.children[0]);
    for (const title of ['Letter home', 'To the ferryman'])
      expect(letters && find(letters, title), JSON.stringify(titles(all.collection))).toBeDefined();
    expect(maps && find(maps, 'River bend')).toBeDefined();
    expect(rest).toHaveLength(1);
    expect(rest[0] && find(rest[0], 'A quilt')).toBeDefined();
    const every = ids(all.collection);
    expect(new Set(every).size).toBe(every.length);
  });

  it('has one Ada Quill, as the finding aid names her', async () => {
    const { aid } = await taken();
    const more = await additions(
      'title,date,kind,people,series\nLetter home,1913,letter,Ada Quill,Letters\n',
    );
    const { people, collection } = extendWith(aid, more);
    expect(people.filter(({ name }) => name === 'Ada Quill')).toEqual(aid.people);
    const letter = find(collection, 'Letter home');
    expect([...(letter?.people ?? []), ...(letter?.creators ?? [])].map(({ agent }) => agent)).toContain(
      aid.people[0]?.id,
    );
  });

  it('is the same finding aid where the list is empty, and what is old is written as it was', async () => {
    const { aid } = await taken();
    const none = { ...aid, people: [], collection: { ...aid.collection, children: [] } };
    expect(extendWith(aid, none)).toEqual(aid);
    const more = await additions('title,date,kind,series\nLetter home,1913,letter,Letters\n');
    const xml = [...writeXml(ead2002(extendWith(aid, more)))].join('');
    expect(xml).toContain('<unitdate datechar="creation">1911</unitdate>');
    expect(xml.indexOf('Letter home')).toBeGreaterThan(xml.indexOf('Ada to Edmund'));
    expect(xml.indexOf('Letter home')).toBeLessThan(xml.indexOf('Maps.'));
  });
});
