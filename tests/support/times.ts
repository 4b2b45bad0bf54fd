import { describe, test } from 'vitest';

const inCi = process.env.CI === 'true';

/** Says in one line what is not tried where somebody waits. */
function leaveOut(title: string): void {
  process.stderr.write(`Left out: ${title}: it takes long, and is tried where CI is true.\n`);
}

/** A suite that takes long: run in CI, and elsewhere left out, with a line that says so. */
export function longSuite(title: string, suite: () => void): void {
  if (inCi) return void describe(title, suite);
  leaveOut(title);
  describe.skip(title, () => test('left out', () => {}));
}

/** A test that takes long, in the same way. */
export function longTest(title: string, run: () => void | Promise<void>, timeout?: number): void {
  if (inCi) return void test(title, run, timeout);
  leaveOut(title);
  test.skip(title, () => {});
}

/**
 * How often something is tried with random or many cases: all of it in CI, an eighth elsewhere, where somebody waits.
 * @returns a whole number, at least 1
 */
export const times = (all: number): number => (inCi ? all : Math.ceil(all / 8));
