import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { formByTitle, thingInTitle } from '../../src/housing/title-form.ts';
import { describeWithSamples } from '../support/outside.ts';

/** The titles of units in the samples, without their markup. */
function titlesIn(samples: string): Set<string> {
  const files = ['ead3', 'ead2002'].flatMap((folder) =>
    readdirSync(join(samples, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.xml'))
      .map((name) => readFileSync(join(samples, folder, name), 'utf8')),
  );
  const titles = files.flatMap((xml) =>
    [...xml.matchAll(/<unittitle[^>]*>([\s\S]*?)<\/unittitle>/g)].map(([, title = '']) =>
      title.replace(/<[^>]+>|\s+/g, ' ').trim(),
    ),
  );
  return new Set(titles);
}

// Nearly all of what archives describe is paper in folders; a title that is taken for an object takes it out of them.
describeWithSamples('titles of real finding aids, all without a kind', (samples) => {
  const titles = samples === '' ? [] : [...titlesIn(samples)];

  it('are hardly ever taken for a thing that lies in no folder', () => {
    expect(titles.length).toBeGreaterThan(5000);
    const taken = titles.filter((title) => thingInTitle(title) ?? formByTitle(title));
    expect(taken.length / titles.length).toBeLessThan(0.01);
  });
});
