import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { type Finding, WEIGHTS } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { reviewDates } from './dates.ts';
import { reviewDescription } from './description.ts';
import { reviewGroups } from './groups.ts';
import { reviewHousing } from './housing.ts';
import { reviewRecords } from './records.ts';
import { reviewWords } from './words-of-the-list.ts';

/** One family of rules: a pure function from what was written and what came of it to what is to be said. */
export type Rules = (catalogue: Catalogue, aid: FindingAid) => Finding[];

const FAMILIES: readonly Rules[] = [reviewDescription, reviewDates, reviewWords, reviewGroups, reviewRecords];

/** Everything there is to say about a catalogue, what matters most first; what was noticed while reading it included. */
export function review(catalogue: Catalogue, arranged: Arrangement): Finding[] {
  const findings = [
    ...catalogue.findings,
    ...FAMILIES.flatMap((rules) => rules(catalogue, arranged.aid)),
    ...reviewHousing(catalogue, arranged),
  ];
  return findings.sort((a, b) => WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight));
}
