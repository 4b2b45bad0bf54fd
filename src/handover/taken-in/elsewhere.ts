import type { Finding } from '../../catalogue/finding.ts';
import { type CopyFacts, isPath } from '../../copies/index.ts';
import type { Given } from '../given.ts';

/**
 * Digital copies that a finding aid of others names and that are no files of this catalogue. They are theirs to keep, so
 * that they stop nothing.
 */
export function elsewhere({ unitsAsThings }: Given, facts: ReadonlyMap<string, CopyFacts>): Finding[] {
  const missing = unitsAsThings.given.flatMap(({ title, copies }) =>
    copies.filter((path) => isPath(path) && isMissing(facts.get(path))).map((path) => ({ title, path })),
  );
  const [first] = missing;
  if (first === undefined) return [];
  const more = missing.length === 1 ? '' : ` So are ${missing.length - 1} more.`;
  const found = `${first.path} is named by the finding aid and is no whole file in the folder of this catalogue, so it is not in the package.${more}`;
  const advice = 'The finding aid goes on naming it. If you have the file, put it there under that name.';
  const place = { file: 'finding-aid.json', column: first.title };
  return [{ rule: 'hand-over.copies-elsewhere', weight: 'should', place, found, advice }];
}

const isMissing = (facts: CopyFacts | undefined): boolean =>
  facts === undefined || (facts.trouble !== undefined && facts.trouble !== 'damaged');
