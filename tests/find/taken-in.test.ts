import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../src/catalogue/catalogue-of.ts';
import { unitsFrom } from '../../src/catalogue/units.ts';
import { takeIn } from '../../src/export/ead/take-in.ts';
import { findablesOf } from '../../src/find/findables.ts';
import { type Filters, find, questionOf } from '../../src/find/index.ts';
import { sayHits } from '../../src/find/say.ts';
import { freshFolder } from '../support/kinfonds.ts';
import { describeWithSamples } from '../support/outside.ts';

const HERE = { version: '1.0.0', today: '2026-11-25', most: 100 };

const unit = (level: string, title: string, { did = '', inner = '', id = '' } = {}) =>
  `<c level="${level}"${id === '' ? '' : ` id="${id}"`}><did><unittitle>${title}</unittitle>${did}</did>${inner}</c>`;

const box = (number: string, type = 'box') => `<container localtype="${type}">${number}</container>`;

const paragraph = (element: string, text: string) => `<${element}><p>${text}</p></${element}>`;

const ead = (inner: string, did = '') => `<?xml version="1.0"?>
<ead xmlns="http://ead3.archivists.org/schema/"><control><recordid>a</recordid><filedesc><titlestmt>
<titleproper>Heron papers</titleproper></titlestmt></filedesc><maintenancestatus value="new"/><maintenanceagency>
<agencyname>Millrace Library</agencyname></maintenanceagency><maintenancehistory><maintenanceevent>
<eventtype value="created"/><eventdatetime>2020</eventdatetime><agenttype value="human"/><agent>A. Heron</agent>
</maintenanceevent></maintenancehistory></control><archdesc level="collection"><did><unittitle>Heron papers</unittitle>
<unitid>HP</unitid>${did}</did><dsc>${inner}</dsc></archdesc></ead>`;

async function takenIn(xml: string): Promise<string> {
  const folder = join(freshFolder(), 'taken');
  const { aid } = await takeIn(Buffer.from(xml), 'aid.xml', HERE.today);
  await catalogueOf(aid, folder);
  return folder;
}

const ask = (folder: string, words: string, filters: Filters = {}) =>
  find(folder, questionOf([words], filters), HERE);

/** What is said, a line each, without what sets lines in. */
const lines = async (folder: string, words: string) =>
  [...sayHits(await ask(folder, words))].map((line) => line.trim());

const titles = async (folder: string, words: string, filters?: Filters) =>
  (await ask(folder, words, filters)).hits.map(({ title }) => title);

describe('what is found of a finding aid that was taken in', () => {
  test('a unit of level file with nothing below it, where the finding aid says it lies', async () => {
    const letters = unit('file', 'Letters from Nordvik', { did: box('3') + box('7', 'folder') });
    const folder = await takenIn(ead(unit('series', 'Correspondence', { inner: letters })));
    expect(await lines(folder, 'nordvik')).toEqual([
      'Letters from Nordvik',
      'Box 3, Folder 7',
      'part of “Correspondence”',
      'title: Nordvik',
    ]);
    const [hit] = (await ask(folder, 'nordvik')).hits;
    expect(hit).toMatchObject({ boxes: [{ type: 'box', number: '3' }], folder: '7' });
    expect(await titles(folder, '', { box: '3' })).toEqual(['Letters from Nordvik']);
    expect(await titles(folder, '', { box: '7' })).toEqual([]);
  });

  test('items directly in a series, by the nearest containers above; folders only, in the box above', async () => {
    const inner = [
      unit('item', 'Ferry bell', { did: box('9', 'Folder') }),
      unit('item', 'Ferry oar'),
      unit('item', 'Ferry rope', { did: box('5', 'Carton') }),
    ].join('');
    const folder = await takenIn(ead(unit('series', 'Tools', { did: box('2', 'Box'), inner })));
    const { hits } = await ask(folder, 'ferry');
    const said = [...sayHits({ found: 3, hits, proposals: [] })].filter((line) => /Box|Carton/.test(line));
    expect(said.map((line) => line.trim())).toEqual(['Box 2, Folder 9', 'Box 2', 'Carton 5']);
  });

  test('where no container is named: where it is kept, else that none is named', async () => {
    const kept = ead(unit('item', 'Ferry bell'), '<physloc>The ferry house.</physloc>');
    expect((await lines(await takenIn(kept), 'bell'))[1]).toBe('The ferry house.');
    const none = await takenIn(ead(unit('item', 'Ferry bell')));
    expect((await lines(none, 'bell'))[1]).toBe('The finding aid names no box for it');
  });

  test('a series is found by its own words, once, and its code finds all that is in it', async () => {
    const inner = ['Letters', 'Diaries']
      .map((title, at) =>
        unit('file', title, {
          did: `<unitid>HP/1/${at + 1}</unitid>${box(`${at + 3}`)}${box('1', 'folder')}`,
        }),
      )
      .join('');
    const notes = paragraph('scopecontent', 'Much about the orchard of Applegarth.');
    const series = unit('series', 'Ferry', { did: '<unitid>HP/1</unitid>', inner: notes + inner });
    const folder = await takenIn(ead(series));
    expect(await lines(folder, 'applegarth')).toEqual([
      'HP/1  Ferry',
      'Boxes 3-4',
      'description: Applegarth, in “Much about the orchard of Applegarth.”',
    ]);
    expect(await titles(folder, 'ferry')).toEqual(['Ferry', 'Letters', 'Diaries']);
    expect(await lines(folder, 'HP/1')).toEqual([
      ...['HP/1  Ferry', 'Boxes 3-4'],
      ...['HP/1/1  Letters', 'Box 3, Folder 1', 'in HP/1'],
      ...['HP/1/2  Diaries', 'Box 4, Folder 1', 'in HP/1'],
    ]);
    expect(await titles(folder, 'HP/1/2')).toEqual(['Diaries']);
  });

  test('dates and people, and what closes it or the series it is in', async () => {
    const closed = paragraph('accessrestrict', 'Closed until 2060.');
    const did = `<unitdatestructured><datesingle standarddate="1912">1912</datesingle></unitdatestructured>
      <origination><persname><part>Rook, Signe</part></persname></origination>`;
    const inner = closed + unit('file', 'Letters,', { did });
    const folder = await takenIn(ead(unit('series', 'Doctor', { inner }) + unit('file', 'Accounts')));
    for (const [words, filters] of [
      ['1912', {}],
      ['', { person: 'Signe Rook' }],
      ['', { from: 1912, to: 1912 }],
    ] as const)
      expect(await titles(folder, words, filters), words).toEqual(['Letters,']);
    const said = await lines(folder, 'letters');
    expect(said[0]).toBe('Letters, 1912');
    expect(said).toContain('restricted: Closed until 2060.');
    expect((await lines(folder, 'accounts')).join()).not.toContain('restricted');
  });

  test('a collection that is described as a whole only', async () => {
    const folder = await takenIn(ead('', box('1', 'Box')).replace('<dsc></dsc>', ''));
    expect(await lines(folder, 'heron')).toEqual(['HP  Heron papers', 'Box 1', 'title: Heron']);
    const more = ead(unit('file', 'Letters'), box('1', 'Box'));
    expect(await titles(await takenIn(more), 'heron')).toEqual([]);
  });

  test('containers that stand in one another, several boxes, and kinds written into the number', async () => {
    const say = async (did: string) => {
      const folder = await takenIn(ead(unit('file', 'Letters', { did })));
      return (await lines(folder, 'letters'))[1];
    };
    const inside = (number: string, parent: string) =>
      `<container localtype="Folder" parent="${parent}">${number}</container>`;
    const outside = (number: string, id: string) =>
      `<container localtype="Box" id="${id}">${number}</container>`;
    expect(await say(outside('1', 'a') + outside('2', 'b') + inside('8', 'a') + inside('1', 'b'))).toBe(
      'Box 1, Folder 8; Box 2, Folder 1',
    );
    expect(await say(box('1') + box('8', 'folder') + box('2') + box('1', 'folder'))).toBe(
      'Box 1, Folder 8; Box 2, Folder 1',
    );
    expect(await say(box('Box 4') + box('2-5', 'folder'))).toBe('Box 4, Folders 2-5');
    expect(await say('<container>Tin 2</container>')).toBe('Tin 2');
  });
});

