import type { Finding } from '../catalogue/finding.ts';
import { HAZARDS } from './danger-hazards.ts';

const TO_ARCHIVE = new Map(
  HAZARDS.map(({ name, advice, toArchive = advice }) => [`danger.${name}`, toArchive]),
);

/** What a finding on danger or decay advises, in the words for the archive to which the things are offered. */
export const adviceToArchive = ({ rule, advice }: Pick<Finding, 'rule' | 'advice'>): string | undefined =>
  TO_ARCHIVE.get(rule) ?? advice;
