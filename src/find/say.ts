import type { Answer, Hit } from './answer.ts';
import type { FieldName } from './fields.ts';
import { foldWord } from './fold-word.ts';
import type { Reason } from './reasons.ts';
import { sayWhereabouts } from './whereabouts.ts';

/** The answer as lines of plain text: of each hit what it is, where it lies, and why it was found. */
export function* sayHits({ hits }: Answer): Generator<string> {
  for (const hit of hits) {
    const { referenceCode, title, dates, restricted, lacks } = hit;
    const indent = ' '.repeat(Math.min(referenceCode.length, 20) + 2);
    yield `${referenceCode}  ${dates === undefined ? title : `${title}, ${dates}`}`;
    yield `${indent}${sayWhereabouts(hit)}`;
    if (restricted !== undefined)
      yield `${indent}${/^restricted\b/i.test(restricted) ? '' : 'restricted: '}${restricted}`;
    const why = sayReasons(hit);
    if (why !== '') yield `${indent}${why}`;
    if (lacks.length > 0) yield `${indent}without: ${lacks.join(', ')}`;
  }
}

/** What there is to say beside the hits. */
export function* sayRest({ found, hits, proposals, withoutFilters }: Answer): Generator<string> {
  if (found > hits.length)
    yield `${found} things found; ${hits.length === 1 ? 'the first is' : `the first ${hits.length} are`} shown, and --most ${found} shows all.`;
  if (found > 0 && hits.some(({ lacks }) => lacks.length > 0))
    yield 'Nothing has all that was asked for; these have the most of it.';
  if (found > 0) return;
  yield 'Nothing found.';
  for (const { typed, nearest } of proposals) yield `Nearest to “${typed}” in the list: ${nearest}`;
  if (withoutFilters !== undefined)
    yield `Without --kind, --person, --from, --to and --box there would be ${withoutFilters === 1 ? '1 thing' : `${withoutFilters} things`}.`;
}

const FIELD_WORDS: Readonly<Record<Reason['field'], string>> = {
  title: 'title',
  kind: 'kind',
  creators: 'by',
  people: 'people',
  places: 'place',
  occasion: 'occasion',
  dates: 'date',
  description: 'description',
  mentioned: 'named in it',
  note: 'note',
  group: 'group',
  condition: 'condition',
  size: 'size',
  language: 'language',
  other: 'also',
  number: 'number',
} satisfies Record<FieldName | 'number', string>;

/** `title: ferri → ferry, bell; note: cable, in “… of a steel cable”`. */
function sayReasons({ reasons }: Hit): string {
  const fields = new Map<string, Set<string>>();
  for (const reason of reasons) {
    const word = FIELD_WORDS[reason.field];
    const said = fields.get(word) ?? new Set();
    fields.set(word, said.add(sayReason(reason)));
  }
  return [...fields].map(([word, said]) => `${word}: ${[...said].join(', ')}`).join('; ');
}

function sayReason({ field, typed, found, within }: Reason): string {
  const named = field === 'creators' || field === 'people' || field === 'mentioned';
  if (named) return within === undefined ? found : `${found} = ${within}`;
  const same = foldWord(typed) === foldWord(found) || field === 'number' || field === 'dates';
  const change = same ? found : `${typed} → ${found}`;
  return within === undefined || field === 'dates' ? change : `${change}, in “${within}”`;
}
