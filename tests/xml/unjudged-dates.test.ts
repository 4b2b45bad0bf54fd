import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { validateXml } from '../../src/xml/validate.ts';
import { freshFolder } from '../support/kinfonds.ts';
import { describeWithTool } from '../support/outside.ts';
import { SMALL_EAD3 } from '../support/small-ead3.ts';

describeWithTool('xmllint', 'a date on which the engine gives up', (schemas) => {
  const withTime = (time: string) =>
    SMALL_EAD3.replace(/standarddatetime="[^"]*"/, `standarddatetime="${time}"`);
  const ours = (xml: string) => validateXml(Buffer.from(xml), 'small.xml', { folder: schemas });
  const theirs = (xml: string) => {
    const file = join(freshFolder(), 'small.xml');
    writeFileSync(file, xml);
    return spawnSync('xmllint', ['--nonet', '--noout', '--schema', join(schemas, 'ead3', 'ead3.xsd'), file], {
      encoding: 'utf8',
    });
  };

  test.each(['20260514', 'May 2026', '2026-05-14 09:30'])(
    '%s is named with its line, as xmllint has it',
    async (time) => {
      const [validation, { stderr, status }] = [await ours(withTime(time)), theirs(withTime(time))];
      expect(status).toBe(3);
      expect(validation).toMatchObject({ valid: false });
      expect(validation.messages[0]?.line).toBe(Number(/small\.xml:(\d+):/.exec(stderr)?.[1]));
      expect(validation.messages[0]?.says).toContain(
        `The attribute standarddatetime of <eventdatetime> is “${time}”`,
      );
    },
  );

  test.each(['2026', '2026-05', '2026-05-14', '2026-05-14T09:30:00Z'])('%s is valid', async (time) => {
    expect(await ours(withTime(time))).toMatchObject({ valid: true, messages: [] });
    expect(theirs(withTime(time)).status).toBe(0);
  });
});
