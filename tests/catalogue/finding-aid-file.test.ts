import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { findingAidFromJson, findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { fieldsOf, schemasAt } from '../../src/catalogue/schema-at.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';

const text = (aid: FindingAid) => [...findingAidToJson(aid)].join('');
const control = {
  recordId: 'qf',
  title: 'Quill family papers',
  maintenanceAgency: { name: 'The Ferry House' },
  languages: [{ code: 'eng', name: 'English' }],
  conventions: [{ citation: 'DACS' }],
  history: [{ type: 'created', date: '2024-11-03', agent: 'Tom Quill', agentType: 'human' }],
};
const small = {
  format: 'kinfonds finding aid',
  version: 1,
  control,
  collection: { id: 'c', level: 'collection', title: 'Papers' },
};

/** The same value with the keys of every object turned round. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, each]) => [key, turned(each)]),
  );
}

/** The same value without empty lists, by JSON's own means. */
const bare = (value: unknown) =>
  JSON.stringify(value, (_, each) => (Array.isArray(each) && each.length === 0 ? undefined : each), 2);

const problems = (json: string) => {
  try {
    findingAidFromJson(json);
  } catch (error) {
    if (error instanceof CatalogueError) return error.findings;
    throw error;
  }
  throw new Error('it was read');
};

describe('finding-aid.json', () => {
  it('is plain JSON in the order of the model, a field a line, set in by two blanks, without empty lists', () => {
    const aid = findingAid.parse(small);
    expect(JSON.parse(text(aid))).toEqual(JSON.parse(bare({ ...small, control: { ...aid.control } })));
    const dates = [{ type: 'inclusive', expression: '1901' }];
    const child = { id: 'c-1', level: 'file', title: 'Letters', dates, people: [] };
    const lines = text(
      findingAid.parse({ ...small, collection: { ...small.collection, children: [child] } }),
    );
    expect(lines.split('\n').slice(0, 4)).toEqual([
      '{',
      '  "format": "kinfonds finding aid",',
      '  "version": 1,',
      '  "control": {',
    ]);
    expect(lines.split('\n').slice(-15)).toEqual([
      '  "collection": {',
      '    "id": "c",',
      '    "level": "collection",',
      '    "title": "Papers",',
      '    "children": [',
      '      {',
      '        "id": "c-1",',
      '        "level": "file",',
      '        "title": "Letters",',
      '        "dates": [{ "type": "inclusive", "expression": "1901" }]',
      '      }',
      '    ]',
      '  }',
      '}',
      '',
    ]);
  });

  it('gives every finding aid back as it was, and the same bytes whatever the order of its keys', () => {
    fc.assert(
      fc.property(arbitraryFindingAid(), (made) => {
        const aid = findingAid.parse(made);
        const json = text(aid);
        expect(JSON.parse(bare(findingAidFromJson(json)))).toEqual(JSON.parse(bare(aid)));
        expect(text(turned(aid) as FindingAid)).toBe(json);
        // JSON's own writer says the same of the same keys in the same order, white space aside.
        const bareOfSpace = json.replace(/("(?:[^"\\]|\\.)*")|\s+/g, '$1');
        expect(bareOfSpace).toBe(JSON.stringify(JSON.parse(json)));
      }),
      { numRuns: 60 },
    );
  });

  it('comes in pieces of moderate size', () => {
    const child = {
      id: 'x',
      level: 'item',
      title: 'A letter from Ada to Nils',
      scopeAndContent: 'Rope and apples.',
    };
    const children = Array.from({ length: 5000 }, (_, at) => ({ ...child, id: `x${at}` }));
    const aid = findingAid.parse({ ...small, collection: { ...small.collection, children } });
    const pieces = [...findingAidToJson(aid)];
    expect(Math.max(...pieces.map(({ length }) => length))).toBeLessThan(100_000);
    expect(findingAidFromJson(pieces.join('')).collection.children).toHaveLength(5000);
  });

  it('says everything that is wrong with it', () => {
    const wrong = {
      ...small,
      control: { ...control, titel: 'x', history: [] },
      collection: { ...small.collection, level: 'box' },
    };
    const found = problems(JSON.stringify(wrong)).map(({ found, advice }) => `${found} ${advice}`);
    expect(found).toHaveLength(3);
    expect(found.join('\n')).toMatch(/“history” in “control” is an empty list/);
    expect(found.join('\n')).toMatch(/“titel” in “control” is not known.*title/);
    expect(found.join('\n')).toMatch(/“level” in “collection” must be one of .*series.*“box”/);
  });

  it.each([
    ['an empty file', '', 'The file is empty', undefined],
    ['half a file', text(findingAid.parse(small)).slice(0, 300), 'not whole JSON', undefined],
    ['a slip', '{\n  "format": "kinfonds finding aid",\n  "version": 1,,\n}', 'not whole JSON', 3],
    ['a later version', JSON.stringify({ ...small, version: 2 }), 'version 2', undefined],
    ['another file', '[]', 'must be', undefined],
  ])('%s is called so', (_, json, words, line) => {
    const [finding] = problems(json);
    expect(finding?.found).toContain(words);
    expect(finding?.place.file).toBe('finding-aid.json');
    if (line !== undefined) expect(finding?.place.line).toBe(line);
  });
});

describe('paths in the model', () => {
  it('lead to fields through lists, choices and any depth, and nowhere else', () => {
    expect(
      schemasAt(findingAid, ['collection', 'children', 0, 'children', 3, 'dates', 0, 'edtf']),
    ).toHaveLength(1);
    expect(schemasAt(findingAid, ['collection', 'childrens'])).toEqual([]);
    expect(schemasAt(findingAid, ['collection', 'title', 'x'])).toEqual([]);
    expect(fieldsOf(findingAid).map(([key]) => key)).toEqual([
      'format',
      'version',
      'control',
      'recipient',
      'people',
      'collection',
    ]);
  });
});
