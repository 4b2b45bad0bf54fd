import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';
import type { Settings } from '../catalogue/settings.ts';
import { placeIn, type YamlSource } from './yaml-source.ts';

/** A relation can only lead to somebody who stands in the file. */
export function relationTrouble({ people }: Settings, source: YamlSource, file: string): Finding[] {
  const names = people.flatMap(({ name, also }) => [name, ...also]);
  const known = new Set(names.map(fold));
  return people.flatMap(({ name, relations }, at) =>
    relations.flatMap(({ to }, index): Finding[] => {
      if (known.has(fold(to))) return [];
      const meant = nearest(to, names);
      const found = `“${name}” is related to “${to}”, but nobody under “people” has that name, so it is left out.`;
      const advice = meant === undefined ? 'Add that person, or mend the name.' : `Is “${meant}” meant?`;
      const place = placeIn(source, file, ['people', at, 'relations', index]);
      return [{ rule: 'settings.relation-to-nobody', weight: 'should', place, found, advice }];
    }),
  );
}

/** Two people with one name could not be told apart in the list. */
export function nameTrouble({ people }: Settings, source: YamlSource, file: string): Finding[] {
  const first = new Map<string, number>();
  return people.flatMap(({ name, also }, at) =>
    [...new Set([name, ...also].map(fold))].flatMap((each): Finding[] => {
      const before = first.get(each);
      if (before === undefined) {
        first.set(each, at);
        return [];
      }
      const line = source.lineOf(['people', before]);
      const found = `“${people[at]?.name}” and “${people[before]?.name}” (line ${line}) are both written “${each}”.`;
      const advice = 'Add something that tells them apart, in the list as well, such as Ada Quill the elder.';
      return [
        {
          rule: 'settings.name-twice',
          weight: 'must',
          place: placeIn(source, file, ['people', at]),
          found,
          advice,
        },
      ];
    }),
  );
}
