import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { numbersToCsv } from '../../src/catalogue/numbers-file.ts';
import { writeSettled } from '../../src/catalogue/settle.ts';
import { JOURNAL_FILE } from '../../src/catalogue/settling-journal.ts';
import { longSuite } from '../support/times.ts';
import {
  afterNoReturn,
  asItIsToBe,
  asItWas,
  betweenTheTwo,
  copyOf,
  everyStop,
  finishing,
  KEPT,
  KEPT_NUMBERS,
  leftovers,
  NEW_LIST,
  NEW_NUMBERS,
  namesIn,
  OLD_LIST,
  OLD_NUMBERS,
  oldFolder,
  runUntil,
  seen,
  settling,
  stoppedWhere,
  textOf,
} from './settle-folder.ts';

/** Looks at a folder as a user does after a crash, and settles once more. @returns whether it is as it is to be */
async function checkAndSettle(folder: string, earlier: boolean): Promise<boolean> {
  const found = await seen(folder);
  const done = found.settled.length === NEW_NUMBERS.length;
  expect(found).toEqual(done ? asItIsToBe : asItWas(earlier));

  // Every file of the folder is one of the catalogue, the list or the numbers as they were, or waits for the next settling to sweep it.
  const known = ['collection.yaml', 'list.csv', 'numbers.csv', KEPT, ...(earlier ? [KEPT_NUMBERS] : [])];
  expect(
    namesIn(folder).filter((name) => !known.includes(name) && !leftovers(folder).includes(name)),
  ).toEqual([]);
  if (done) expect(leftovers(folder)).toEqual([]);
  if (namesIn(folder).includes(KEPT)) expect(textOf(folder, KEPT)).toBe(OLD_LIST);
  else expect(done).toBe(false);
  if (namesIn(folder).includes(KEPT_NUMBERS)) {
    expect(textOf(folder, KEPT_NUMBERS)).toBe(numbersToCsv(OLD_NUMBERS));
  } else expect(done && earlier).toBe(false);

  await writeSettled(folder, {
    numbers: numbersToCsv(NEW_NUMBERS),
    list: Buffer.from(NEW_LIST),
    expected: Buffer.from(found.list),
  });
  expect(await seen(folder)).toEqual(asItIsToBe);
  const more = done ? ['list.before-numbers-2.csv'] : [];
  const numbers = earlier ? [KEPT_NUMBERS] : [];
  expect(namesIn(folder)).toEqual(['collection.yaml', ...more, KEPT, 'list.csv', ...numbers, 'numbers.csv']);
  return done;
}

longSuite('settling that is killed', () => {
  it.each([
    ['for the first time', false],
    ['once more', true],
  ])('at any step, %s, leaves the folder as it was or as it is to be', async (_, earlier) => {
    const outcomes: boolean[] = [];
    for (const folder of everyStop(earlier)) outcomes.push(await checkAndSettle(copyOf(folder), earlier));
    // As it was up to one step, as it is to be from then on. Up to the point of no return four files are made and
    // written in two halves each, and two put in their places; then come two more, and the end of the journal.
    const turn = outcomes.indexOf(true);
    expect(outcomes.slice(turn)).not.toContain(false);
    expect(turn).toBeGreaterThanOrEqual(4 * 3 + 2);
    expect(outcomes.length - turn).toBeGreaterThanOrEqual(4);
  });

  it('and killed again while it is brought to its end, at any step, is as it is to be', async () => {
    for (const where of [afterNoReturn, betweenTheTwo]) {
      const stopped = stoppedWhere(where);
      let steps = 0;
      for (let ended = false; !ended; steps++) {
        const folder = copyOf(stopped);
        ended = runUntil(steps, finishing(folder));
        expect(await seen(folder)).toEqual(asItIsToBe);
        expect(namesIn(folder)).toEqual(['collection.yaml', KEPT, 'list.csv', KEPT_NUMBERS, 'numbers.csv']);
      }
      expect(steps).toBeGreaterThan(1);
    }
  });

  it('at any time leaves the folder as it was or as it is to be', async () => {
    for (let run = 0; run < 12; run++) {
      const folder = oldFolder(true);
      const script = `process.stdout.write('ready'); ${settling(folder)}`;
      const child = spawn(process.execPath, ['--input-type=module', '-e', script], {
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      await once(child.stdout, 'data');
      // The modules are loaded and all is written within so many milliseconds on a common machine.
      const wait = run * 8;
      const kill = setTimeout(() => child.kill('SIGKILL'), wait);
      await once(child, 'close');
      clearTimeout(kill);
      await checkAndSettle(folder, true);
    }
  });
});

describe('what changes between the crash and the next command', () => {
  it('a list edited before its new content was put there: kept, and nothing settled', async () => {
    const folder = stoppedWhere(afterNoReturn);
    writeFileSync(join(folder, 'list.csv'), `${OLD_LIST},A quilt\n`);
    expect(await seen(folder)).toEqual({
      list: `${OLD_LIST},A quilt\n`,
      numbers: ['1', undefined, undefined],
      settled: asItWas(true).settled,
    });
    expect(namesIn(folder)).toEqual(['collection.yaml', KEPT, 'list.csv', KEPT_NUMBERS, 'numbers.csv']);
  });

  it('a list edited after that: kept, and the numbers settled', async () => {
    const folder = stoppedWhere(betweenTheTwo);
    writeFileSync(join(folder, 'list.csv'), `${NEW_LIST},A quilt\n`);
    expect(await seen(folder)).toEqual({
      list: `${NEW_LIST},A quilt\n`,
      numbers: ['1', '2', undefined],
      settled: NEW_NUMBERS,
    });
  });

  it('numbers edited by hand: kept', async () => {
    const folder = stoppedWhere(betweenTheTwo);
    const [one] = NEW_NUMBERS;
    const edited = numbersToCsv(one === undefined ? [] : [{ ...one, box: '9' }]);
    writeFileSync(join(folder, 'numbers.csv'), edited);
    expect((await seen(folder)).settled.map(({ box }) => box)).toEqual(['9']);
    expect(leftovers(folder)).toEqual([]);
  });

  it('a list that is gone: the new one is put there', async () => {
    const folder = stoppedWhere(afterNoReturn);
    rmSync(join(folder, 'list.csv'));
    expect(await seen(folder)).toEqual(asItIsToBe);
  });

  it('new content that is gone: as it was', async () => {
    const folder = stoppedWhere(afterNoReturn);
    for (const name of leftovers(folder)) rmSync(join(folder, name));
    expect(await seen(folder)).toEqual(asItWas(true));
    expect(namesIn(folder)).not.toContain(JOURNAL_FILE);
  });

  it('new content that is not whole: as it was', async () => {
    const folder = stoppedWhere(afterNoReturn);
    for (const name of leftovers(folder)) writeFileSync(join(folder, name), 'torn');
    expect(await seen(folder)).toEqual(asItWas(true));
  });
});
