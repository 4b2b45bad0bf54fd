import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

// A year of two figures that in this century has not come yet; common practice: no thing is from tomorrow.
const figures = String(new Date().getFullYear() + 1).slice(2);
const MAY_BE = ['19', '18']
  .flatMap((century) => [`${century}${figures} March 5`, `${century}${figures} May 3`])
  .join(', or ');

test('a date in doubt may be the same everywhere, and never after today', () => {
  const cwd = freshFolder();
  writeFileSync(join(cwd, 'kept.csv'), `title,date\nFerry log,5.3.${figures}\n`);
  const named = ['--title', 'Rook papers', '--prefix', 'RP', '--repository', 'The Rook family'];
  const begun = kinfonds(['begin', 'rook', '--from', 'kept.csv', ...named], { cwd });
  expect(begun.out).toContain(`date: ${MAY_BE} (written 5.3.${figures})`);
  expect(begun.err).toContain(`is in doubt: It may be ${MAY_BE}. `);
  const checked = kinfonds(['check', 'rook'], { cwd });
  expect(checked.out + checked.err).toContain(`is in doubt: It may be ${MAY_BE}. `);
});
