import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as library from '../src/index.ts';
import { freshFolder } from './support/kinfonds.ts';
import { describeWithSchemas } from './support/outside.ts';
import { longSuite } from './support/times.ts';

/** Everything that can be imported, and why. A name more or less here is a new version of the library. */
const PUBLIC = {
  agentSchema: 'checks a person, family or body of one’s own',
  componentSchema: 'checks a unit of description, with those below it',
  findingAidSchema: 'checks a whole finding aid, and fills in what may be left out',
  settingsSchema: 'checks what collection.yaml says, where it comes from elsewhere',
  COLUMNS: 'the headings that a list may have, for a program that writes one',
  CatalogueError: 'what readers throw, to be caught by its class',
  sayPlace: 'where a finding is, in words',
  loadCatalogue: 'reads a catalogue folder',
  readList: 'reads a list from bytes, without a folder',
  readSettings: 'reads collection.yaml from bytes, without a folder',
  findingAidFromJson: 'reads finding-aid.json',
  takeIn: 'reads EAD3 and EAD 2002',
  readDate: 'reads a date as people write it, into EDTF',
  displayDate: 'shows EDTF as DACS 2.4 has it',
  arrange: 'makes a finding aid of a list',
  arrangement: 'the same, with folders and boxes beside it',
  FORMAT_NAMES: 'which formats there are',
  FORMATS: 'writes each format, in memory',
  exportFindingAid: 'writes formats into a folder, validated, all or none',
  validateXml: 'holds one file against its schema',
  validatorWith: 'the same for many files, with each schema read once',
  verifyBag: 'says whether a package is as it was',
};

describe('what can be imported', () => {
  test('is what is listed, and nothing else', () => {
    expect(Object.keys(library).sort()).toEqual(Object.keys(PUBLIC).sort());
  });

  test('every value and type has a description where it is declared', () => {
    const source = readFileSync('src/index.ts', 'utf8');
    const undescribed: string[] = [];
    let names = 0;
    for (const [, list = '', file = ''] of source.matchAll(/^export (?:type )?\{([^}]*)\} from '(.*)';/gm)) {
      const places = [file, ...(file.endsWith('/index.ts') ? beside(file) : [])];
      const declared = places.map((place) => readFileSync(join('src', place), 'utf8')).join('\n');
      for (const entry of list
        .split(',')
        .map((one) => one.trim())
        .filter((one) => one !== '')) {
        const [name = ''] = entry.replace(/^type /, '').split(' as ');
        names += 1;
        const at = `export (?:async )?(?:function\\*?|const|class|interface|type) ${name}\\b`;
        const isInferred = new RegExp(`export type ${name} = (?:z\\.infer|\\(typeof)`).test(declared);
        if (!isInferred && !new RegExp(`\\*/\\n${at}`).test(declared)) undescribed.push(name);
      }
    }
    expect(undescribed).toEqual([]);
    expect(names).toBeGreaterThan(Object.keys(PUBLIC).length);
  });
});

/** The files beside an index, from which it may export. */
const beside = (index: string): string[] => {
  const folder = index.replace(/index\.ts$/, '');
  return readdirSync(join('src', folder)).flatMap((name) =>
    name.endsWith('.ts') && name !== 'index.ts' ? [`${folder}${name}`] : [],
  );
};

/** Runs the example as a reader of it would. */
function ownData(): { target: string; code: number | null; err: string } {
  const target = join(freshFolder(), 'ead3.xml');
  const { status, stderr } = spawnSync(process.execPath, ['examples/own-data.mjs', target], {
    encoding: 'utf8',
  });
  return { target, code: status, err: stderr };
}

describe('the example that makes EAD3 of data of one’s own', () => {
  test('runs, imports nothing but the library and Node, and holds every row', () => {
    const imported = [...readFileSync('examples/own-data.mjs', 'utf8').matchAll(/^import .* from '(.*)';/gm)];
    expect(imported.map(([, from]) => from)).toEqual(['node:fs', 'kinfonds']);
    const { target, code, err } = ownData();
    expect([code, err]).toEqual([0, '']);
    const xml = readFileSync(target, 'utf8');
    // DACS 2.4.14, 2.4.15 and 2.4.16: the forms of the three dates that the rows have.
    for (const text of [
      'Ada to Nils on the flood',
      '1913 April 6',
      'circa 1920',
      'undated',
      'standarddate="1913-04-06"',
    ])
      expect(xml).toContain(text);
    expect(xml.match(/level="item"/g)).toHaveLength(4);
  });
});

describeWithSchemas('the example, by the published schema', (schemas) => {
  test('EAD3', async () => {
    const { target } = ownData();
    const validation = await library.validateXml(readFileSync(target), target, { folder: schemas });
    expect(validation).toMatchObject({ valid: true, format: 'EAD3', schema: { kind: 'published' } });
  });
});

longSuite('in TypeScript', () => {
  test('a program outside the project compiles against the types, and a wrong one does not', () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'node_modules'));
    symlinkSync(resolve('.'), join(folder, 'node_modules', 'kinfonds'));
    const compile = (text: string): string => {
      writeFileSync(join(folder, 'own.mts'), text);
      // What is read from a file or printed to a terminal has its types from Node.
      const node = ['--types', 'node', '--typeRoots', resolve('node_modules/@types')];
      const options = ['--noEmit', '--strict', '--target', 'es2023', '--module', 'nodenext', ...node];
      const tsc = resolve('node_modules/typescript/bin/tsc');
      return spawnSync(process.execPath, [tsc, ...options, 'own.mts'], { cwd: folder, encoding: 'utf8' })
        .stdout;
    };
    const program = `import { arrange, type Finding, type FindingAid, FORMATS, readList, type Settings } from 'kinfonds';
export function ead3(bytes: Uint8Array, settings: Settings, tell: (finding: Finding) => void): string {
  const { things, findings } = readList(bytes, 'list.csv');
  findings.forEach(tell);
  const aid: FindingAid = arrange({ settings, things }, '2026-01-01');
  return [...FORMATS.ead3(aid)].flatMap(({ content }) => [...content]).join('');
}
`;
    expect(compile(program)).toBe('');
    expect(compile(program.replace("'2026-01-01'", '2026'))).toContain('TS2345');
  });
});
