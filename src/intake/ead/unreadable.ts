import { CatalogueError, type Finding } from '../../catalogue/finding.ts';

/** More faults than this say nothing new. */
const MOST = 20;

/** What is said of a file that cannot be taken in. @param file its name */
export function refusal(file: string, faults: readonly { line: number; says: string }[]): CatalogueError {
  return new CatalogueError(
    faults.slice(0, MOST).map(
      ({ line, says }): Finding => ({
        rule: 'take-in.unreadable',
        weight: 'must',
        place: { file, line },
        found: says,
        advice: 'Mend the file, or have whoever made it send it again; then take it in.',
      }),
    ),
  );
}
