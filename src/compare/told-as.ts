import type { Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { withUnits } from '../catalogue/units.ts';
import type { EadVersion } from '../intake/ead/found.ts';
import { NO_DAY, type ReadFindingAid } from './read-finding-aid.ts';
import { withSameCopies } from './same-copies.ts';
import { inFormOf } from './same-in-form.ts';

/** Two finding aids in a form in which they can be held against each other. */
interface Alike {
  aids: readonly [FindingAid, FindingAid];
  /** The version of EAD as which both are told; undefined where neither was read from EAD. */
  as?: EadVersion;
  /** Of a unit of the first and one of the second, gives that of the first in the form of the other; see there. */
  inFormOf?: (was: Component, now: Component) => Component;
}

/**
 * Brings two finding aids to a form in which what differs is what somebody changed, and not what one form has no place
 * for: where one was read from EAD, the other is told in that version too, as an export would write it. Of the two
 * versions, EAD 2002 is the one that holds less.
 * @param today YYYY-MM-DD, for what neither of them dates
 */
export async function inOneForm(a: ReadFindingAid, b: ReadFindingAid, today: string): Promise<Alike> {
  const versions = [a.version, b.version];
  const as = versions.includes('ead2002') ? 'ead2002' : versions.find((one) => one !== undefined);
  if (as === undefined) return { aids: withSameCopies([a.aid, b.aid]) };
  const told = ({ aid, version }: ReadFindingAid) => (version === as ? aid : toldAs(aid, as));
  const [first, second] = [await told(a), await told(b)];
  const day = [first, second].flatMap(daysOf).find((one) => one !== NO_DAY) ?? today;
  const aids = withSameCopies([dated(first, day), dated(second, day)]);
  return { aids, as, ...(versions.some((one) => one !== as) && as === 'ead2002' && { inFormOf }) };
}

const daysOf = ({ control }: FindingAid) => control.history.map(({ date }) => date);

/**
 * Events of which a file tells no date have that of the other. EAD3 asks for a script where EAD 2002 may leave it out;
 * one that is said to be undetermined (Zyyy in ISO 15924) says as much as none.
 */
const dated = (aid: FindingAid, day: string): FindingAid => ({
  ...aid,
  control: {
    ...aid.control,
    languages: aid.control.languages.map(({ script, ...language }) =>
      script === undefined || script.code === 'Zyyy' ? language : { ...language, script },
    ),
    history: aid.control.history.map((event) => (event.date === NO_DAY ? { ...event, date: day } : event)),
  },
});

/** A finding aid as it comes back from a version of EAD. */
async function toldAs(aid: FindingAid, version: EadVersion): Promise<FindingAid> {
  const { FORMATS } = await import('../export/formats.ts');
  const { takeIn } = await import('../export/ead/take-in.ts');
  const pieces = [...FORMATS[version](aid)].flatMap(({ content }) => [...content]);
  const { aid: told } = await takeIn(Buffer.from(pieces.join('')), 'the finding aid as told', NO_DAY);
  // What was found in another version is not in the markup of this one.
  return aid.control.kept?.format === version ? told : withoutKept(told);
}

const withoutKept = ({ control: { kept: _, ...control }, ...aid }: FindingAid): FindingAid =>
  withUnits({ ...aid, control }, ({ kept: __, ...unit }) => unit);

/**
 * In which form two finding aids were compared, in a sentence or two; undefined where it goes without saying.
 * @param versions of each that was read from EAD
 */
export function sayAs(as: EadVersion, versions: readonly (EadVersion | undefined)[]): string | undefined {
  if (versions.every((version) => version === as)) return undefined;
  return versions.includes(undefined)
    ? `One of the two is in ${NAMES[as]}: the other was compared as an export in ${NAMES[as]} tells it. What that has no place for was not compared.`
    : 'One of the two is in EAD3, the other in EAD 2002: both were compared as EAD 2002 tells them. What that has no place for was not compared; a date, or the name of a language or a script, may differ in its form alone.';
}

const NAMES = { ead3: 'EAD3', ead2002: 'EAD 2002' } as const;
