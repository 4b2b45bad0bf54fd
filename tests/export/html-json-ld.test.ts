import fc from 'fast-check';
import jsonld from 'jsonld';
import { describe, expect, test } from 'vitest';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { everyComponent, jsonLdOf, pageOf, quillFerry, thumbnailsFor } from '../support/quill-page.ts';

const SCHEMA = 'https://schema.org/';

/** Stands for the context of schema.org, so that no network is asked: every term is one of its vocabulary. */
const documentLoader = async (url: string) => {
  if (!/^https?:\/\/schema\.org\/?$/.test(url))
    throw new Error(`Nothing but schema.org is to be asked for: ${url}`);
  return { documentUrl: url, contextUrl: undefined, document: { '@context': { '@vocab': SCHEMA } } };
};

interface Node {
  '@id'?: string;
  '@type'?: string[];
  '@value'?: string;
  [term: string]: Node[] | string | string[] | undefined;
}

const BASE = 'https://example.org/finding-aid.html';
const expanded = async (page: string) =>
  (await jsonld.expand(jsonLdOf(page) as object, { documentLoader, base: BASE })) as unknown as Node[];

const values = (node: Node | undefined, term: string): string[] => {
  const found = node?.[`${SCHEMA}${term}`];
  return Array.isArray(found)
    ? found.map((one) => (typeof one === 'string' ? one : (one['@value'] ?? one['@id'] ?? '')))
    : [];
};

// Terms from schema.org, from memory: ArchiveComponent with itemLocation and holdingArchive, ArchiveOrganization.
describe('the description for machines', () => {
  test('expands, and every component is in it with its name, code, time and place', async () => {
    const aid = await quillFerry();
    const nodes = await expanded(pageOf(aid, { thumbnails: thumbnailsFor(aid) }));
    const byId = new Map(nodes.map((node) => [node['@id'], node]));
    for (const { id, title, referenceCode, creators } of everyComponent(aid.collection)) {
      const node = byId.get(`${BASE}#${id}`);
      expect(node?.['@type'], id).toContain(`${SCHEMA}ArchiveComponent`);
      expect(values(node, 'name'), id).toEqual([title]);
      expect(values(node, 'identifier'), id).toEqual([referenceCode]);
      expect(values(node, 'creator'), id).toEqual(creators.map(({ agent }) => `${BASE}#who:${agent}`));
    }
    const letter = nodes.find((node) => values(node, 'name')[0]?.includes('the crossing to Norway'));
    // In examples/quill-ferry/list.csv: 1923-05-02, At sea, from Edmund to Samuel.
    expect(values(letter, 'temporalCoverage')).toEqual(['1923-05-02']);
    expect(values(letter, 'contentLocation')).toEqual(['At sea']);
    expect(values(letter, 'mentions')).toEqual([`${BASE}#who:samuel-quill`]);
    expect(values(letter, 'itemLocation')[0]).toMatch(/^Box \d+, folder \d+$/);
    const media = letter?.[`${SCHEMA}associatedMedia`];
    expect(JSON.stringify(media)).toContain('letter-edmund-1923.jpg');
    const top = byId.get(`${BASE}#${aid.collection.id}`);
    expect(JSON.stringify(top?.[`${SCHEMA}holdingArchive`])).toContain(`${SCHEMA}ArchiveOrganization`);
    const person = byId.get(`${BASE}#who:ada-quill`);
    expect(person?.['@type']).toEqual([`${SCHEMA}Person`]);
    expect([values(person, 'birthDate'), values(person, 'deathDate')]).toEqual([
      ['1902-05-14'],
      ['1988-02-09'],
    ]);
    // 1878~ in collection.yaml is no date that can be said without its doubt.
    expect(values(byId.get(`${BASE}#who:jim-tarbell`), 'birthDate')).toEqual([]);
  });

  test('every component but the collection is part of the one above it', async () => {
    const aid = await quillFerry();
    const nodes = await expanded(pageOf(aid));
    const part = new Map(nodes.map((node) => [node['@id'], values(node, 'isPartOf')]));
    for (const unit of everyComponent(aid.collection))
      for (const { id } of unit.children) expect(part.get(`${BASE}#${id}`)).toEqual([`${BASE}#${unit.id}`]);
    expect(part.get(`${BASE}#${aid.collection.id}`)).toEqual([]);
  });

  test('a picture is no part of it', async () => {
    const aid = await quillFerry();
    expect(JSON.stringify(jsonLdOf(pageOf(aid, { thumbnails: thumbnailsFor(aid) })))).not.toContain('base64');
  });

  test('parses and expands whatever the texts', async () => {
    for (const aid of fc.sample(arbitraryFindingAid({ largest: 4 }), { numRuns: 40, seed: 11 })) {
      const ids = new Set((await expanded(pageOf(aid))).map((node) => node['@id']));
      for (const { id } of everyComponent(aid.collection)) expect(ids).toContain(`${BASE}#${id}`);
    }
  });
});
