import { type Finding, sayPlace } from '../catalogue/finding.ts';
import { printed } from './printed.ts';

/**
 * Why a package was made although something in it must be mended, and what that is: `despite.txt`.
 * @param findings of the review of what is given, and of nothing else
 */
export function despite(reason: string, findings: readonly Finding[]): string {
  return printed([
    'MADE ALTHOUGH SOMETHING WAS STILL TO BE MENDED',
    '',
    'When this package was made, the check of the catalogue found what should have been mended first. Whoever made the package decided to make it all the same, for this reason:',
    '',
    `    ${reason}`,
    '',
    'What was found:',
    '',
    ...findings.flatMap(({ place, found, advice }, at) => {
      const where = sayPlace(place);
      return [
        `${at + 1}. ${where === '' ? '' : `${where}: `}${found}`,
        ...(advice === undefined ? [] : [`    What to do: ${advice}`]),
        '',
      ];
    }),
    'Rows are those of list.csv in this package.',
  ]);
}
