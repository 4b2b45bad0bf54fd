import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settings } from '../catalogue/settings.ts';
import { sayThings } from './said-together.ts';
import { saysFamilyOnly } from './says-it-stays.ts';

/**
 * What will stay at home by a word on access that may have been meant for the archive. Of what the list, or `handOver` in
 * `collection.yaml`, keeps in so many words nothing is said.
 */
export function reviewFamilyOnly({ settings, things }: Pick<Catalogue, 'settings' | 'things'>): Finding[] {
  const keep = new Set(settings.handOver.keep.flatMap((name) => [name, fold(name)]));
  const isKept = ({ number = '', title }: { number?: string | undefined; title: string }) =>
    keep.has(number) || keep.has(fold(title));
  const found = things.filter(
    (thing) => thing.stays === undefined && saysFamilyOnly(thing.access) && !isKept(thing),
  );
  const [first] = found;
  const stated = statements(settings).filter(
    ({ statement, of }) => saysFamilyOnly(statement) && !keep.has(of),
  );
  return [
    ...(first === undefined
      ? []
      : [
          finding(
            { file: 'list.csv', row: first.row, column: 'access' },
            `${sayWords(found.flatMap(({ access = '' }) => access))}: ${sayThings(found)}.`,
          ),
        ]),
    ...stated.map(({ statement, says }) =>
      finding({ file: 'collection.yaml' }, `${sayWords([statement])}: ${says}.`),
    ),
  ];
}

/** Statements on the whole and on groups; `of` is the folded title of a group. */
const statements = ({ access, groups }: Settings): { statement: string; of: string; says: string }[] => [
  ...(access === undefined
    ? []
    : [{ statement: access.statement, of: '', says: 'so says access of the whole collection' }]),
  ...Object.entries(groups).flatMap(([title, words]) =>
    words.access === undefined
      ? []
      : [
          {
            statement: words.access.statement,
            of: fold(title),
            says: `so says access of the group “${title}”`,
          },
        ],
  ),
];

/** How many ways of writing it are quoted. */
const MOST = 3;

function sayWords(access: readonly string[]): string {
  const all = [...new Set(access)];
  const words = all.slice(0, MOST).map((one) => `“${one}”`);
  const more = all.length > MOST ? ' and the like' : '';
  return `${words.join(', ')}${more} ${all.length === 1 ? 'is' : 'are'} taken to mean that it stays with you when the rest is handed over`;
}

const finding = (place: Finding['place'], found: string): Finding => ({
  rule: 'access.family-only',
  weight: 'consider',
  place,
  found,
  advice:
    'If so, write “yes” under “stays” as well. If the archive may have it closed until a year, write “closed” under “access”, and the year under “until”.',
  source: 'common practice',
});
