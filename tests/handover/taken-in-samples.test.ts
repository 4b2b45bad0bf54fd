import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { unitsFrom } from '../../src/catalogue/units.ts';
import { verifyBag } from '../../src/handover/bag/index.ts';
import { handOver } from '../../src/handover/index.ts';
import { describeWithSamples } from '../support/outside.ts';
import { filesIn, TODAY } from './on-disk.ts';
import { takenIn } from './taken-in-folder.ts';

/** In bytes: the largest hold thousands of units, which takes half a minute each and shows nothing new. */
const LARGE = 700_000;

interface UnitInJson {
  id: string;
  children?: UnitInJson[];
}

const idsIn = ({ id, children = [] }: UnitInJson): string[] => [id, ...children.flatMap(idsIn)];

describeWithSamples('real finding aids', (samples, schemas) => {
  const files = ['ead3', 'ead2002'].flatMap((version) =>
    readdirSync(join(samples, version))
      .filter((name) => name.endsWith('.xml'))
      .map((name) => join(samples, version, name)),
  );
  const some = files.filter((path) => readFileSync(path).length < LARGE);

  test('there are enough of them', () => expect(some.length).toBeGreaterThan(20));

  test.each(some)('%s is handed over whole, and without one of its units', async (path) => {
    const folder = await takenIn(readFileSync(path));
    const out = join(dirname(folder), 'package');
    const options = { schemas: { folder: schemas } };
    const catalogue = await loadCatalogue(folder, TODAY);
    const units = [...unitsFrom(catalogue.base?.collection ?? Object.create(null))];
    const whole = await handOver(catalogue, out, TODAY, options);
    expect(whole.written?.units).toBe(units.length);
    expect((await verifyBag(out)).valid).toBe(true);

    const isSole = (title: string) => units.filter((unit) => unit.title === title).length === 1;
    const leaves = units.slice(1).filter(({ children, title }) => children.length === 0 && isSole(title));
    const stays = leaves[Math.floor(leaves.length / 2)];
    if (stays !== undefined && leaves.length > 2) {
      const settings = { ...catalogue.settings, handOver: { keep: [stays.title] } };
      const parted = await handOver({ ...catalogue, settings }, `${out}-2`, TODAY, {
        ...options,
        despite: 'To see what is in it.',
      });
      const gone = new Set(parted.units.map(({ unit }) => unit.id));
      expect(gone).toContain(stays.id);
      const kept = units.filter(({ id }) => !gone.has(id));
      const json = JSON.parse(filesIn(`${out}-2`).get('data/finding-aid/finding-aid.json')?.toString() ?? '');
      const ids = idsIn(json.collection);
      expect(kept.map(({ id }) => id)).toEqual(expect.arrayContaining(ids));
      const words = [...filesIn(`${out}-2`).values()].join('\n').split(/[^\p{L}\p{N}._-]+/u);
      expect([...gone].filter((id) => words.includes(id))).toEqual([]);
    }
    rmSync(dirname(folder), { recursive: true });
  });
});
