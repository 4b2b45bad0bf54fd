import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { handOver } from '../../src/handover/index.ts';
import { foreignEad2002 } from '../support/foreign-ead.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { times } from '../support/times.ts';
import { type Cells, filesIn, TODAY } from './on-disk.ts';
import { dscOf, type TheirUnit, takenIn } from './taken-in-folder.ts';

/** What is generated of one unit: what is told of it, and whether and why it stays. */
const aUnit = fc.record({
  scope: fc.boolean(),
  person: fc.boolean(),
  subject: fc.boolean(),
  box: fc.boolean(),
  copy: fc.boolean(),
  /** Told in markup for which the model has no place. */
  markup: fc.boolean(),
  date: fc.constantFrom('', '1911', '1899-1903'),
  things: fc.integer({ min: 0, max: 2 }),
  why: fc.constantFrom(undefined, undefined, undefined, 'title', 'code', 'access', 'restricted'),
});
const aSeries = fc.record({ own: aUnit, files: fc.array(aUnit, { minLength: 1, maxLength: 3 }) });
type Plan = typeof aUnit extends fc.Arbitrary<infer T> ? T : never;

interface Made {
  unit: TheirUnit;
  keep: string[];
  rows: Cells[];
  files: Record<string, string>;
  /** Words of what goes, and of what stays. */
  shown: string[];
  hidden: string[];
}

/** @param above whether the unit lies in one that stays; @param isLessened whether something in it stays */
function made(plan: Plan, at: string, above: boolean, isLessened: boolean, inside: readonly Made[]): Made {
  const stays = above || plan.why !== undefined;
  const side = stays ? 'hld' : 'gvn';
  const marks: string[] = [];
  // In one of which something stays, what markup alone tells goes: it was said of the whole.
  const lost: string[] = [];
  const word = (field: string, into = marks) => {
    const one = `${side}${at}${field}zqx`;
    into.push(one);
    return one;
  };
  const code = `MS 7/${side}${at}`;
  const file = `scans/${side}${at}file.txt`;
  const title = `The ${word('title')} of the ferry`;
  const did = [
    plan.date === '' ? '' : `<unitdate>${plan.date}</unitdate>`,
    plan.person ? `<origination><persname>${word('person')}</persname></origination>` : '',
    plan.box ? `<container type="box" label="${word('label', isLessened ? lost : marks)}">9</container>` : '',
    plan.copy ? `<dao xlink:href="${file}"/>` : '',
  ].join('');
  const access = plan.why === 'access' ? 'Family only.' : plan.why === 'restricted' ? 'Closed.' : '';
  const beside = [
    access === '' ? '' : `<accessrestrict><p>${access} ${word('access')}</p></accessrestrict>`,
    plan.scope ? `<scopecontent><p>About ${word('scope')}.</p></scopecontent>` : '',
    plan.subject ? `<controlaccess><subject>${word('subject')}</subject></controlaccess>` : '',
    plan.markup
      ? `<odd type="${word('kind', isLessened ? lost : marks)}"><p><emph>${word('odd')}</emph></p></odd>`
      : '',
  ].join('');
  const rows = Array.from(
    { length: plan.things },
    (_, number): Cells => ({ title: `Thing ${word(`thing${number}`)}`, date: '1920', series: title }),
  );
  if (plan.copy) marks.push(`${side}${at}inside`);
  const unit = { id: `${side}${at}id`, code, title, did, beside, children: inside.map((one) => one.unit) };
  return {
    unit: { ...unit, level: at.length === 1 ? 'series' : 'file' },
    keep: [
      ...(plan.why === 'title' ? [title] : plan.why === 'code' ? [code] : []),
      ...inside.flatMap((one) => one.keep),
    ],
    rows: [...rows, ...inside.flatMap((one) => one.rows)],
    files: Object.assign(
      plan.copy ? { [file]: `${side}${at}inside` } : {},
      ...inside.map((one) => one.files),
    ),
    shown: [...(stays ? [] : marks), ...inside.flatMap((one) => one.shown)],
    hidden: [...(stays ? marks : []), ...inside.flatMap((one) => one.hidden)],
  };
}

/** In CI there is time for many. */
const RUNS = times(120);

describeWithSchemas('hand-over of a finding aid that was taken in', (schemas) => {
  test('nothing that stays is anywhere in the package, and everything that goes is in it', {
    timeout: 600_000,
  }, async () => {
    let [most, packages] = [0, 0];
    await fc.assert(
      fc.asyncProperty(fc.array(aSeries, { minLength: 1, maxLength: 3 }), async (plans) => {
        const series = plans.map(({ own, files }, at) => {
          const stays = own.why !== undefined;
          const some = files.some(({ why }) => why !== undefined);
          // A series of which nothing is left, not even a thing of the list, stays too with its own words.
          const all = !stays && own.things === 0 && files.every(({ why }) => why !== undefined);
          const inside = files.map((plan, number) => made(plan, `${at}${number}`, stays || all, false, []));
          return made(own, `${at}`, all, some, inside);
        });
        if (series.every(({ unit }) => unit.title.includes('hld'))) return;
        const folder = await takenIn(foreignEad2002({ dsc: dscOf(series.map(({ unit }) => unit)) }), {
          settings: { handOver: { keep: series.flatMap(({ keep }) => keep) } },
          rows: series.flatMap(({ rows }) => rows),
          files: Object.assign({}, ...series.map(({ files }) => files)),
        });
        try {
          const out = join(dirname(folder), 'package');
          const { written, findings } = await handOver(await loadCatalogue(folder, TODAY), out, TODAY, {
            withoutRestricted: true,
            schemas: { folder: schemas },
          });
          if (written === undefined) throw new Error(JSON.stringify(findings));
          const files = filesIn(out);
          const inside = [...files].map(([name, bytes]) => `${name}\n${bytes}`.toLowerCase()).join('\n');
          const hidden = series.flatMap((one) => one.hidden);
          expect(hidden.filter((word) => inside.includes(word))).toEqual([]);
          expect(/hld\d.*/.exec(inside)?.[0]).toBeUndefined();
          const shown = series.flatMap((one) => one.shown);
          expect(shown.filter((word) => !inside.includes(word))).toEqual([]);
          most = Math.max(most, hidden.length);
          packages += 1;
        } finally {
          rmSync(dirname(folder), { recursive: true });
        }
      }),
      { numRuns: RUNS },
    );
    // They were not empty of what is looked for.
    expect(most).toBeGreaterThan(10);
    expect(packages).toBeGreaterThan(RUNS / 3);
  });
});
