import type { CheckSettings } from '../catalogue/check-settings.ts';
import { type Finding, sayPlace } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';

/**
 * Rules whose findings are answered by their row: each is about one thing, or about how several stand to each other, so
 * that without one of them the finding would be another.
 */
const BY_ROW = /^(?:runs|doubles|list|numbers|housing|groups)\./;

type Answer = CheckSettings['answers'][number];

/** A finding that `collection.yaml` answers, with the reason. */
export interface Answered {
  finding: Finding;
  because: string;
}

/**
 * Parts findings into those that stand and those that are answered. An answer about one thing takes it out of what the
 * rule is held against, so that of a finding about several things the rest still stands.
 * @param without the findings as they would be without some things of the list
 * @param codes reference codes by the row of the list
 */
export function answerFindings(
  findings: readonly Finding[],
  answers: readonly Answer[],
  things: readonly Thing[],
  without: (things: ReadonlySet<Thing>) => readonly Finding[],
  codes: ReadonlyMap<number, string> = new Map(),
): { findings: Finding[]; answered: Answered[] } {
  let standing = [...findings];
  const answered: Answered[] = [];
  for (const rule of new Set(answers.map((answer) => answer.rule))) {
    const its = answers.filter((answer) => answer.rule === rule);
    const before = standing.filter((finding) => finding.rule === rule);
    const after = unanswered(before, its, { things, codes }, (about) =>
      BY_ROW.test(rule)
        ? before.filter(({ place }) => ![...about].some(({ row }) => row === place.row))
        : without(about).filter((finding) => finding.rule === rule),
    );
    const left = new Set(after.map(sayWhere));
    const gone = before.filter((finding) => !left.has(sayWhere(finding)));
    const because = its.map((answer) => answer.because.trim()).join(' ');
    answered.push(...gone.map((finding) => ({ finding, because })));
    standing = [...standing.filter((finding) => finding.rule !== rule), ...after];
    if (gone.length === 0) standing.push(...its.map(unusedAnswer));
  }
  return { findings: standing, answered };
}

const sayWhere = ({ place, found }: Finding) => `${sayPlace(place)}: ${found}`;

function unanswered(
  findings: readonly Finding[],
  answers: readonly Answer[],
  { things, codes }: { things: readonly Thing[]; codes: ReadonlyMap<number, string> },
  without: (things: ReadonlySet<Thing>) => readonly Finding[],
): readonly Finding[] {
  const names = answers.map(({ of }) => of);
  if (names.includes(undefined)) return [];
  const about = things.filter((thing) => {
    const isIt = isAbout(thing, codes.get(thing.row));
    return names.some((name) => name !== undefined && isIt(name));
  });
  const rest = about.length === 0 ? findings : without(new Set(about));
  return rest.filter(({ place }) => place.component === undefined || !names.includes(place.component));
}

/** Whether an answer is about this thing: it names its number, its title or its reference code. */
export function isAbout({ number, title }: Thing, code: string | undefined): (of: string) => boolean {
  const folded = fold(title);
  return (of) => of === number || of === code || fold(of) === folded;
}

/** Whether `collection.yaml` answers a rule for this thing, or for all. */
export const isAnswered = (
  { check }: Pick<Settings, 'check'>,
  rule: string,
  thing: Thing,
  code: string | undefined,
): boolean =>
  check.answers.some(
    (answer) => answer.rule === rule && (answer.of === undefined || isAbout(thing, code)(answer.of)),
  );

const unusedAnswer = ({ rule, of }: Answer): Finding => ({
  rule: 'check.unused-answer',
  weight: 'consider',
  place: { file: 'collection.yaml' },
  found: `There is an answer to ${rule}${of === undefined ? '' : ` of “${of}”`}, but no such finding.`,
  advice:
    'If it has been mended, take the answer out; else compare the names with those that the report prints.',
});
