import { readKind } from '../arrange/index.ts';
import type { Agent } from '../catalogue/agent.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { PersonSettings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { bounds, firstYear, lastYear } from '../dates/index.ts';
import { agentsByName } from './agents-by-name.ts';
import { maskNumbers } from './private-numbers.ts';

/** "Circa" and "probably" are taken to miss by no more than so many years (common practice: a decade). */
const MARGIN = 10;
const INEXACT = /[~?%]/;
/** The longest life that is known, in years; from memory. */
const LONGEST_LIFE = 122;
/** Groups whose things may come from the press after their maker's death. */
const PRINTED: ReadonlySet<string> = new Set(['Printed matter', 'Music', 'Film and sound']);

/** Things made before their maker was born or after the death, and lives that cannot have been. */
export function reviewLives({ settings, things }: Catalogue, aid: FindingAid): Finding[] {
  const agentOf = agentsByName(aid);
  return [
    ...things.flatMap((thing) =>
      thing.creators.flatMap((name) => {
        const maker = agentOf(name);
        return maker === undefined ? [] : outsideTheLife(thing, maker);
      }),
    ),
    ...settings.people.flatMap((person, at) => impossibleLife(person, aid.people[at])),
  ];
}

/** Whether the one is certainly over before the other begins. */
export function isCertainlyBefore(one: string, other: string): boolean {
  const [last, first] = [lastYear(one), firstYear(other)];
  if (last === undefined || first === undefined) return false;
  if (INEXACT.test(one) || INEXACT.test(other)) return last + MARGIN < first;
  // Days of one year compare as texts; years of more than four figures would not.
  return last < first || (last === first && (bounds(one).latest ?? '') < (bounds(other).earliest ?? ''));
}

function outsideTheLife(thing: Thing, maker: Agent): Finding[] {
  const { date, row, title } = thing;
  if (date?.reading.kind !== 'date') return [];
  const { edtf, alternatives = [edtf] } = date.reading;
  const { birth, death, name, type } = maker;
  const words = type === 'person' ? { birth: 'birth', death: 'death' } : { birth: 'beginning', death: 'end' };
  const finding = (rule: string, event: string): Finding => ({
    rule,
    weight: 'should',
    place: { file: 'list.csv', row, column: 'date' },
    found: `“${maskNumbers(title)}” is dated “${date.written}”, and so ${event} of its maker, ${name}.`,
    advice:
      'Look again at the date, at the maker, and at the dates under “people” in collection.yaml. A later copy has its own date and its own maker.',
    source: 'arithmetic',
  });
  // Both ends of a span must fall into the life; of several readings, one that does is enough.
  if (
    birth !== undefined &&
    alternatives.every((each) => endsOf(each).some((end) => isCertainlyBefore(end, birth)))
  )
    return [finding('dates.before-birth', `before the ${words.birth} (${yearIn(birth)})`)];
  const isPrinted = PRINTED.has(readKind(thing.kind ?? '')?.kind.group ?? '');
  if (death === undefined || isPrinted) return [];
  if (alternatives.every((each) => endsOf(each).some((end) => isCertainlyBefore(death, end))))
    return [finding('dates.after-death', `after the ${words.death} (${yearIn(death)})`)];
  return [];
}

/** The first and the last date of a span; any other date by itself. */
export const endsOf = (edtf: string): string[] => (/^[[{]/.test(edtf) ? [edtf] : edtf.split('/'));

const yearIn = (edtf: string): string => String(firstYear(edtf) ?? lastYear(edtf) ?? edtf);

function impossibleLife({ name, type, born, died }: PersonSettings, agent: Agent | undefined): Finding[] {
  const { birth, death } = agent ?? {};
  if (birth === undefined || death === undefined) return [];
  const finding = (rule: string, weight: Finding['weight'], found: string): Finding => ({
    ...{ rule, weight, place: { file: 'collection.yaml' }, found },
    advice: 'Mend “born” or “died” under “people”.',
    source: 'arithmetic',
  });
  const isPerson = type === 'person';
  if (isCertainlyBefore(death, birth)) {
    const events = isPerson ? 'died before the birth' : 'ended before the beginning';
    return [
      finding(
        'dates.life-backwards',
        'should',
        `By its dates “${name}” ${events}: “${died}” is before “${born}”.`,
      ),
    ];
  }
  const [latestBirth, earliestDeath] = [lastYear(birth), firstYear(death)];
  if (!isPerson || latestBirth === undefined || earliestDeath === undefined) return [];
  const years = earliestDeath - latestBirth - 1;
  if (years <= LONGEST_LIFE) return [];
  const found = `“${name}” (“${born}” to “${died}”) would have lived for at least ${years} years, longer than anybody known.`;
  return [finding('dates.life-too-long', 'should', found)];
}
