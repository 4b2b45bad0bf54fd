import type { Finding } from '../catalogue/finding.ts';
import { maybeTwo } from '../intake/names.ts';
import { LIFETIME, type Lives } from './living.ts';

/** How many names a finding gives. */
const NAMES = 12;

/**
 * People of the last hundred years of whom nobody has noted a birth or a death, in one finding. Those with a birth and
 * no death are named by the rules on records.
 */
export function reviewLiving({ all }: Lives, today: string): Finding[] {
  const year = Number(today.slice(0, 4));
  const unnoted = all().filter(
    ({ name, mayLive, born, named }) =>
      // Two people under one name are to be told apart first.
      mayLive && born === undefined && named !== undefined && year - named < LIFETIME && !maybeTwo(name),
  );
  if (unnoted.length === 0) return [];
  const names = unnoted.slice(0, NAMES).map(({ name, named }) => `${name} (${named})`);
  const more = unnoted.length > NAMES ? ` and ${unnoted.length - NAMES} more` : '';
  return [
    {
      rule: 'private.may-be-living',
      weight: 'consider',
      place: { file: 'list.csv', column: 'people' },
      found: `As far as the list tells, these people may be living; each with the year by which the list first names them: ${names.join(', ')}${more}.`,
      advice:
        'Where it is known, add the year of death under “people” in collection.yaml; ask those who live before what is private about them is handed on.',
      source: `common practice: ${LIFETIME} years`,
    },
  ];
}