describe('a finding aid that was taken in and a list that adds to it', () => {
  const files = unit('file', 'Ferry letters', { did: box('3') + box('7', 'folder') });
  const mixed = async () => {
    const folder = await takenIn(ead(unit('series', 'Correspondence', { inner: files })));
    writeFileSync(
      join(folder, 'list.csv'),
      'title,date,kind,series\nFerry letter behind the drawer,1931,letter,Correspondence\nFerry map,1931,map,Maps\n',
    );
    return folder;
  };

  test('both are found, each once', async () => {
    const folder = await mixed();
    expect((await titles(folder, 'ferry')).sort()).toEqual([
      'Ferry letter behind the drawer',
      'Ferry letters',
      'Ferry map',
    ]);
    const said = await lines(folder, 'ferry letters');
    expect(said).toContain('Box 3, Folder 7');
    expect(said.filter((line) => /^In folder \d+, box \d+$/.test(line))).not.toEqual([]);
  });

  test('the index notices another finding aid', async () => {
    const folder = await mixed();
    expect(await titles(folder, 'letters')).toContain('Ferry letters');
    const file = join(folder, 'finding-aid.json');
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll('Ferry letters', 'Mural letters'));
    expect(await titles(folder, 'mural')).toEqual(['Mural letters']);
  });
});

describeWithSamples('finding aids of others', (samples) => {
  const files = ['ead3', 'ead2002'].flatMap((version) =>
    readdirSync(join(samples, version))
      .filter((name) => name.endsWith('.xml'))
      .map((name) => join(samples, version, name)),
  );

  test.each(files)('%s: every unit is there once, with the numbers of its containers', async (file) => {
    const bytes = readFileSync(file);
    const { aid } = await takeIn(bytes, file, HERE.today);
    const found = [...findablesOf(aid, aid).things].map(({ entry }) => entry);
    // Counted in the file itself: units below the collection, or else the collection.
    const units = bytes.toString().match(/<c(?:0[1-9]|1[0-2])?(?=[\s>])/g)?.length ?? 0;
    expect(found).toHaveLength(Math.max(1, units));
    const withOwn = [...unitsFrom(aid.collection)].filter(({ containers }) => containers.length > 0);
    const titles = new Map(found.map((entry) => [`${entry.referenceCode} ${entry.title}`, entry]));
    for (const { id, referenceCode = id, title, containers } of withOwn) {
      const named = titles.get(`${referenceCode} ${title}`)?.named;
      // Of a collection that is parted nothing is found.
      if (named !== undefined || id !== aid.collection.id)
        for (const { number } of containers) expect(named).toContain(number);
    }
  });
});
