import type { Finding } from '../catalogue/finding.ts';
import { namesNearlyAlike } from './doubles-of-names.ts';
import { placesNearlyAlike } from './doubles-of-places.ts';
import { titlesTwice } from './doubles-of-titles.ts';
import type { Rules } from './index.ts';

/** So many findings of one rule are given; nobody works through more at once. */
const MOST = 100;

/** What may be in the list twice, or under two names; all of it is proposed and nothing is merged. */
export const reviewDoubles: Rules = (catalogue, aid) => [
  ...titlesTwice(catalogue).flatMap(noMoreThan),
  ...noMoreThan(namesNearlyAlike(catalogue, aid)),
  ...noMoreThan(placesNearlyAlike(catalogue)),
];

/** The first of many findings of one rule, the last of them saying how many there are besides. */
function noMoreThan(findings: readonly Finding[]): Finding[] {
  const given = findings.slice(0, MOST);
  const last = given.at(-1);
  const left = findings.length - given.length;
  if (last === undefined || left === 0) return given;
  const found = `${last.found} There ${left === 1 ? 'is' : 'are'} ${left} more like this; they are shown once these are settled.`;
  return [...given.slice(0, -1), { ...last, found }];
}
