import type { Finding } from '../catalogue/finding.ts';
import { undeclaredLanguage } from './description-language.ts';
import { reviewLevels } from './description-levels.ts';
import { REQUIREMENTS } from './description-requirements.ts';
import type { Rules } from './index.ts';

/** What the standards ask of the description, at the top and below it, and nobody has said. */
export const reviewDescription: Rules = (catalogue, aid) => {
  const { settings, things } = catalogue;
  return [
    ...REQUIREMENTS.filter(({ met }) => !met(settings, things, aid.collection)).map(
      ({ met: _, ...finding }): Finding => ({ ...finding, place: { file: 'collection.yaml' } }),
    ),
    ...undeclaredLanguage(settings),
    ...(things.some(({ kind }) => kind !== undefined) ? [] : [noKinds]),
    ...reviewLevels(catalogue, aid),
  ];
};

const noKinds: Finding = {
  rule: 'description.kinds',
  weight: 'should',
  place: { file: 'list.csv', column: 'kind' },
  found: 'No thing of the list has a kind.',
  advice: 'Note for each what it is (letter, photograph, diary): the extent is counted from it.',
  source: 'DACS 2.5',
};
