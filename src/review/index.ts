import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { type Finding, WEIGHTS } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { localDay } from '../catalogue/local-day.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { CopyFacts } from '../copies/facts.ts';
import { reviewEnds } from './access-ends.ts';
import { type Answered, answerFindings } from './answers.ts';
import { codesByRow } from './codes-by-row.ts';
import { reviewCopies } from './copies.ts';
import { dangerRules } from './danger.ts';
import { reviewDates } from './dates.ts';
import { reviewDescription } from './description.ts';
import { reviewDoubles } from './doubles.ts';
import { reviewFamilyOnly } from './family-only.ts';
import { reviewGroups } from './groups.ts';
import { reviewHousing } from './housing.ts';
import { wordTables } from './own-words.ts';
import { reviewPrivate } from './private.ts';
import { reviewRecords } from './records.ts';
import { reviewRuns } from './runs.ts';
import { titleRules } from './titles.ts';
import { reviewUncounted } from './uncounted.ts';
import { reviewWords } from './words-of-the-list.ts';

export { adviceToArchive } from './advice-to-archive.ts';
export { namesEnd } from './end-said.ts';
export { handlingList } from './handling.ts';
export { type NotBoxed, notToBeBoxed, sayNotBoxed } from './not-to-be-boxed.ts';
export { privateAndOpen } from './private.ts';
export { sayHandling } from './say-handling.ts';
export { verdict } from './verdict.ts';

/** One family of rules: a pure function from what was written and what came of it to what is to be said. */
export type Rules = (catalogue: Catalogue, aid: FindingAid) => Finding[];

/** What is known of the digital copies: facts by path, and files that no row names. */
interface CopiesFound {
  facts: ReadonlyMap<string, CopyFacts>;
  unlisted: readonly string[];
}

/** Everything there is to say about a catalogue, what matters most first, and what has been answered. */
export interface Review {
  findings: Finding[];
  answered: Answered[];
}

/**
 * Holds a catalogue against every rule; what was noticed while reading it is included.
 * @param copies left out where the files were not looked at
 * @param today YYYY-MM-DD
 */
export function review(
  catalogue: Catalogue,
  arranged: Arrangement,
  copies?: CopiesFound,
  today = localDay(),
): Review {
  const tables = wordTables(catalogue.settings);
  const danger = dangerRules(tables.danger);
  const titles = titleRules(tables.vague);
  const families: readonly Rules[] = [
    // What a finding aid of others says of the whole is theirs to say; collection.yaml serves the list beside it.
    ...(catalogue.base === undefined ? [reviewDescription] : []),
    reviewDates,
    titles,
    reviewWords,
    reviewUncounted,
    (held) => reviewGroups(held, arranged),
    reviewRecords,
    reviewRuns,
    reviewDoubles,
    danger,
    (held, aid) => reviewPrivate(held, aid, today, tables.private),
    reviewFamilyOnly,
    ({ things }) => reviewEnds(things, today),
    (held) => reviewHousing(held, arranged),
    (held) => (copies === undefined ? [] : reviewCopies(held, copies.facts, copies.unlisted)),
  ];
  const hold = (things: readonly Thing[]) =>
    families.flatMap((rules) => rules({ ...catalogue, things }, arranged.aid));
  const all = [...catalogue.findings, ...tables.findings, ...hold(catalogue.things)];
  const { answers } = catalogue.settings.check;
  const { findings, answered } = answerFindings(
    all,
    answers,
    catalogue.things,
    (about) => hold(catalogue.things.filter((thing) => !about.has(thing))),
    answers.length === 0 ? undefined : codesByRow(arranged.groups, catalogue.settings),
  );
  return {
    findings: findings.sort((a, b) => WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight)),
    answered,
  };
}
